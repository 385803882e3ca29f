import {armLocked} from './deck.js';
import {type Step, stepsOf} from './step.js';
import {heightSteps, linesAsked} from './step-groups.js';

const step = stepsOf('safe');

/** Nobody and nothing gets hurt: then the arm is locked, and its stylus covered. */
export const safeSteps: readonly Step[] = [
	step('safe', {
		input: {lines: (facts) => linesAsked('safe', facts)},
		reasons: ['maker-wants-power', 'licensed-person'],
		leaves: (facts) => (facts.list('safe').includes('lock=yes') ? {arm: 'locked'} : {}),
	}),
	step('guard-mass', {
		input: {unit: 'g', between: [0, 5], optional: true},
		profile: 'arm',
		touches: ['weighed', 'guard-account', 'rounds'],
	}),
	step('guard-on', {
		values: (facts) => ({isUnipivot: facts.is('arm-bearing', 'unipivot')}),
		suggest: () => 'on',
		touches: ['force-reading', ...heightSteps, 'rounds'],
		staysTrueMinutes: 30,
		finds: armLocked,
		leaves: (facts) => (facts.is('guard-on', 'on') ? {stylus: 'covered'} : {}),
	}),
	step('guard-depth', {
		input: {unit: 'mm', between: [0, 8], optional: true},
		when: (facts) => !facts.is('guard-on', 'no-guard'),
		profile: 'arm',
		touches: ['mat', ...heightSteps],
	}),
];
