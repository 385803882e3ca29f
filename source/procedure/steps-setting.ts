import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from '../measures/compare.js';
import {biasDeviceId, hasBias} from './bias-devices.js';
import {armLocked} from './deck.js';
import type {Facts} from './facts.js';
import {firstLevelProblem, levelProblem} from './level.js';
import {mustBe, problem, setTo} from './problem.js';
import {frontBack, leftRight} from './readings.js';
import {type Step, stepsOf} from './step.js';
import {halfADay, heightSteps, levelSteps, linesAsked} from './step-groups.js';

const [mat, level] = [stepsOf('mat'), stepsOf('level')];
const [damping, bias, wires] = [stepsOf('damping'), stepsOf('bias'), stepsOf('wires')];

const isDeepGuard = (facts: Facts): boolean => isAbove(facts.number('guard-depth') ?? 0, limits.guardDeepMm.value);

const tilt = {unit: 'deg', between: [0, 5]} as const;
const ofLevel = {touches: ['rounds'], staysTrueMinutes: halfADay, finds: armLocked} as const;
/** The armboard in two directions, each read twice with the level turned round. */
const levelStageSteps = [
	level('arm-pivot-place', {profile: 'arm', suggest: () => 'right-rear'}),
	level('deck-sprung', {profile: 'arm', suggest: () => 'no'}),
	level('level-lr-1', {
		values: (facts) => ({isSprung: facts.is('deck-sprung', 'yes')}),
		input: {...tilt, sides: leftRight},
		verify: (facts) => firstLevelProblem(facts, 'lr'),
		reasons: ['cannot-level', 'spring-loaded'],
		...ofLevel,
	}),
	level('level-lr-2', {input: {...tilt, sides: leftRight, optional: true}, ...ofLevel}),
	level('level-fb-1', {
		input: {...tilt, sides: frontBack},
		verify: (facts) => firstLevelProblem(facts, 'fb'),
		reasons: ['cannot-level', 'spring-loaded'],
		...ofLevel,
	}),
	level('level-fb-2', {
		input: {...tilt, sides: frontBack, optional: true},
		verify: levelProblem,
		reasons: ['cannot-level', 'spring-loaded', 'level-cannot-turn'],
		...ofLevel,
	}),
];

/** Mat, level, damping, bias off, and what is looked at once. */
export const settingSteps: readonly Step[] = [
	mat('mat', {
		values: (facts) => ({deepGuardMm: isDeepGuard(facts) ? limits.guardDeepMm.value : undefined}),
		suggest: (facts) => (isDeepGuard(facts) ? 'off' : 'on'),
		verify: (facts) =>
			facts.is('mat', 'on', 'on-steel') && isDeepGuard(facts)
				? problem('mat-meets-guard', {}, setTo('take-mat-off', 'mat', 'off'))
				: undefined,
		reasons: ['mat-must-stay', 'no-guard'],
		touches: ['mat-thickness', ...levelSteps, ...heightSteps, 'rounds'],
		finds: armLocked,
		leaves: (facts) => (facts.is('mat', 'off') ? {mat: 'off'} : {}),
	}),
	mat('mat-thickness', {
		input: {unit: 'mm', between: [0.2, 12]},
		when: (facts) => facts.is('mat', 'off'),
		touches: [...heightSteps, 'rounds'],
	}),
	...levelStageSteps,
	damping('arm-damping', {profile: 'arm', suggest: () => 'no', touches: ['rounds']}),
	damping('damping-off', {
		when: (facts) => facts.is('arm-damping', 'yes'),
		verify: (facts) => mustBe(facts, 'damping-off'),
		reasons: ['trough-full', 'damper-built-in'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
		finds: armLocked,
		leaves: (facts) => (facts.yes('damping-off') ? {damping: 'out'} : {}),
	}),
	bias('bias-setting', {input: {optional: true}, when: hasBias}),
	bias('bias-off', {
		values: (facts) => ({device: biasDeviceId(facts)}),
		when: hasBias,
		verify: (facts) => mustBe(facts, 'bias-off'),
		reasons: ['bias-stays', 'maker-forbids-unhooking'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
		finds: armLocked,
		leaves: (facts) => (facts.yes('bias-off') ? {bias: 'off'} : {}),
	}),
	wires('arm-bearing', {profile: 'arm', suggest: () => 'gimbal'}),
	// The wires are the usual cause of a pull that changes over the record.
	wires('arm-wire-path', {profile: 'arm', suggest: () => 'inside'}),
	// Wires inside the arm cannot be seen, so nobody is asked how stiff they are.
	wires('arm-wire-stiffness', {
		profile: 'arm',
		when: (facts) => facts.is('arm-wire-path', 'free-loop') || facts.everAnswered('arm-wire-stiffness'),
	}),
	wires('wires', {
		input: {
			lines: (facts) =>
				linesAsked('wires', facts).filter((line) => line !== 'upright' || facts.is('arm-bearing', 'unipivot')),
		},
		reasons: ['part-of-fault', 'cannot-change-here'],
		touches: ['rounds'],
		staysTrueMinutes: 30,
		finds: armLocked,
	}),
];
