import type {StepSentences} from '../../step-sentences.js';

export const customer = {
	'customer-name': {
		title: 'Customer',
		short: 'Customer? Type - for none.',
		ask: "Type the customer's name, or - for none.",
		why: "It stands on the customer's sheet and nowhere else.",
		mistake: 'Typing it into the name of the arm. The maker sees that name.',
	},
	'customer-complaint': {
		title: 'Complaint',
		short: 'Complaint? Type - for none.',
		ask: 'What does the customer complain of? A few words. Type - for none.',
		why: "It stands on the customer's sheet, beside what you found.",
		mistake: 'Typing what you think it is. The readings tell that.',
	},
} satisfies Partial<StepSentences>;
