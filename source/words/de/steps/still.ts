import type {StepSentences} from '../../step-sentences.js';

const stillSo = {
	why: 'Messwerte vor und nach einer Änderung gehören nicht zusammen. Geändertes wird neu gefragt, eine neue Messreihe beginnt.',
	mistake: 'Aus dem Gedächtnis geantwortet. Nachsehen.',
};

export const still = {
	'still-last-time': {
		title: 'Wie letztes Mal?',
		ask: 'Jede Zeile ansehen, sie ist vom letzten Mal. Stimmt noch alles?',
		...stillSo,
	},
	'still-conditions': {
		title: 'Stimmt alles noch?',
		ask: 'Am Laufwerk nachsehen. Stimmt noch alles?',
		...stillSo,
	},
	'still-bias-on': {
		title: 'Antiskating unberührt?',
		ask: 'Antiskating ansehen. Seit dem Einstellen unberührt?',
		...stillSo,
	},
	'still-level': {
		title: 'Laufwerk unberührt?',
		ask: 'Laufwerk ansehen. Seit dem Ablesen der Wasserwaage unberührt?',
		...stillSo,
	},
	'still-force': {
		title: 'Auflagekraft unberührt?',
		ask: 'Gegengewicht ansehen. Seit dem Wiegen unberührt?',
		...stillSo,
	},
} satisfies Partial<StepSentences>;
