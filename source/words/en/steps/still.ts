import type {StepSentences} from '../../step-sentences.js';

const stillSo = {
	why: 'Readings taken under changed conditions must not be mixed with the earlier ones. What has changed is asked anew, and a new series begins.',
	mistake: 'Saying yes from memory: look.',
};

export const still = {
	'still-last-time': {
		title: 'As last time?',
		ask: 'This was filled in from the last check and from the profiles. Is all of it still so?',
		...stillSo,
	},
	'still-conditions': {
		title: 'All still so?',
		ask: 'Some of this may have changed since. Is all of it still so?',
		...stillSo,
	},
	'still-bias-on': {
		title: 'Bias still as set?',
		ask: 'The bias device was set some time ago. Has it been left alone?',
		...stillSo,
	},
	'still-level': {
		title: 'Level still so?',
		ask: 'The level was read some time ago. Has the deck stood untouched?',
		...stillSo,
	},
	'still-force': {
		title: 'Tracking force still so?',
		ask: 'The force was set some time ago. Is it still the same?',
		...stillSo,
	},
} satisfies Partial<StepSentences>;
