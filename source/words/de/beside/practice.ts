import {agoText} from '../ago.js';

type LeftOpen = {readonly arm: string; readonly minutesAgo: number; readonly step: string};

/** How much of a check is practised. */
const extents = {
	once: 'erster Versuch: je Radius eine Runde, Laufwerk vorbereitet (3 min)',
	probe: 'ganze Messung: je Radius drei Runden, Laufwerk vorbereitet (10 min)',
	whole: 'ganze Prüfung, von der ersten Zeile an (20 min)',
};

/** Where practice begins and ends. */
export const practice = {
	/** Said wherever a practice check is shown or reported. */
	notice: 'ÜBUNG: Arm, Laufwerk und Messwerte sind erfunden. Nichts hier ist eine echte Prüfung.',
	arms: {
		title: 'ÜBUNG: welcher erfundene Arm?',
		about: 'Jeder Arm hat eine Lektion. Messen wie an der Werkbank. Am Ende zeigt sich, was verborgen war.',
		resume: ({arm, minutesAgo, step}: LeftOpen) =>
			`„${arm}“ fortsetzen, verlassen ${agoText(minutesAgo)} bei „${step}“`,
		firstTry: ({name}: {readonly name: string}) => `erster Versuch, drei Minuten: ${name}`,
		hidden: 'ein Arm aus dieser Liste, als Überraschung',
		home: 'zurück zu echten Prüfungen',
		leave: 'beenden',
	},
	extent: {
		title: 'ÜBUNG: wie viel von der Prüfung?',
		/** Before another arm takes the place of one that is not finished. */
		putAway: ({arm}: Pick<LeftOpen, 'arm'>) => `Die Übung an „${arm}“ endet hier, nicht fertig.`,
		extents,
	},
	filed: {
		title: 'ÜBUNG abgelegt, getrennt von echten Prüfungen.',
		again: 'anderer erfundener Arm',
		leave: 'beenden',
	},
};
