import type {StepSentences} from '../../step-sentences.js';

/** Why the level is read, and why twice. */
const whyLevel =
	'A tilted deck pulls the arm downhill: 1° makes 1.7 % of pull. The level has an error of its own. Turned round it shows that error.';

export const level = {
	'level-lr-1': {
		title: 'Level, left to right',
		short: 'Across: which side is high? 0.2 r = right.',
		ask: ({isSprung}) =>
			`${isSprung ? 'Block the sprung deck as far as its maker allows. ' : ''}Lay the level across the armboard. Type 0.2 r if the right side is 0.2° high.`,
		why: whyLevel,
		mistake: 'Reading on platter or plinth. The armboard carries the pivot.',
	},
	'level-lr-2': {
		title: 'Level turned round, left to right',
		short: 'Turned: which side is high? 0.2 r = right.',
		ask: 'Turn the level end for end, same spot. Type which side of the deck is high, such as 0.1 left.',
		why: whyLevel,
		mistake: 'Laying it on another spot. If it cannot be turned, type -.',
	},
	'level-fb-1': {
		title: 'Level, front to back',
		short: 'Along: which end is high? 0.2 b = back.',
		ask: 'Lay the level along the armboard. Type 0.2 b if the back is 0.2° high.',
		why: whyLevel,
		mistake: 'Leaning on the deck.',
	},
	'level-fb-2': {
		title: 'Level turned round, front to back',
		short: 'Turned: which end is high? 0.2 b = back.',
		ask: 'Turn the level end for end, same spot. Type which side of the deck is high, such as 0.1 front.',
		why: whyLevel,
		mistake: 'Laying it on another spot. If it cannot be turned, type -.',
	},
} satisfies Partial<StepSentences>;
