import type {StepSentences} from '../../step-sentences.js';

export const customer = {
	'customer-name': {
		title: 'Customer',
		short: 'Customer, or - for none?',
		ask: "The customer's name, or - for none.",
		why: "It stands on the customer's sheet, and in no report or table for anybody else.",
		mistake: 'Typing it into the name of the arm, which goes to the maker too.',
	},
	'customer-complaint': {
		title: 'What the customer told',
		short: 'Complaint, or - for none?',
		ask: 'What does the customer complain of? A few words, or - for none.',
		why: "It stands on the customer's sheet beside what the check found.",
		mistake: 'Typing what you think it is: that comes from the readings.',
	},
} satisfies Partial<StepSentences>;
