import {agoText} from '../ago.js';

type LeftOpen = {readonly arm: string; readonly minutesAgo: number; readonly step: string};

/** How much of a check is practised. */
const extents = {
	once: 'a first try: one round at each radius, deck prepared (three minutes)',
	probe: 'the whole probe: three rounds at each radius, deck prepared (ten minutes)',
	whole: 'the whole check, from the first line (twenty minutes)',
};

/** Where practice begins and ends. */
export const practice = {
	/** Said wherever a practice check is shown or reported. */
	notice: 'PRACTICE: arm, deck and readings are invented. Nothing here is a real check.',
	arms: {
		title: 'PRACTICE: which invented arm?',
		about:
			'Each has one lesson. You probe it as you would at the bench; at the end its hidden truth stands beside what you found.',
		resume: ({arm, minutesAgo, step}: LeftOpen) => `go on with "${arm}", left ${agoText(minutesAgo)} at '${step}'`,
		firstTry: ({name}: {readonly name: string}) =>
			`a first try, in three minutes: ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
		hidden: 'one of them, not told which',
		home: 'back to real checks',
		leave: 'leave',
	},
	extent: {
		title: 'PRACTICE: how much of the check?',
		/** Before another arm takes the place of one that is not finished. */
		putAway: ({arm}: Pick<LeftOpen, 'arm'>) => `The practice on "${arm}" is put away as it stands.`,
		extents,
	},
	filed: {
		title: 'PRACTICE filed, apart from all real checks.',
		again: 'another invented arm',
		leave: 'leave',
	},
};
