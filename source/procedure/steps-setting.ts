import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {biasDeviceId, hasBias} from './bias-devices.js';
import type {Facts} from './facts.js';
import {levelProblem} from './level.js';
import {mustBe, problem, setTo} from './problem.js';
import {frontBack, leftRight} from './readings.js';
import {type Step, stepsOf} from './step.js';
import {halfADay, levelSteps} from './step-groups.js';
import {tickLines} from './step-ids.js';

const [room, mat, level] = [stepsOf('room'), stepsOf('mat'), stepsOf('level')];
const [damping, bias, wires] = [stepsOf('damping'), stepsOf('bias'), stepsOf('wires')];

const isDeepGuard = (facts: Facts): boolean => isAbove(facts.number('guard-depth') ?? 0, limits.guardDeepMm.value);

const tilt = {unit: 'deg', between: [0, 5]} as const;
const ofLevel = {touches: ['rounds'], staysTrueMinutes: halfADay} as const;
/** The armboard in two directions, each read twice with the level turned round. */
const levelStageSteps = [
	level('level-lr-1', {
		values: (facts) => ({isSprung: facts.is('deck-sprung', 'yes')}),
		input: {...tilt, sides: leftRight},
		...ofLevel,
	}),
	level('level-lr-2', {input: {...tilt, sides: leftRight, optional: true}, ...ofLevel}),
	level('level-fb-1', {input: {...tilt, sides: frontBack}, ...ofLevel}),
	level('level-fb-2', {
		input: {...tilt, sides: frontBack, optional: true},
		verify: levelProblem,
		reasons: ['cannot-level', 'spring-loaded', 'level-cannot-turn'],
		...ofLevel,
	}),
];

/** Room, mat, level, damping, bias off, wires. */
export const settingSteps: readonly Step[] = [
	room('room-temperature', {
		input: {unit: 'celsius', between: [-10, 50], optional: true},
		suggest: () => '',
		staysTrueMinutes: halfADay,
	}),
	room('room-note', {input: {optional: true}}),
	mat('mat', {
		values: (facts) => ({deepGuardMm: isDeepGuard(facts) ? limits.guardDeepMm.value : undefined}),
		suggest: (facts) => (isDeepGuard(facts) ? 'off' : undefined),
		verify: (facts) =>
			facts.is('mat', 'on', 'on-steel') && isDeepGuard(facts)
				? problem('mat-meets-guard', {}, setTo('take-mat-off', 'mat', 'off'))
				: undefined,
		reasons: ['mat-must-stay', 'no-guard'],
		touches: ['mat-thickness', ...levelSteps, 'clearance', 'rounds'],
	}),
	mat('mat-thickness', {
		input: {unit: 'mm', between: [0.2, 12]},
		when: (facts) => facts.is('mat', 'off'),
		touches: ['clearance', 'rounds'],
	}),
	...levelStageSteps,
	damping('damping-off', {
		when: (facts) => facts.is('arm-damping', 'yes'),
		verify: (facts) => mustBe(facts, 'damping-off'),
		reasons: ['trough-full', 'damper-built-in'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	bias('bias-setting', {input: {optional: true}, when: hasBias}),
	bias('bias-off', {
		values: (facts) => ({device: biasDeviceId(facts)}),
		when: hasBias,
		verify: (facts) => mustBe(facts, 'bias-off'),
		reasons: ['bias-stays', 'maker-forbids-unhooking'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
	wires('wires', {
		input: {
			lines: (facts) => tickLines.wires.filter((line) => line !== 'upright' || facts.is('arm-bearing', 'unipivot')),
		},
		reasons: ['part-of-fault', 'cannot-change-here'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
	}),
];
