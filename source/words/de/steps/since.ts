import type {StepSentences} from '../../step-sentences.js';

export const since = {
	'done-since': {
		title: 'Since the last check',
		ask: 'What was done to the arm or deck since then?',
		short: 'Done since the last check?',
		why: 'A change with a known cause is no drift. The trend starts again here.',
		mistake: 'Leaving out a new cartridge, or a deck that was moved.',
	},
	'done-since-note': {
		title: 'What was done',
		ask: 'Type what was done, in a few words.',
		why: 'It stands in the history of the arm.',
		mistake: 'Typing when it was done, not what.',
	},
} satisfies Partial<StepSentences>;
