import {levelProblem} from './level.js';
import {frontBack, leftRight} from './readings.js';
import {type Step, step} from './step.js';
import {halfADay} from './step-groups.js';

const tilt = {kind: 'signed', unit: 'deg', between: [0, 5]} as const;
const levelTouches = ['rounds'] as const;
/** The armboard in two directions, each read twice with the level turned round. */
export const levelStageSteps: readonly Step[] = [
	step('level-lr-1', {
		stage: 'level',
		values: (facts) => ({isSprung: facts.is('deck-sprung', 'yes')}),
		input: {...tilt, sides: leftRight},
		touches: levelTouches,
		staysTrueMinutes: halfADay,
	}),
	step('level-lr-2', {
		stage: 'level',
		input: {...tilt, sides: leftRight, optional: true},
		touches: levelTouches,
		staysTrueMinutes: halfADay,
	}),
	step('level-fb-1', {
		stage: 'level',
		input: {...tilt, sides: frontBack},
		touches: levelTouches,
		staysTrueMinutes: halfADay,
	}),
	step('level-fb-2', {
		stage: 'level',
		input: {...tilt, sides: frontBack, optional: true},
		verify: levelProblem,
		reasons: ['cannot-level', 'spring-loaded', 'level-cannot-turn'],
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
	}),
];
