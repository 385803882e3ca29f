import type {StepSentences} from '../../step-sentences.js';

export const customer = {
	'customer-name': {
		title: 'Kunde',
		short: 'Kunde? Keiner: „-“ eintippen.',
		ask: 'Namen des Kunden eintippen, oder „-“ für keinen.',
		why: 'Er steht auf dem Blatt für den Kunden und sonst nirgends.',
		mistake: 'In den Namen des Arms geschrieben. Diesen Namen sieht der Hersteller.',
	},
	'customer-complaint': {
		title: 'Beanstandung',
		short: 'Beanstandung? Keine: „-“ eintippen.',
		ask: 'Was beanstandet der Kunde? Wenige Worte. Nichts: -.',
		why: 'Es steht auf dem Blatt für den Kunden, neben dem Befund.',
		mistake: 'Eine Vermutung eingetippt. Das sagen die Messwerte.',
	},
} satisfies Partial<StepSentences>;
