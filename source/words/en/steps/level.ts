import type {StepSentences} from '../../step-sentences.js';

/** Why the level is read, and why twice. */
const whyLevel =
	'A deck that is not level pulls the arm downhill: 1° across the arm is 1.7 % of the tracking force. The level lies too: reading it twice, turned round in between, tells its own error from the tilt.';

export const level = {
	'level-lr-1': {
		title: 'Level, left to right',
		short: 'Across: how much, which side high?',
		ask: ({isSprung}) =>
			`${isSprung ? 'Sprung deck: block it as far as its maker allows. ' : ''}Lay the level across the armboard. How much, and which side is high?`,
		why: whyLevel,
		mistake: 'Reading the level on the platter or the plinth: the armboard carries the pivot.',
	},
	'level-lr-2': {
		title: 'Level turned round, left to right',
		short: 'Turned: which side high?',
		ask: 'Turn the level end for end on the same spot. Which side does it call high now?',
		why: whyLevel,
		mistake: 'Putting it back somewhere else on the board. If it cannot be turned, answer with a dash (-).',
	},
	'level-fb-1': {
		title: 'Level, front to back',
		short: 'Along: how much, which end high?',
		ask: 'Lay the level along the armboard. How much, and is the back or the front high?',
		why: whyLevel,
		mistake: 'Leaning on the deck while reading.',
	},
	'level-fb-2': {
		title: 'Level turned round, front to back',
		short: 'Turned: which end high?',
		ask: 'Turn the level end for end on the same spot. Which end does it call high now?',
		why: whyLevel,
		mistake: 'Putting it back somewhere else on the board. If it cannot be turned, answer with a dash (-).',
	},
} satisfies Partial<StepSentences>;
