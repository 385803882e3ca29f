import {levelProblem} from './level.js';
import {frontBack, leftRight} from './readings.js';
import {type Step, step} from './step.js';
import {halfADay} from './step-groups.js';

const tilt = {kind: 'signed', unit: 'deg', between: [0, 5]} as const;
const whyLevel =
	'A deck that is not level pulls the arm downhill: 1° across the arm is 1.7 % of the tracking force. The level lies too: reading it twice, turned round in between, tells its own error from the tilt.';
const levelTouches = ['rounds'] as const;
/** The armboard in two directions, each read twice with the level turned round. */
export const levelStageSteps: readonly Step[] = [
	step('level-lr-1', {
		stage: 'level',
		title: 'Level, left to right',
		ask: (facts) =>
			`Put the gauge where it will stand, arm over the record. ${facts.is('deck-sprung', 'yes') ? 'The deck is sprung: from now on nothing is added or taken away. ' : ''}Level on the armboard, left to right: how much, and which side is high?`,
		why: whyLevel,
		mistake: 'Reading the level on the platter: the armboard is what carries the pivot.',
		input: {...tilt, sides: leftRight},
		touches: levelTouches,
		staysTrueMinutes: halfADay,
	}),
	step('level-lr-2', {
		stage: 'level',
		title: 'Level turned round, left to right',
		ask: 'Turn the level end for end on the same spot. Which side does it call high now?',
		why: whyLevel,
		mistake: 'Putting it back somewhere else on the board. If it cannot be turned, answer with a dash (-).',
		input: {...tilt, sides: leftRight, optional: true},
		touches: levelTouches,
		staysTrueMinutes: halfADay,
	}),
	step('level-fb-1', {
		stage: 'level',
		title: 'Level, front to back',
		ask: 'Level on the armboard, front to back: how much, and is the back or the front high?',
		why: whyLevel,
		mistake: 'Leaning on the deck while reading.',
		input: {...tilt, sides: frontBack},
		touches: levelTouches,
		staysTrueMinutes: halfADay,
	}),
	step('level-fb-2', {
		stage: 'level',
		title: 'Level turned round, front to back',
		ask: 'Turn the level end for end on the same spot. Which end does it call high now?',
		why: whyLevel,
		mistake: 'Putting it back somewhere else on the board. If it cannot be turned, answer with a dash (-).',
		input: {...tilt, sides: frontBack, optional: true},
		verify: levelProblem,
		reasons: ['cannot-level', 'spring-loaded', 'level-cannot-turn'],
		touches: ['rounds'],
		staysTrueMinutes: halfADay,
	}),
];
