import type {StepSentences} from '../../step-text.js';

export const wire = {
	'arm-wire-path': {
		title: 'Where the wires leave',
		ask: 'How do the signal wires leave the arm?',
		why: 'Wires are the usual cause of a side pull that changes over the record.',
		mistake: 'Looking only at the outside: a tight twist inside the column pulls just as well.',
	},
	'arm-wire-stiffness': {
		title: 'Stiffness of the wires',
		ask: 'How stiff are they?',
		why: 'Stiff wires act as a spring and creep over the seasons, so they are checked more often.',
		mistake: 'Judging by the thickness of the insulation alone.',
	},
} satisfies Partial<StepSentences>;
