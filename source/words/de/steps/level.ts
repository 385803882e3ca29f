import type {StepSentences} from '../../step-sentences.js';

/** Why the level is read, and why twice. */
const whyLevel =
	'Ein geneigtes Laufwerk zieht den Arm bergab: 1° macht 1,7 % Zug. Die Wasserwaage hat einen eigenen Fehler. Gedreht zeigt sie ihn.';

export const level = {
	'level-lr-1': {
		title: 'Waagrecht, quer',
		short: 'Quer: Was ist höher? 0,2 rechts',
		ask: ({isSprung}) =>
			`${isSprung ? 'Gefedertes Laufwerk blockieren, so weit der Hersteller erlaubt. ' : ''}Wasserwaage quer auf die Tonarmbasis legen. Ist rechts 0,2° höher: 0,2 rechts eintippen.`,
		why: whyLevel,
		mistake: 'Auf Teller oder Zarge gelesen. Der Drehpunkt sitzt auf der Tonarmbasis.',
	},
	'level-lr-2': {
		title: 'Waagrecht, quer, gedreht',
		short: 'Gedreht: Was ist höher? 0,2 rechts',
		ask: 'Wasserwaage an derselben Stelle um 180° drehen. Eintippen, welche Seite des Laufwerks höher ist, zum Beispiel 0,1 links.',
		why: whyLevel,
		mistake: 'An eine andere Stelle gelegt. Lässt sie sich nicht drehen: „-“ eintippen.',
	},
	'level-fb-1': {
		title: 'Waagrecht, längs',
		short: 'Längs: Was ist höher? 0,2 hinten',
		ask: 'Wasserwaage längs auf die Tonarmbasis legen. Ist hinten 0,2° höher: 0,2 hinten eintippen.',
		why: whyLevel,
		mistake: 'Auf das Laufwerk gestützt.',
	},
	'level-fb-2': {
		title: 'Waagrecht, längs, gedreht',
		short: 'Gedreht: Was ist höher? 0,2 hinten',
		ask: 'Wasserwaage an derselben Stelle um 180° drehen. Eintippen, welche Seite des Laufwerks höher ist, zum Beispiel 0,1 vorn.',
		why: whyLevel,
		mistake: 'An eine andere Stelle gelegt. Lässt sie sich nicht drehen: „-“ eintippen.',
	},
} satisfies Partial<StepSentences>;
