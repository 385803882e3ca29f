import type {StepSentences} from '../../step-sentences.js';

export const radii = {
	'radius-inner': {
		title: 'Inner radius',
		ask: 'Type the inner radius, from the spindle.',
		why: 'Keep it the same in all checks, to compare them. Near the label the leads wind up and an automatic stop engages.',
		mistake: 'Going below 75 mm with an automatic stop. Its linkage then holds the arm.',
	},
	'radius-outer': {
		title: 'Outer radius',
		ask: 'Type the outer radius, from the spindle.',
		why: 'Two radii show whether the pull changes over the record.',
		mistake: 'Going so far out that the arm touches its rest.',
	},
	'radius-extra': {
		title: 'Third radius',
		ask: 'Type a third radius to probe, or - for none.',
		why: 'A rub at mid-record shows at neither end.',
		mistake: 'Taking a third one always. Two are enough for most arms.',
	},
} satisfies Partial<StepSentences>;
