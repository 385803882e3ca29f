import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {biasDeviceId, hasBias} from './bias-devices.js';
import type {Facts} from './facts.js';
import {mustBe} from './must-be.js';
import {type Step, step} from './step.js';
import {halfADay, levelSteps} from './step-groups.js';
import {tickLines} from './step-ids.js';
import {levelStageSteps} from './steps-level.js';

const isDeepGuard = (facts: Facts): boolean => isAbove(facts.number('guard-depth') ?? 0, limits.guardDeepMm.value);

/** Room, mat, level, damping, bias off, wires. */
export const settingSteps: readonly Step[] = [
	step('room-temperature', {
		stage: 'room',
		input: {kind: 'number', unit: 'celsius', between: [-10, 50], optional: true},
		suggest: () => '',
		staysTrueMinutes: halfADay,
	}),
	step('room-note', {stage: 'room', input: {kind: 'text', optional: true}}),
	step('mat', {
		stage: 'mat',
		values: (facts) => ({deepGuardMm: isDeepGuard(facts) ? limits.guardDeepMm.value : undefined}),
		suggest: (facts) => (isDeepGuard(facts) ? 'off' : undefined),
		input: {kind: 'choice'},
		verify: (facts) =>
			facts.is('mat', 'on', 'on-steel') && isDeepGuard(facts)
				? {
						id: 'mat-meets-guard',
						values: {},
						ways: [{id: 'take-mat-off', do: 'set', step: 'mat', value: 'off'}],
					}
				: undefined,
		reasons: ['mat-must-stay', 'no-guard'],
		touches: ['mat-thickness', ...levelSteps, 'clearance', 'rounds'],
	}),
	step('mat-thickness', {
		stage: 'mat',
		input: {kind: 'number', unit: 'mm', between: [0.2, 12]},
		when: (facts) => facts.is('mat', 'off'),
		touches: ['clearance', 'rounds'],
	}),
	...levelStageSteps,
	step('damping-off', {
		stage: 'damping',
		input: {kind: 'confirm'},
		when: (facts) => facts.is('arm-damping', 'yes'),
		verify: (facts) => mustBe(facts, 'damping-off'),
		reasons: ['trough-full', 'damper-built-in'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	step('bias-setting', {stage: 'bias', input: {kind: 'text', optional: true}, when: hasBias}),
	step('bias-off', {
		stage: 'bias',
		values: (facts) => ({device: biasDeviceId(facts)}),
		input: {kind: 'confirm'},
		when: hasBias,
		verify: (facts) => mustBe(facts, 'bias-off'),
		reasons: ['bias-stays', 'maker-forbids-unhooking'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	step('wires', {
		stage: 'wires',
		input: {
			kind: 'ticks',
			lines: (facts) => tickLines.wires.filter((line) => line !== 'upright' || facts.is('arm-bearing', 'unipivot')),
		},
		reasons: ['part-of-fault', 'cannot-change-here'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
];
