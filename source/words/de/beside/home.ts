import type {DueArm} from '../../../results/years/due.js';
import {agoText} from '../ago.js';
import {results} from '../results.js';

type OfArm = {readonly arm: string};
type UnfinishedValues = OfArm & {readonly minutesAgo: number; readonly step: string; readonly isReady: boolean};

/** The first page, and those that a check begins and ends with. */
export const home = {
	title: ({version}: {readonly version: string}) => `armdrift ${version}: Ist der Arm frei?`,
	nothingOpen:
		'Eine volle Prüfung dauert etwa eine halbe Stunde. Kraftmesser, Wasserwaage, Tonarmwaage und Lineal bereitlegen.',
	unfinished: ({arm, minutesAgo, step, isReady}: UnfinishedValues) =>
		`Prüfung nicht fertig: ${arm}, verlassen ${agoText(minutesAgo)} bei „${step}“. Laufwerk ${isReady ? '' : 'nicht '}spielbereit.`,
	resume: ({arm}: OfArm) => `Prüfung fortsetzen: ${arm}`,
	start: 'neue volle Prüfung',
	recheck: ({arm, inDays}: OfArm & Pick<DueArm, 'inDays'>) =>
		`Nachprüfung: ${arm} (${inDays > 0 ? `fällig ${results.due({inDays})}` : results.due({inDays})})`,
	past: 'frühere Prüfungen',
	profiles: 'Profile: Arme, Tonabnehmer, Werkzeug',
	settings: 'Einstellungen: gut und brauchbar, Zeit, Ton',
	practice: 'üben an einem erfundenen Arm',
	leave: 'beenden',
	/** Before another check puts an open one aside. */
	checkOpen: {
		title: 'Eine Prüfung ist offen',
		goingOn: ({arm}: OfArm) =>
			`Die Prüfung von ${arm} ist noch offen. Beginnt eine neue, wird die offene als unterbrochen abgelegt: Laufwerk nicht spielbereit. Spielbereit machen: unter „frühere Prüfungen“.`,
		resume: 'offene Prüfung fortsetzen',
		start: 'unterbrochen ablegen, neue beginnen',
	},
	/** A check was to be repeated while one is open. */
	notRepeated: ({arm}: OfArm) => `Die Prüfung von ${arm} ist noch offen. Fortsetzen oder eine andere wählen.`,
	/** A check of a named arm was asked for while one of another arm is open. */
	notStarted: ({arm, asked}: OfArm & {readonly asked: string}) =>
		`Die Prüfung von ${arm} ist noch offen, ${asked} muss warten. Fortsetzen oder eine neue beginnen.`,
	filed: {
		ready: 'Abgelegt. Laufwerk spielbereit. Vor der ersten Platte die Lautstärke herunterdrehen.',
		notReady: 'Abgelegt. Laufwerk NICHT spielbereit. Was noch zu tun ist, steht unter „frühere Prüfungen“.',
		leave: 'beenden',
		home: 'zurück zur Startseite',
	},
};
