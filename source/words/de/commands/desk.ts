import type {Verdict} from '../../../results/figures-types.js';
import {found} from '../../speaker.js';

export type ArmMeant = {
	/** As it was typed. */
	readonly arm: string;
	/** The known name that was probably meant. */
	readonly meant?: string | undefined;
};

const verdicts: Readonly<Record<Verdict, string>> = {
	good: 'gut',
	usable: 'brauchbar',
	beyond: 'zu viel',
	undecided: 'unentschieden',
	'off-scale': 'Skalenende',
};

/** A verdict within a sentence; one of a later version stands for itself. */
const verdictIn = (verdict: string | null | undefined): string =>
	verdict ? (found(verdicts, verdict) ?? verdict) : 'kein Urteil';

/** The workbench on the disk: checks that are started, repeated and marked. */
export const desk = {
	newArm: 'neuer Arm',
	itsEnd: 'Ende',
	nothingOpen: 'Keine Prüfung ist offen. Eine neue beginnen.',
	cameToEnd: 'Diese Prüfung war zu Ende und ist jetzt abgelegt. „frühere Prüfungen“ zeigt sie.',
	voidAlready: ({reason}: {readonly reason: string}) => `Diese Prüfung ist schon ungültig: ${reason}.`,
	notVoid: 'Diese Prüfung ist nicht ungültig.',
	/** What is noted beside one check, or beside all of them, cannot be read. */
	countsNotKnown: ({sentence, ofAll}: {readonly sentence: string; readonly ofAll: boolean}) =>
		ofAll
			? `${sentence} Bis dahin lassen Vergleich, Trend und Fälligkeit alle Prüfungen aus: jede kann ungültig sein.`
			: `${sentence} Bis dahin lassen Vergleich, Trend und Fälligkeit die Prüfung aus: sie kann ungültig sein.`,
	filedElsewhere: ({filed, own}: {readonly filed: string; readonly own: string}) =>
		`Ein anderes armdrift hat diese Prüfung als ${filed} abgelegt, mit anderen Antworten. Die eigene geht als ${own} weiter: beide bleiben.`,
	nothingToRepeat: 'Kein Arm hat eine frühere Prüfung zum Wiederholen. Eine volle beginnen.',
	nothingToRepeatOf: ({arm, meant}: ArmMeant) =>
		meant === undefined
			? `Von „${arm}“ gibt es keine frühere Prüfung zum Wiederholen. Mit --arm eine volle beginnen.`
			: `Von „${arm}“ gibt es keine frühere Prüfung zum Wiederholen. Gemeint „${meant}“?`,
	listedWrongly: ({id, dataDir}: {readonly id: string; readonly dataDir: string}) =>
		`Die Prüfung ${id} steht unter dem falschen Arm. Den Ordner „index“ in „${dataDir}“ löschen: der nächste Start legt ihn neu an.`,
	remarkInTheWay: ({sentence}: {readonly sentence: string}) =>
		`${sentence} Diese Datei verschieben, dann erneut löschen.`,
};

/** The last lines on the normal screen: what is saved or filed, and how to go on. */
export const parting = {
	saved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
		`Gespeichert: die Prüfung „${arm}“ steht bei „${step}“.`,
	practiceSaved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
		`ÜBUNG gespeichert: „${arm}“ steht bei „${step}“.`,
	waiting: ({arm, step, goOn}: {readonly arm: string; readonly step: string; readonly goOn: string}) =>
		`Die Prüfung „${arm}“ wartet noch bei „${step}“. Weiter mit: ${goOn}`,
	goOn: ({goOn}: {readonly goOn: string}) => `Weiter mit: ${goOn}`,
	goOnWithDeck: ({isReady, goOn}: {readonly isReady: boolean; readonly goOn: string}) =>
		isReady ? `Laufwerk spielbereit. Weiter mit: ${goOn}` : `Laufwerk nicht spielbereit. Weiter mit: ${goOn}`,
	nothingOpen: 'Keine Prüfung ist offen.',
	filed: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
		`Abgelegt als ${id}: ${verdictIn(verdict)}.`,
	practiceFiled: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
		`ÜBUNG, abgelegt als ${id}: ${verdictIn(verdict)}.`,
	deckNotReady: 'Laufwerk NICHT spielbereit. Was zurückzubauen ist, zeigt „frühere Prüfungen“.',
	deckReady: 'Laufwerk spielbereit. Für die erste Platte die Lautstärke unten lassen.',
	practiceReport: ({command}: {readonly command: string}) => `Bericht dazu: ${command}`,
};
