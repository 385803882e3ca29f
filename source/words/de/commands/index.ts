import {listed} from '../../numbers.js';
import {misfitText, valueText} from '../misfits.js';
import {deleting} from './deleting.js';
import {exchange} from './exchange.js';

type ArmMeant = {
	/** As it was typed. */
	readonly arm: string;
	/** The known name that was probably meant. */
	readonly meant?: string | undefined;
};

const hasPastCheck = ({arm, meant}: ArmMeant): string =>
	meant === undefined
		? `Von „${arm}“ gibt es keine frühere Prüfung; Arme mit Prüfungen zeigt „armdrift list“.`
		: `Von „${arm}“ gibt es keine frühere Prüfung; gemeint „${meant}“?`;

/** The subcommands: what they print, and why they refuse. Names and paths are as they came. */
export const commands = {
	outputFailed: ({code}: {readonly code: string}) => `Schreiben auf die Standardausgabe ging nicht (${code}).`,
	optionRefused: ({option, because}: {readonly option: string; readonly because: string}) => `${option}: ${because}`,
	compute: {
		oneOnly: 'Nur eines angeben: eine Datei, --id oder --schema.',
		nameFile: 'Eine DATEI nennen oder ein Dokument auf die Standardeingabe geben: armdrift compute DATEI.',
		noFile: ({name}: {readonly name: string}) => `${name}: diese Datei gibt es nicht.`,
		notRead: ({name, code}: {readonly name: string; readonly code: string | undefined}) =>
			`${name}: nicht lesbar (${code ?? 'Grund unbekannt'}).`,
		notJson: ({name, reason}: {readonly name: string; readonly reason: string}) =>
			`${name}: kein JSON-Dokument (${reason}).`,
		tooLarge: ({name, mostMb}: {readonly name: string; readonly mostMb: number}) =>
			`${name}: größer als ${mostMb} MB; so groß ist kein Dokument.`,
		noFigure: ({name}: {readonly name: string}) => `${name}: die Zahlen darin sind zu groß oder zu klein zum Rechnen.`,
		fault: ({at, sentence}: {readonly at: string; readonly sentence: string}) => `${at}: ${sentence}`,
	},
	/** An arm that was named by a part of its name. */
	armNamed: {
		taken: ({typed, arm}: {readonly typed: string; readonly arm: string}) => `„${typed}“ steht für „${arm}“.`,
		takenOrNew: ({typed, arm}: {readonly typed: string; readonly arm: string}) =>
			`„${typed}“ steht für „${arm}“. Für einen anderen Arm armdrift ohne --arm starten.`,
		several: ({typed, arms}: {readonly typed: string; readonly arms: readonly string[]}) =>
			`„${typed}“ passt auf mehrere Arme: ${listed(arms.map((one) => `„${one}“`))}. Mehr vom Namen eintippen.`,
	},
	list: {
		none: ({dataDir}: {readonly dataDir: string}) => `In „${dataDir}“ gibt es keine früheren Prüfungen.`,
		noneOfArm: hasPastCheck,
		noneSuch: 'Keine frühere Prüfung passt dazu.',
		unknownVerdict: ({
			verdict,
			meant,
			known,
		}: {
			readonly verdict: string;
			readonly meant: string | undefined;
			readonly known: readonly string[];
		}) =>
			meant === undefined
				? `Ein Urteil „${verdict}“ gibt es nicht; es gibt: ${known.join(', ')}.`
				: `Ein Urteil „${verdict}“ gibt es nicht; gemeint „${meant}“?`,
	},
	due: {
		none: 'Kein Arm hat einen Termin für die nächste Prüfung, oder keinen in dieser Zeit.',
		noneOfArm: hasPastCheck,
		noCalendar: 'Kein Arm hat einen Termin für die nächste Prüfung; der Kalender wäre leer.',
		lastCheck: ({date, because}: {readonly date: string; readonly because: string}) =>
			`letzte Prüfung ${date}. ${because}`,
		written: ({arms, cancelled, file}: {readonly arms: number; readonly cancelled: number; readonly file: string}) => {
			const dates = arms === 0 ? 'kein Termin' : arms === 1 ? 'der Termin eines Arms' : `die Termine von ${arms} Armen`;
			const taken = cancelled === 0 ? '' : `; ${cancelled === 1 ? 'einer' : cancelled} gestrichen (Arm beiseite)`;
			return `In „${file}“ geschrieben: ${dates}${taken}.`;
		},
	},
	report: {
		none: ({dataDir}: {readonly dataDir: string}) => `In „${dataDir}“ gibt es keine frühere Prüfung für einen Bericht.`,
		noneOfArm: hasPastCheck,
		open: ({id}: {readonly id: string}) =>
			`Die Prüfung ${id} ist noch offen: erst beenden, dann den Bericht schreiben.`,
		ofOtherArm: ({id, of, arm}: {readonly id: string; readonly of: string; readonly arm: string}) =>
			`Die Prüfung ${id} gehört zu „${of}“, nicht zu „${arm}“: eines von beiden weglassen.`,
		noneCounts: ({arm}: {readonly arm: string}) =>
			`Von „${arm}“ zählt keine Prüfung: alle sind ungültig oder ohne Zahlen. Eine mit ihrer Kennung nennen, siehe „armdrift list“.`,
		written: ({file}: {readonly file: string}) => `Bericht in „${file}“ geschrieben.`,
		allOrOne: 'Eine Kennung oder --all angeben, nicht beides.',
		folderWanted: 'Den Ordner für die Berichte mit --out nennen.',
	},
	exchange: {
		...exchange,
		misfit: ({where, at, why}: {readonly where: string; readonly at: string; readonly why: string}) =>
			`${where}.${misfitText({at, why})}`,
		value: (value: Parameters<typeof valueText>[0]) => `${valueText(value)}.`,
	},
	delete: deleting,
	practice: {
		/** Marks the folder of practice data. */
		mark: 'Prüfungen erfundener Tonarme, mit „armdrift practice“ gemacht. Kein Messwert in diesem Ordner ist echt.\nEr kann jederzeit gelöscht werden; nichts anderes hängt an ihm.\n',
		noArm: ({arm, meant}: ArmMeant) =>
			meant === undefined
				? `Einen Übungsarm „${arm}“ gibt es nicht; siehe „armdrift practice --arms“.`
				: `Einen Übungsarm „${arm}“ gibt es nicht; gemeint „${meant}“?`,
		unknownArm: ({arm}: {readonly arm: string}) =>
			`Die offene Übung ist von einem Arm „${arm}“, den diese Version nicht hat: eine andere beginnen.`,
		seedWanted: ({most}: {readonly most: number}) => `Nötig: --seed mit einer ganzen Zahl von 0 bis ${most}.`,
	},
	/** What lies where: the name of each place. */
	paths: {
		data: 'Daten',
		checks: 'abgelegte Prüfungen',
		index: 'Index',
		reports: 'Berichte',
		backups: 'Sicherungen',
		practice: 'Übung',
	},
	help: {
		oneOnly: 'Ein Thema oder --man angeben, nicht beides.',
		unknown: ({
			topic,
			meant,
			known,
		}: {
			readonly topic: string;
			readonly meant: string | undefined;
			readonly known: readonly string[];
		}) =>
			meant === undefined
				? `Ein Thema oder einen Befehl „${topic}“ gibt es nicht; es gibt: ${known.join(', ')}.`
				: `Ein Thema oder einen Befehl „${topic}“ gibt es nicht; gemeint „${meant}“?`,
		topics: 'Themen (armdrift help THEMA):',
		commands: '\nBefehle (armdrift help BEFEHL):',
		more: '\nOptionen und Beispiele: armdrift --help\nAlles als Handbuchseite: armdrift --man | man -l -\n',
		/** Headings of the manual page, which are set in capitals there, and its first line. */
		man: {
			name: 'BEZEICHNUNG',
			synopsis: 'ÜBERSICHT',
			description: 'BESCHREIBUNG',
			options: 'OPTIONEN',
			commands: 'BEFEHLE',
			examples: 'BEISPIELE',
			usage: '[Optionen]',
			about: 'einen Tonarm an der Werkbank prüfen',
		},
	},
	/** The workbench on the disk: checks that are started, repeated and marked. */
	desk: {
		newArm: 'neuer Arm',
		itsEnd: 'Ende',
		nothingOpen: 'Es gibt keine unfertige Prüfung; eine neue beginnen.',
		cameToEnd: 'Diese Prüfung war zu Ende; sie ist jetzt abgelegt, siehe „frühere Prüfungen“.',
		voidAlready: ({reason}: {readonly reason: string}) => `Diese Prüfung ist schon ungültig: ${reason}.`,
		notVoid: 'Diese Prüfung ist nicht ungültig.',
		/** What is noted beside one check, or beside all of them, cannot be read. */
		countsNotKnown: ({sentence, ofAll}: {readonly sentence: string; readonly ofAll: boolean}) =>
			ofAll
				? `${sentence} Bis dahin ist unbekannt, welche Prüfungen ungültig sind: Vergleich, Trend und Fälligkeit lassen alle aus.`
				: `${sentence} Bis dahin ist unbekannt, ob die Prüfung ungültig ist: Vergleich, Trend und Fälligkeit lassen sie aus.`,
		filedElsewhere: ({filed, own}: {readonly filed: string; readonly own: string}) =>
			`Diese Prüfung wurde inzwischen anderswo abgelegt, mit anderen Antworten, als ${filed}. Die hiesige geht als ${own} weiter: beide bleiben.`,
		nothingToRepeat: 'Kein Arm hat eine frühere Prüfung zum Wiederholen; eine volle beginnen.',
		nothingToRepeatOf: ({arm, meant}: ArmMeant) =>
			meant === undefined
				? `Von „${arm}“ gibt es keine frühere Prüfung zum Wiederholen; mit --arm eine volle beginnen.`
				: `Von „${arm}“ gibt es keine frühere Prüfung zum Wiederholen; gemeint „${meant}“?`,
		listedWrongly: ({id, dataDir}: {readonly id: string; readonly dataDir: string}) =>
			`Die Prüfung ${id} steht im Index unter dem falschen Arm. Den Ordner „index“ in „${dataDir}“ löschen: er entsteht neu aus den Prüfungen.`,
		remarkInTheWay: ({sentence}: {readonly sentence: string}) =>
			`${sentence} Diese Datei verschieben, dann erneut löschen.`,
	},
	/** The last lines on the normal screen: what is saved or filed, and how to go on. */
	parting: {
		saved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
			`Gespeichert: die Prüfung „${arm}“ steht bei „${step}“.`,
		practiceSaved: ({arm, step}: {readonly arm: string; readonly step: string}) =>
			`ÜBUNG gespeichert: „${arm}“ steht bei „${step}“.`,
		waiting: ({arm, step, goOn}: {readonly arm: string; readonly step: string; readonly goOn: string}) =>
			`Die Prüfung „${arm}“ wartet noch bei „${step}“. Weiter mit: ${goOn}`,
		goOn: ({goOn}: {readonly goOn: string}) => `Weiter mit: ${goOn}`,
		goOnWithDeck: ({isReady, goOn}: {readonly isReady: boolean; readonly goOn: string}) =>
			isReady ? `Laufwerk spielbereit. Weiter mit: ${goOn}` : `Laufwerk nicht spielbereit. Weiter mit: ${goOn}`,
		nothingOpen: 'Beendet; keine Prüfung ist offen.',
		filed: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
			`Abgelegt als ${id}: ${verdict ?? 'kein Urteil'}.`,
		practiceFiled: ({id, verdict}: {readonly id: string; readonly verdict: string | null | undefined}) =>
			`ÜBUNG, abgelegt als ${id}: ${verdict ?? 'kein Urteil'}.`,
		deckNotReady: 'Laufwerk NICHT spielbereit: Zurückbauen unter „frühere Prüfungen“.',
		deckReady: 'Laufwerk spielbereit; bei der ersten Platte leise drehen.',
		practiceReport: ({command}: {readonly command: string}) => `Bericht dazu: ${command}`,
	},
};
