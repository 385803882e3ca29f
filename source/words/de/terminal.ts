import {meaningOf} from './system.js';

/** The terminal: why a face cannot be shown, and how the program stopped. */
export const terminal = {
	noTerminal:
		'Hier fehlt ein Terminal für Eingabe und Ausgabe. Ohne Terminal --plain nehmen: Antworten Zeile für Zeile, oder aus einer Datei.',
	folderGone:
		'Den Ordner, in dem gearbeitet wird, gibt es nicht mehr. In einen anderen wechseln, dann erneut versuchen.',
	tooDeep:
		'Das Gelesene ist zu tief verschachtelt: dieses Programm hat es nicht geschrieben. Eine heile Kopie an seine Stelle legen.',
	/** An error of the system that came unforeseen. */
	systemFault: ({file, code}: {readonly file: string | undefined; readonly code: string}) =>
		`${file === undefined ? 'Etwas' : `„${file}“`} ist nicht verwendbar: ${meaningOf(code)}`,
	tooOldNode: ({wanted, found}: {readonly wanted: string; readonly found: string}) =>
		`armdrift braucht Node ${wanted} oder neuer; hier läuft Node ${found}.`,
	ownFault: ({message}: {readonly message: string}) => `armdrift brach durch einen eigenen Fehler ab: ${message}`,
};
