import type {StepSentences} from '../../step-sentences.js';

export const safe = {
	safe: {
		title: 'Absichern',
		short: 'Jede Zeile ansehen. Mit n geht es Zeile für Zeile.',
		ask: 'Jede Zeile abhaken.',
		why: 'Ein Schlag durch den laufenden Verstärker kann Lautsprecher zerstören. Kriecht der Teller, reißt er Kraftmesser und Nadel mit.',
		mistake: 'Zarge geöffnet, während der Netzstecker steckte.',
		caution:
			'Eine Nadel ist spitz; ihr Nadelträger bricht bei einer Berührung. Hier geht es nur um Mechanik. Verdrahtung, Erdung, Reparatur nur durch Elektrofachkräfte, nach örtlichen Vorschriften. Die Anleitung des Herstellers geht vor. Die Garantie kann verbieten, ein Lager anzufassen.',
	},
} satisfies Partial<StepSentences>;
