import {readingText} from '../numbers.js';
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
	accept: 'Enter accept',
	choose: 'digit + Enter',
	several: 'digits mark · Enter takes',
	yes: 'y yes',
	no: 'n no',
	notYet: 'n not yet',
	still: 'y all true · digit + Enter: changed',
	settle: 'Space countdown',
	settleFirst: 'Enter countdown',
	acceptReading: 'reading + Enter accept',
	side: 'one key answers',
	close: 'other keys close',
	pages: '← → pages',
	why: '? why',
	/** With the keys of the number pad. */
	backByPad: 'Esc or / back',
	whyByPad: '? or * why',
	steps: 'Tab steps, stop',
	leave: 'Ctrl+C leave',
};

/** Where Esc leads beside a check. */
const escapes = {
	back: 'Esc back',
	leave: 'Esc leave',
	'first-screen': 'Esc first screen',
	'real-checks': 'Esc real checks',
	'another-arm': 'Esc another arm',
};

/** How characters beyond ASCII are written where the terminal has no more. */
const spellings = {
	'°': ' deg',
	'′': ' min',
	'±': '+/-',
	µ: 'u',
	μ: 'u',
	'·': '-',
	'…': '...',
	'—': '-',
	'–': '-',
	'−': '-',
	'×': 'x',
	'\u00a0': ' ',
	'❯': '>',
	'✓': '+',
	'✗': 'x',
	'← →': 'Left, Right',
	'←': 'Left',
	'→': 'Right',
};

type Reading = {readonly readingPct: number; readonly stepPct: number};
type AtRadius = {readonly gaugeRadiusMm: number};
const gaugeAt = ({gaugeRadiusMm}: AtRadius): string => `gauge at ${Number(gaugeRadiusMm.toFixed(1))} mm`;

/** What stands beside and under an arm that can be nudged. */
const gaugedArm = {
	shows: ({readingPct, stepPct}: Reading) => `the gauge shows ${readingText(readingPct, stepPct)} %`,
	pivot: 'pivot',
	spindle: 'spindle',
	stylus: 'stylus',
	gauge: gaugeAt,
	/** One mark for both, told in two lines. */
	stylusOnGauge: (at: AtRadius) => ['stylus on the', gaugeAt(at)],
	front: 'front: you stand here',
};

type Columns = {readonly columns: number; readonly rows: number};
type Refused = Because & {readonly answer: string};

/** Lines in, lines out. */
const plain = {
	commands: ({commands}: {readonly commands: string}) => `Answer line by line. Commands: ${commands}.`,
	noCommand: ({typed, commands}: {readonly typed: string; readonly commands: string}) =>
		`${inQuotes(typed)} is no command; commands are ${commands}.`,
	/** Arm, stage and progress are empty where they are as they were. */
	question: ({number, arm, stage, progress, title}: Question) => {
		const where = [arm, stage, progress].filter((one) => one !== '').join(', ');
		const what = stage.startsWith(`${title} (`) ? '' : ` ${/[.?]$/.test(title) ? title : `${title}.`}`;
		return `Question ${number}.${where === '' ? '' : ` ${where}.`}${what}`;
	},
	unit: ({unit}: {readonly unit: string}) => `In ${unit}.`,
	typeAnew: 'Type it again. An empty line shows other ways out.',
	keeps: ({text}: {readonly text: string}) => `Empty line keeps: ${text}`,
	takes: ({text}: {readonly text: string}) => `Empty line takes: ${text}`,
	forNone: 'Type - for none.',
	option: ({number, label}: {readonly number: number; readonly label: string}) => `  ${number}. ${label}`,
	several: 'One number, or several such as 2 4.',
	yesNo: ({question}: {readonly question: string | undefined}) =>
		question ? `${question.replace(/[.?]$/, '')}? y or n.` : 'y or n.',
	marks: 'y if all is done, or the numbers of what is not.',
	noLonger: ({number, item}: {readonly number: number; readonly item: string}) => `  ${number}. changed: ${item}`,
	still: 'y if all is still true, or the number of what changed.',
	side: ({keys, label}: {readonly keys: readonly string[]; readonly label: string}) =>
		`  ${keys.join(' or ')}: ${label}`,
	wanted: {
		number: ({last}: {readonly last: number}) => `Answer with a number from 1 to ${last}.`,
		yesNo: 'Answer y or n.',
		marks: 'Answer y if all is done, or the numbers of what is not, such as 2 4.',
		still: 'Answer y if all is still true, or the number of what changed.',
		side: ({keys}: {readonly keys: readonly string[]}) => `Answer ${keys.join(' or ')}.`,
		nothing: 'Nothing more is asked.',
	},
	nothingByHand: 'There is nothing to do by hand here.',
	/** An answer from a pipe that was not taken. */
	refused: ({number, title, answer, because}: Refused & {readonly number: number; readonly title: string}) =>
		`Question ${number}, ${title}, answer '${answer}': ${because}`,
	refusedChoice: ({title, answer, because}: Refused & {readonly title: string}) => `${title} '${answer}': ${because}`,
	refusedOn: ({title, because}: Because & {readonly title: string}) => `${title}: ${because}`,
	/** It came after a number that did not pass. */
	unmended: ({answer, problem}: {readonly answer: string; readonly problem: string | undefined}) =>
		`${inQuotes(answer)} was not taken: ${problem ?? 'The number before did not pass.'} An empty line shows the ways out.`,
	notSavedAgain: ({because}: Because) => `NOT SAVED: ${because} Give the answer again.`,
	notFiledAgain: ({because}: Because) => `NOT SAVED: ${because} An empty line tries again.`,
};

type Question = {
	readonly number: number;
	readonly arm: string;
	readonly stage: string;
	readonly progress: string;
	readonly title: string;
};

const pageOf = ({page, of}: {readonly page: number; readonly of: number}): string => `page ${page} of ${of}`;

/** What both faces say beside the pages, the full screens alone, and the plain lines alone. */
export const faces = {
	notSaved: ({because}: Because) => `NOT SAVED: ${because}`,
	why: ({why, mistake}: {readonly why: string; readonly mistake: string}) => `${why} The usual mistake: ${mistake}`,
	mistake: ({mistake}: {readonly mistake: string}) => `The usual mistake: ${mistake}`,
	nudge: {
		keys: 'Nudge: ← in, → out. Finer: , (comma) in, . (point) out.',
		lines: 'Nudge by a line of < in, > out, fine: , (comma) in, . (point) out. Then type the last reading that held.',
	},
	hints,
	escapes,
	spellings,
	gaugedArm,
	/** Said where the screen is read aloud. */
	spokenMarks: {good: 'OK: ', warn: 'Note: ', bad: 'Problem: '},
	tooSmall: ({columns, rows, least}: Columns & {readonly least: Columns}) =>
		`This window (${columns} × ${rows}) is too small: make it at least ${least.columns} × ${least.rows}, or start with --plain.`,
	pasteCut: 'Too much to paste: its end is missing.',
	/** Which page of a body is shown, and the keys that turn it. */
	page: ({byArrows, next, page, of}: PageShown) => {
		const [back, on] = byArrows ? ['←', '→'] : ['PgUp', 'PgDn'];
		const ways = [...(page > 1 ? [`${back} back`] : []), ...(page < of ? [`${on} ${next ?? 'more'}`] : [])];
		return `${ways.join(' · ')} (${pageOf({page, of})})`;
	},
	pageOf,
	moreOptions: 'more …',
	yesNo: ({question = ''}: {readonly question?: string | undefined}) => `${question} y / n`.trim(),
	side: ({keys, label}: {readonly keys: readonly string[]; readonly label: string}) => `${keys.join(' or ')}  ${label}`,
	allStill: 'y  all still true',
	noLonger: ({number, item, isMarked = false}: InDoubt) => `${number}${isMarked ? '❯' : ' '} changed: ${item}`,
	field: {
		waysOut: 'type it again · Enter: other ways out',
		keeps: ({text, mayBeEmpty}: Offered) => `Enter keeps ${text}${mayBeEmpty ? ' · none: -' : ''}`,
		takes: ({text, mayBeEmpty}: Offered) => `Enter takes ${text}${mayBeEmpty ? ' · none: -' : ''}`,
	},
	/** An answer that is not on the disk, or a check that could not be filed. */
	unsaved: {
		answer: {
			title: 'NOT SAVED',
			whatIsSaved: 'Your answer is still here. All earlier ones are saved.',
			keys: 'Enter try again · Esc drop this answer · Ctrl+C leave',
		},
		filing: {
			title: 'NOT FILED YET',
			whatIsSaved: 'All answers are saved, but the check could not be filed. Go on with it later to file it.',
			keys: 'Enter try again · Esc first screen · Ctrl+C leave',
		},
	},
	settled: 'Read the gauge now.',
	keepStill: ({seconds}: {readonly seconds: number}) => `Keep still: ${seconds} s`,
	keepHands: 'hands off, keep still',
	plain,
};

type InDoubt = {readonly number: number; readonly item: string; readonly isMarked?: boolean};
type Offered = {readonly text: string; readonly mayBeEmpty: boolean};
