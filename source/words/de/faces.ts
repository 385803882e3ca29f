import {inUnit, readingText} from '../numbers.js';
import {inQuotes} from './refusals.js';

type PageShown = {
	readonly page: number;
	readonly of: number;
	readonly byArrows: boolean;
	/** What the next page has, where it has a name. */
	readonly next?: string | undefined;
};
type Because = {readonly because: string};

/** What keys do, for the foot of a screen. */
const hints = {
	accept: 'Enter übernimmt',
	choose: 'Ziffer + Enter',
	several: 'Ziffern wählen · Enter übernimmt',
	yes: 'j ja',
	no: 'n nein',
	notYet: 'n noch nicht',
	still: 'j alles stimmt · Ziffer + Enter: was nicht stimmt',
	settle: 'Leertaste Countdown',
	settleFirst: 'Enter Countdown',
	acceptReading: 'Messwert + Enter übernimmt',
	side: 'eine Taste genügt',
	close: 'andere Taste: zu',
	pages: '← → Seiten',
	why: '? warum',
	/** With the keys of the number pad. */
	backByPad: 'Esc / zurück',
	whyByPad: '? * warum',
	steps: 'Tab Schritte, Halt',
	leave: 'Strg+C Ende',
};

/** Where Esc leads beside a check. */
const escapes = {
	back: 'Esc zurück',
	leave: 'Esc Ende',
	'first-screen': 'Esc Startseite',
	'real-checks': 'Esc echte Prüfungen',
	'another-arm': 'Esc anderer Arm',
};

const letters = {ä: 'ae', ö: 'oe', ü: 'ue', Ä: 'Ae', Ö: 'Oe', Ü: 'Ue', ß: 'ss', '„': '"', '“': '"'};
const dashes = {'·': '-', '—': '-', '–': '-', '−': '-'};
/** Both arrows stand first: they are looked for in this order. */
const arrows = {'← →': 'Links, Rechts', '←': 'Links', '→': 'Rechts', '↑': ' auf', '↓': ' ab'};

/** How characters beyond ASCII are written where the terminal has no more. */
const spellings = {
	'°': ' Grad',
	'′': ' min',
	'±': '+/-',
	µ: 'u',
	μ: 'u',
	'…': '...',
	'×': 'x',
	'\u00a0': ' ',
	'❯': '>',
	'✓': '+',
	'✗': 'x',
	...letters,
	...dashes,
	...arrows,
};

type Reading = {readonly readingPct: number; readonly stepPct: number};
type AtRadius = {readonly gaugeRadiusMm: number};
const gaugeAt = ({gaugeRadiusMm}: AtRadius): string => `Kraftmesser ${inUnit(gaugeRadiusMm, 'mm')}`;

/** What stands beside and under an arm that can be nudged. */
const gaugedArm = {
	shows: ({readingPct, stepPct}: Reading) => `Anzeige ${readingText(readingPct, stepPct)} %`,
	pivot: 'Drehpunkt',
	spindle: 'Tellerachse',
	stylus: 'Nadel',
	gauge: gaugeAt,
	/** One mark for both, told in two lines. */
	stylusOnGauge: (at: AtRadius) => ['Nadel auf', gaugeAt(at)],
	front: 'vorn: hier stehen',
};

type Columns = {readonly columns: number; readonly rows: number};
type Refused = Because & {readonly answer: string};

/** Lines in, lines out. */
const plain = {
	commands: ({commands}: {readonly commands: string}) => `Zeile für Zeile antworten. Befehle: ${commands}.`,
	noCommand: ({typed, commands}: {readonly typed: string; readonly commands: string}) =>
		`${inQuotes(typed)} ist kein Befehl; Befehle sind ${commands}.`,
	/** Arm, stage and progress are empty where they are as they were. */
	question: ({number, arm, stage, progress, title}: Question) => {
		const where = [arm, stage, progress].filter((one) => one !== '').join(', ');
		const what = stage.startsWith(`${title} (`) ? '' : ` ${/[.?]$/.test(title) ? title : `${title}.`}`;
		return `Frage ${number}.${where === '' ? '' : ` ${where}.`}${what}`;
	},
	unit: ({unit}: {readonly unit: string}) => `In ${unit}.`,
	typeAnew: 'Neu eintippen. Eine leere Zeile zeigt andere Wege.',
	keeps: ({text}: {readonly text: string}) => `Leere Zeile behält: ${text}`,
	takes: ({text}: {readonly text: string}) => `Leere Zeile nimmt: ${text}`,
	forNone: 'Nichts: „-“ eintippen.',
	option: ({number, label}: {readonly number: number; readonly label: string}) => `  ${number}. ${label}`,
	several: 'Eine Nummer, oder mehrere wie 2 4.',
	yesNo: ({question}: {readonly question: string | undefined}) =>
		question ? `${question.replace(/[.?]$/, '')}? j oder n.` : 'j oder n.',
	marks: 'j, wenn alles erledigt ist, oder die Nummern von dem, was fehlt.',
	noLonger: ({number, item}: {readonly number: number; readonly item: string}) => `  ${number}. geändert: ${item}`,
	still: 'j, wenn alles noch stimmt, oder die Nummer von dem, was sich geändert hat.',
	side: ({keys, label}: {readonly keys: readonly string[]; readonly label: string}) =>
		`  ${keys.join(' oder ')}: ${label}`,
	wanted: {
		number: ({last}: {readonly last: number}) => `Mit einer Nummer von 1 bis ${last} antworten.`,
		yesNo: 'Mit j oder n antworten.',
		marks: 'Mit j antworten, wenn alles erledigt ist, oder mit den Nummern von dem, was fehlt, wie 2 4.',
		still: 'Mit j antworten, wenn alles noch stimmt, oder mit der Nummer von dem, was sich geändert hat.',
		side: ({keys}: {readonly keys: readonly string[]}) => `Mit ${keys.join(' oder ')} antworten.`,
		nothing: 'Es wird nichts mehr gefragt.',
	},
	nothingByHand: 'Hier ist nichts von Hand zu tun.',
	/** An answer from a pipe that was not taken. */
	refused: ({number, title, answer, because}: Refused & {readonly number: number; readonly title: string}) =>
		`Frage ${number}, ${title}, Antwort „${answer}“: ${because}`,
	refusedChoice: ({title, answer, because}: Refused & {readonly title: string}) => `${title} „${answer}“: ${because}`,
	refusedOn: ({title, because}: Because & {readonly title: string}) => `${title}: ${because}`,
	/** It came after a number that did not pass. */
	unmended: ({answer, problem}: {readonly answer: string; readonly problem: string | undefined}) =>
		`${inQuotes(answer)} wurde nicht angenommen: ${problem ?? 'Die Zahl davor genügt nicht.'} Eine leere Zeile zeigt andere Wege.`,
	notSavedAgain: ({because}: Because) => `NICHT GESPEICHERT: ${because} Noch einmal antworten.`,
	notFiledAgain: ({because}: Because) => `NICHT GESPEICHERT: ${because} Eine leere Zeile versucht es noch einmal.`,
};

type Question = {
	readonly number: number;
	readonly arm: string;
	readonly stage: string;
	readonly progress: string;
	readonly title: string;
};

const pageOf = ({page, of}: {readonly page: number; readonly of: number}): string => `Seite ${page} von ${of}`;

/** What both faces say beside the pages, the full screens alone, and the plain lines alone. */
export const faces = {
	notSaved: ({because}: Because) => `NICHT GESPEICHERT: ${because}`,
	why: ({why, mistake}: {readonly why: string; readonly mistake: string}) => `${why} Häufiger Fehler: ${mistake}`,
	mistake: ({mistake}: {readonly mistake: string}) => `Häufiger Fehler: ${mistake}`,
	nudge: {
		keys: 'Stupsen: ← innen, → außen. Feiner: , (Komma) innen, . (Punkt) außen.',
		lines:
			'Mit einer Zeile stupsen: < innen, > außen, fein: , (Komma) innen, . (Punkt) außen. Dann den letzten Wert eintippen, bei dem der Arm hielt.',
	},
	hints,
	escapes,
	spellings,
	gaugedArm,
	/** Said where the screen is read aloud. */
	spokenMarks: {good: 'Gut: ', warn: 'Achtung: ', bad: 'Nicht gut: '},
	tooSmall: ({columns, rows, least}: Columns & {readonly least: Columns}) =>
		`Dieses Fenster (${columns} × ${rows}) ist zu klein: auf mindestens ${least.columns} × ${least.rows} vergrößern oder mit --plain starten.`,
	pasteCut: 'Zu viel eingefügt: Das Ende fehlt.',
	/** Which page of a body is shown, and the keys that turn it. */
	page: ({byArrows, next, page, of}: PageShown) => {
		const [back, on] = byArrows ? ['←', '→'] : ['Bild↑', 'Bild↓'];
		const ways = [...(page > 1 ? [`${back} zurück`] : []), ...(page < of ? [`${on} ${next ?? 'weiter'}`] : [])];
		return `${ways.join(' · ')} (${pageOf({page, of})})`;
	},
	pageOf,
	moreOptions: 'mehr …',
	yesNo: ({question = ''}: {readonly question?: string | undefined}) => `${question} j / n`.trim(),
	side: ({keys, label}: {readonly keys: readonly string[]; readonly label: string}) =>
		`${keys.join(' oder ')}  ${label}`,
	allStill: 'j  alles stimmt noch',
	noLonger: ({number, item, isMarked = false}: InDoubt) => `${number}${isMarked ? '❯' : ' '} geändert: ${item}`,
	field: {
		waysOut: 'neu eintippen · Enter: andere Wege',
		keeps: ({text, mayBeEmpty}: Offered) => `Enter behält ${text}${mayBeEmpty ? ' · nichts: -' : ''}`,
		takes: ({text, mayBeEmpty}: Offered) => `Enter nimmt ${text}${mayBeEmpty ? ' · nichts: -' : ''}`,
	},
	/** An answer that is not on the disk, or a check that could not be filed. */
	unsaved: {
		answer: {
			title: 'NICHT GESPEICHERT',
			whatIsSaved: 'Die Antwort ist noch hier. Alle früheren sind gespeichert.',
			keys: 'Enter noch einmal · Esc Antwort verwerfen · Strg+C Ende',
		},
		filing: {
			title: 'NOCH NICHT ABGELEGT',
			whatIsSaved: 'Alle Antworten sind gespeichert. Später weitermachen, um die Prüfung abzulegen.',
			keys: 'Enter noch einmal · Esc Startseite · Strg+C Ende',
		},
	},
	settled: 'Jetzt ablesen.',
	keepStill: ({seconds}: {readonly seconds: number}) => `Stillhalten: ${seconds} s`,
	keepHands: 'Hände weg, stillhalten',
	plain,
};

type InDoubt = {readonly number: number; readonly item: string; readonly isMarked?: boolean};
type Offered = {readonly text: string; readonly mayBeEmpty: boolean};
