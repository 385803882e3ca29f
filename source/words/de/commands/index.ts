import {listed, plural} from '../../numbers.js';
import {misfitText, valueText} from '../misfits.js';
import {meaningOf} from '../system.js';
import {deleting} from './deleting.js';
import {type ArmMeant, desk, parting} from './desk.js';
import {exchange} from './exchange.js';

const hasPastCheck = ({arm, meant}: ArmMeant): string =>
	meant === undefined
		? `Von „${arm}“ gibt es keine frühere Prüfung. „armdrift list“ zeigt die Arme mit Prüfungen.`
		: `Von „${arm}“ gibt es keine frühere Prüfung. Gemeint „${meant}“?`;

/** The subcommands: what they print, and why they refuse. Names and paths are as they came. */
export const commands = {
	outputFailed: ({code}: {readonly code: string}) => `Schreiben auf die Standardausgabe ging nicht (${code}).`,
	optionRefused: ({option, because}: {readonly option: string; readonly because: string}) => `${option}: ${because}`,
	compute: {
		oneOnly: 'Nur eines angeben: eine Datei, --id oder --schema.',
		folder: ({name}: {readonly name: string}) => `${name}: das ist ein Ordner. Eine Datei nennen.`,
		nameFile: 'Eine Datei zum Lesen nennen: armdrift compute DATEI.',
		noFile: ({name}: {readonly name: string}) => `${name}: diese Datei gibt es nicht.`,
		notRead: ({name, code}: {readonly name: string; readonly code: string | undefined}) =>
			`${name}: ${code === undefined ? 'nicht lesbar.' : meaningOf(code)}`,
		notJson: ({name, line}: {readonly name: string; readonly line: number}) =>
			`${name}: kein vollständiges JSON (Zeile ${line}).`,
		tooLarge: ({name, mostMb}: {readonly name: string; readonly mostMb: number}) =>
			`${name}: größer als ${mostMb} MB, zu groß für ein Dokument mit Zahlen.`,
		noFigure: ({name}: {readonly name: string}) => `${name}: eine Zahl darin ist zu groß oder zu klein zum Rechnen.`,
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
		noneSuch: 'Keine frühere Prüfung passt zu diesen Optionen.',
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
				? `Ein Urteil „${verdict}“ gibt es nicht. Es gibt: ${known.join(', ')}.`
				: `Ein Urteil „${verdict}“ gibt es nicht. Gemeint „${meant}“?`,
	},
	due: {
		none: 'Kein Arm hat einen Termin für die nächste Prüfung.',
		noneWithin: ({days}: {readonly days: number}) =>
			plural(days, {
				one: 'Binnen 1 Tag ist keine Prüfung fällig.',
				other: `Binnen ${days} Tagen ist keine Prüfung fällig.`,
			}),
		noneOfArm: hasPastCheck,
		noCalendar: 'Kein Kalender geschrieben: kein Arm hat einen Termin für die nächste Prüfung.',
		lastCheck: ({date, because}: {readonly date: string; readonly because: string}) =>
			`letzte Prüfung ${date}. ${because}`,
		written: ({arms, cancelled, file}: {readonly arms: number; readonly cancelled: number; readonly file: string}) => {
			const wrote = plural(arms, {
				one: `Termin von 1 Arm in „${file}“ geschrieben.`,
				other: `Termine von ${arms} Armen in „${file}“ geschrieben.`,
			});
			if (cancelled === 0) return wrote;
			const took = plural(cancelled, {
				one: 'Der Termin von 1 Arm, der beiseite ist, entfällt.',
				other: `Die Termine von ${cancelled} Armen, die beiseite sind, entfallen.`,
			});
			return `${wrote} ${took}`;
		},
	},
	report: {
		none: ({dataDir}: {readonly dataDir: string}) => `In „${dataDir}“ gibt es keine frühere Prüfung für einen Bericht.`,
		noneOfArm: hasPastCheck,
		open: ({id}: {readonly id: string}) =>
			`Die Prüfung ${id} ist noch offen. Erst beenden, dann den Bericht schreiben.`,
		ofOtherArm: ({id, of, arm}: {readonly id: string; readonly of: string; readonly arm: string}) =>
			`Die Prüfung ${id} gehört zu „${of}“, nicht zu „${arm}“. --arm weglassen.`,
		noneCounts: ({arm}: {readonly arm: string}) =>
			`Von „${arm}“ zählt keine Prüfung: alle sind ungültig oder ohne Zahlen. Eine mit ihrer Kennung nennen: „armdrift list“ zeigt sie.`,
		written: ({file}: {readonly file: string}) => `Bericht in „${file}“ geschrieben.`,
		allOrOne: 'Eine Kennung oder --all angeben, nicht beides.',
		folderWanted: 'Den Ordner für die Berichte mit --out nennen.',
	},
	exchange: {
		...exchange,
		misfit: ({where, at, why}: {readonly where: string; readonly at: string; readonly why: string}) =>
			`${misfitText({at: at === '' ? where : `${where}.${at}`, why})}.`,
		value: (value: Parameters<typeof valueText>[0]) => `${valueText(value)}.`,
	},
	delete: deleting,
	practice: {
		/** Marks the folder of practice data. */
		mark: 'Prüfungen erfundener Tonarme, mit „armdrift practice“ gemacht. Kein Messwert in diesem Ordner ist echt.\nDer Ordner kann jederzeit gelöscht werden.\n',
		noArm: ({arm, meant}: ArmMeant) =>
			meant === undefined
				? `Einen Übungsarm „${arm}“ gibt es nicht. „armdrift practice --arms“ zeigt alle.`
				: `Einen Übungsarm „${arm}“ gibt es nicht. Gemeint „${meant}“?`,
		unknownArm: ({arm}: {readonly arm: string}) =>
			`Diese Version hat keinen Übungsarm „${arm}“; die offene Übung geht nicht weiter. Eine andere beginnen.`,
		seedWanted: ({most}: {readonly most: number}) => `--seed mit einer ganzen Zahl von 0 bis ${most} eintippen.`,
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
				? `Ein Thema oder einen Befehl „${topic}“ gibt es nicht. Es gibt: ${known.join(', ')}.`
				: `Ein Thema oder einen Befehl „${topic}“ gibt es nicht. Gemeint „${meant}“?`,
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
	desk,
	parting,
};
