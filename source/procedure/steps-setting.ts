import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {biasDeviceOf, hasBias} from './bias-devices.js';
import type {Facts} from './facts.js';
import {mustBe} from './must-be.js';
import {type Step, step} from './step.js';
import {halfADay, levelSteps} from './step-groups.js';
import {levelStageSteps} from './steps-level.js';

const isDeepGuard = (facts: Facts): boolean => isAbove(facts.number('guard-depth') ?? 0, limits.guardDeepMm.value);

/** A unipivot that leans to one side reads as a pull. */
const uprightLine = {
	id: 'upright',
	text: 'Seen from the front the arm stands upright (unipivot)',
} as const;
/** Room, mat, level, damping, bias off, wires. */
export const settingSteps: readonly Step[] = [
	step('room-temperature', {
		stage: 'room',
		title: 'Room',
		ask: 'Room temperature, or - if not known. The arm should have stood in this room for an hour.',
		why: 'Oil, wire and damping stiffen in the cold; between checks it helps to tell the season from drift.',
		mistake: 'Checking an arm that has just come in from a cold car.',
		input: {kind: 'number', unit: 'celsius', between: [-10, 50], optional: true},
		suggest: () => '',
		staysTrueMinutes: halfADay,
	}),
	step('room-note', {
		stage: 'room',
		title: 'Note',
		ask: 'A note for this check, if you want one, or - for none.',
		why: 'What you would like to know about today when you look back in a year.',
		mistake: 'Leaving out that the arm was just transported or rewired.',
		input: {kind: 'text', optional: true},
	}),
	step('mat', {
		stage: 'mat',
		title: 'Mat',
		ask: (facts) =>
			isDeepGuard(facts)
				? `Your guard hangs more than ${limits.guardDeepMm.value} mm below the stylus: take the mat off, or the guard would touch.`
				: 'Leave the mat on, or take it off to gain clearance for the guard?',
		suggest: (facts) => (isDeepGuard(facts) ? 'off' : undefined),
		why: 'A guard deeper than 2.2 mm touches unless the mat is taken off. With a steel platter, or a magnet near the cartridge, leave the mat on: the closer the cartridge, the stronger the pull on it; weigh at probe height then.',
		mistake: 'Taking the mat off and leaving the arm at its old height: the clearance window moves with the mat.',
		input: {
			kind: 'choice',
			options: [
				{id: 'on', label: 'the mat stays on'},
				{id: 'on-steel', label: 'it stays on: steel platter, or a magnet near the cartridge'},
				{id: 'off', label: 'the mat is taken off'},
			],
		},
		verify: (facts) =>
			facts.is('mat', 'on', 'on-steel') && isDeepGuard(facts)
				? {
						id: 'mat-meets-guard',
						values: {},
						ways: [{id: 'take-mat-off', do: 'set', step: 'mat', value: 'off', typed: 'the mat is taken off'}],
					}
				: undefined,
		reasons: ['mat-must-stay', 'no-guard'],
		touches: ['mat-thickness', ...levelSteps, 'clearance', 'rounds'],
	}),
	step('mat-thickness', {
		caution:
			'With the mat off the stylus can reach the bare platter: lower the lifter only with the gauge under the arm.',
		stage: 'mat',
		title: 'Thickness of the mat',
		ask: 'How thick is the mat that you took off?',
		why: 'The stylus must hang that much higher above the bare platter to stand where it would stand over a record.',
		mistake: 'Measuring a felt mat while pressing it flat.',
		input: {kind: 'number', unit: 'mm', between: [0.2, 12]},
		when: (facts) => facts.is('mat', 'off'),
		touches: ['clearance', 'rounds'],
	}),
	...levelStageSteps,
	step('damping-off', {
		stage: 'damping',
		title: 'Damping',
		caution: 'Keep the fluid clean in a closed vessel; it creeps, and it must not reach the bearing.',
		ask: 'Empty the damping trough, or lift the paddle clear of it. Is the arm free of damping?',
		why: 'Damping fluid is friction that comes with speed; it hides what the bearings do.',
		mistake: 'A paddle that only just leaves the fluid drags a thread of it along.',
		input: {kind: 'confirm'},
		when: (facts) => facts.is('arm-damping', 'yes'),
		verify: (facts) => mustBe(facts, 'damping-off'),
		reasons: ['trough-full', 'damper-built-in'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	step('bias-setting', {
		stage: 'bias',
		title: 'Bias as it is set',
		ask: 'How is the bias device set now? Write it down as you will want it back: notch, number, grams. Type - if not known.',
		why: 'It is put back to this at the end.',
		mistake: 'Trusting your memory until the evening.',
		input: {kind: 'text', optional: true},
		when: hasBias,
	}),
	step('bias-off', {
		stage: 'bias',
		title: 'Bias off',
		ask: (facts) => `${biasDeviceOf(facts).off} ${biasDeviceOf(facts).confirm}`,
		why: 'The probe is to show what the arm itself does. A bias that still pulls looks just like a twist in the wires.',
		mistake: (facts) => biasDeviceOf(facts).mistake,
		input: {kind: 'confirm'},
		when: hasBias,
		verify: (facts) => mustBe(facts, 'bias-off'),
		reasons: ['bias-stays', 'maker-forbids-unhooking'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	step('wires', {
		stage: 'wires',
		title: 'Wires, screws and draught',
		ask: 'Look along the arm and tick each line: y yes, n not yet.',
		why: 'Each of these can move the arm by more than its bearings do.',
		mistake:
			'Dressing the leads nicely for the check and letting them fall back afterwards: probe them as they are used.',
		input: {
			kind: 'ticks',
			lines: (facts) => [
				...(facts.is('arm-bearing', 'unipivot') ? [uprightLine] : []),
				{
					id: 'leads',
					text: 'Leads lie as always, nothing touches the arm',
				},
				{
					id: 'lifter',
					text: 'Lifter down and clear of the tube',
				},
				{id: 'rest', text: 'Rest and its clip are clear'},
				{
					id: 'screws',
					text: 'Headshell and cartridge screws tight',
				},
				{
					id: 'air',
					text: 'Lid, fan and heating off: no draught',
				},
				{id: 'static', text: 'No static on mat or hands'},
			],
		},
		reasons: ['part-of-fault', 'cannot-change-here'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
];
