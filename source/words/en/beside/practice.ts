import {agoText} from '../ago.js';

type LeftOpen = {readonly arm: string; readonly minutesAgo: number; readonly step: string};

/** How much of a check is practised. */
const extents = {
	once: 'first try: one round at each radius, deck prepared (3 min)',
	probe: 'whole probe: three rounds at each radius, deck prepared (10 min)',
	whole: 'whole check, from the first line (20 min)',
};

/** Where practice begins and ends. */
export const practice = {
	/** Said wherever a practice check is shown or reported. */
	notice: 'PRACTICE: arm, deck and readings are invented. Nothing here is a real check.',
	arms: {
		title: 'PRACTICE: which invented arm?',
		about: 'Each arm has one lesson. Probe it as at the bench. At the end you see what was hidden.',
		resume: ({arm, minutesAgo, step}: LeftOpen) => `go on with "${arm}", left ${agoText(minutesAgo)} at '${step}'`,
		firstTry: ({name}: {readonly name: string}) => `first try, three minutes: ${name}`,
		hidden: 'one of the arms below, you are not told which',
		home: 'back to real checks',
		leave: 'leave',
	},
	extent: {
		title: 'PRACTICE: how much of the check?',
		/** Before another arm takes the place of one that is not finished. */
		putAway: ({arm}: Pick<LeftOpen, 'arm'>) => `The practice on "${arm}" ends here, unfinished.`,
		extents,
	},
	filed: {
		title: 'PRACTICE filed, apart from all real checks.',
		again: 'another invented arm',
		leave: 'leave',
	},
};
