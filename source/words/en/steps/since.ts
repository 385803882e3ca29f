import type {StepSentences} from '../../step-sentences.js';

export const since = {
	'done-since': {
		title: 'Since the last check',
		ask: 'What was done to arm or deck since the last check?',
		short: 'Done since the last check?',
		why: 'A change that has a cause is no drift: comparisons and the trend begin anew from here.',
		mistake: 'Leaving out a new cartridge, or a deck that was carried to another room.',
	},
	'done-since-note': {
		title: 'What was done',
		ask: 'What was done? A few words.',
		why: 'It stands in the history of the arm.',
		mistake: 'Writing when instead of what.',
	},
} satisfies Partial<StepSentences>;
