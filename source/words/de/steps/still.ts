import type {StepSentences} from '../../step-sentences.js';

const stillSo = {
	why: 'Readings before and after a change do not mix. What changed is asked again, and a new series begins.',
	mistake: 'Answering from memory. Look.',
};

export const still = {
	'still-last-time': {
		title: 'Same as last time?',
		ask: 'Look at each line, filled in from last time. All still true?',
		...stillSo,
	},
	'still-conditions': {
		title: 'All still true?',
		ask: 'Look at each line. Is all of it still true?',
		...stillSo,
	},
	'still-bias-on': {
		title: 'Bias untouched?',
		ask: 'Look at the bias device. Untouched since you set it?',
		...stillSo,
	},
	'still-level': {
		title: 'Deck untouched?',
		ask: 'Look at the deck. Untouched since you read the level?',
		...stillSo,
	},
	'still-force': {
		title: 'Tracking force untouched?',
		ask: 'Look at the counterweight. Untouched since you weighed?',
		...stillSo,
	},
} satisfies Partial<StepSentences>;
