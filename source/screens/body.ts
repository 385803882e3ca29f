import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import type {Shown, Tone} from '../pages/shown-lines.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {armOverRecord} from './instruments/arm-over-record.js';
import {bandsPicture} from './instruments/bands-picture.js';
import {clearancePicture} from './instruments/clearance-picture.js';
import {curvePicture} from './instruments/curve-picture.js';
import {deckPicture} from './instruments/deck-picture.js';
import {countdownPicture, figurePicture} from './instruments/figure-picture.js';
import {frictionPicture} from './instruments/friction-picture.js';
import {historyPicture} from './instruments/history-picture.js';
import {levelPicture} from './instruments/level-picture.js';
import {leverPicture} from './instruments/lever-picture.js';
import {pivotChoice} from './instruments/pivot-choice.js';
import type {Room} from './instruments/sheet.js';
import {type Look, toneMark, written} from './look.js';

/** Cells of a line, from the first to the one after the last. */
export type Span = {readonly from: number; readonly to: number; readonly tone: Tone};

/** As in the words, or the bar over a screen. */
export type RowTone = Tone | 'bar';

/** One line of the screen, no wider than it. */
export type Row = {
	readonly text: string;
	readonly tone: RowTone;
	/** Cells that are meant otherwise than the rest of the line, from the left, none over another. */
	readonly spans?: readonly Span[];
	/** Belongs to the line before: a page does not end between them if it can help it. */
	readonly goesOn?: boolean;
};

/** A text as lines of the screen: what this terminal can show, foreign characters made safe, broken to the width. */
export const textRows = (text: string, width: number, look: Look, tone: RowTone = 'plain'): Row[] =>
	wrapped(written(text, look), width).map((one) => ({text: one, tone}));

/** The foot of a screen: what its keys do. */
export const footRows = (hints: readonly string[], width: number, look: Look): Row[] =>
	textRows(look.unicode ? hints.join(' · ') : hints.join(', ').replaceAll(' · ', ', '), width, look, 'dim');

/** The line that says which page of a body is shown. */
export const pageRow = (values: Parameters<typeof words.faces.page>[0], look: Look): Row => ({
	text: written(words.faces.page(values), look),
	tone: 'plain',
});

function wrapped(text: string, width: number): readonly string[] {
	if (text === '') return [];
	const key = `${width} ${text}`;
	const known = broken.get(key);
	if (known) return known;
	if (broken.size >= mostBroken) broken.clear();
	const lines = wrapAnsi(printable(text), width, {hard: true, trim: true}).split('\n');
	broken.set(key, lines);
	return lines;
}

// Breaking a page of text takes some 5 ms, and at the next key nearly all of it is the same.
const broken = new Map<string, readonly string[]>();
const mostBroken = 500;

/**
 * All that is shown beside the question, as lines of the screen.
 *
 * @param rows lines that are kept for it; pictures that can do with fewer leave room for the sentences beside them
 */
export function rowsOf(
	shown: readonly Shown[],
	width: number,
	look: Look,
	rows = width < 60 ? usualRows.narrow : usualRows.wide,
): Row[] {
	const drawn = (one: Shown, most: number) => rowsOfOne(one, {columns: width, rows: most}, look);
	const whole: (readonly Row[] | undefined)[] = [];
	for (const [place, one] of shown.entries()) {
		const left = rows - rowCount(whole);
		// A picture stays on one page with its heading.
		const most = hasHeading(shown, place) ? rows - 1 : rows;
		whole.push(isPliant(one) ? undefined : drawn(one, isWithWords(one, left) ? left : most));
	}
	const left = rows - rowCount(whole);
	const least = leastOfPliant[width < 60 ? 'narrow' : 'wide'];
	const share = Math.floor(left / Math.max(1, whole.filter((one) => one === undefined).length));
	return shown.flatMap((one, place) =>
		(whole[place] ?? drawn(one, one.kind === 'figure' ? Math.max(figureRows, share) : Math.max(least, share))).map(
			({goesOn = true, ...row}, index) => ({
				...row,
				text: clipped(row.text, width),
				...(goesOn && (index > 0 || hasHeading(shown, place)) ? {goesOn} : {}),
			}),
		),
	);
}

// A curve in fewer lines tells less than one on a page of its own.
const leastCurve = 8;

/** Whether a picture keeps to the lines that are left under what is said before it: an arm that is nudged must be in sight. */
const isWithWords = ({kind}: Shown, left: number): boolean =>
	kind === 'gauged-arm' || (kind === 'curve' && left >= leastCurve);

const rowCount = (drawn: readonly (readonly Row[] | undefined)[]): number =>
	drawn.reduce((sum, one) => sum + (one?.length ?? 0), 0);

// What a screen of 40 × 20 leaves for an instrument, and one of 80 × 24.
const usualRows = {narrow: 7, wide: 11};
const leastOfPliant = {narrow: 4, wide: 5};
/** Large digits are three lines. */
const figureRows = 3;

/** A picture that says what counts in a few lines too. */
const isPliant = ({kind}: Shown): boolean => pliantKinds.has(kind);
const pliantKinds: ReadonlySet<Shown['kind']> = new Set(['bands', 'clearance', 'deck', 'figure', 'friction', 'level']);

/** Whether the line before a picture or a table is its heading, which must not stand alone at the foot of a page. */
function hasHeading(shown: readonly Shown[], place: number): boolean {
	const before = shown[place - 1];
	return shown[place]?.kind !== 'line' && before?.kind === 'line' && before.tone === 'strong';
}

/** Ink cuts a text of many lines as one when a single line is too wide, so none may be. */
const clipped = (text: string, width: number): string => (stringWidth(text) > width ? printable(text, width) : text);

/** One thing that is shown, in the room there is for it: a picture has no more lines than that. */
export function rowsOfOne(one: Shown, room: Room, look: Look): Row[] {
	const width = room.columns;
	if (one.kind === 'line') {
		const mark = toneMark(one.tone, look);
		return textRows(`${mark}${one.text}`, width, look, one.tone);
	}
	if (look.screenReader) return one.caption === '' ? [] : textRows(one.caption, width, look);
	return drawnOnce(one, `${room.columns} ${room.rows} ${look.unicode} ${look.color}`, () => picture(one, room, look));
}

// While something is typed beside a picture it is the same one at every key.
const drawings = new WeakMap<Shown, Map<string, Row[]>>();

function drawnOnce(one: Shown, key: string, draw: () => Row[]): Row[] {
	const known = drawings.get(one) ?? new Map<string, Row[]>();
	drawings.set(one, known);
	const rows = known.get(key) ?? draw();
	known.set(key, rows);
	return rows;
}

function picture(one: Exclude<Shown, {kind: 'line'}>, room: Room, look: Look): Row[] {
	switch (one.kind) {
		case 'bands':
			return bandsPicture(one, room, look);
		case 'friction':
			return frictionPicture(one, room, look);
		case 'figure':
			return figurePicture(one, room, look);
		case 'countdown':
			return countdownPicture(one, room, look);
		case 'clearance':
			return clearancePicture(one, room, look);
		case 'deck':
			return deckPicture(one, room, look);
		case 'level':
			return levelPicture(one, room, look);
		case 'table':
			return tableRows(one.head, one.rows, room.columns, look);
		case 'curve':
			return curvePicture(one, room, look);
		case 'lever':
			return leverPicture(one, room, look);
		case 'history':
			return historyPicture(one, room, look);
		case 'gauged-arm':
			return armOverRecord(one, room, look);
		case 'plan':
			return pivotChoice(room, look);
	}
}

/** A table in columns; where it is too wide, each cell on a line of its own under the name of its row. */
function tableRows(heading: readonly string[], body: readonly (readonly string[])[], width: number, look: Look): Row[] {
	const inReach = (row: readonly string[]) => row.map((cell) => written(cell, look));
	const head = inReach(heading);
	const rows = body.map(inReach);
	const widths = head.map((_, column) => Math.max(...[head, ...rows].map((row) => stringWidth(row[column] ?? ''))));
	const whole = widths.reduce((sum, one) => sum + one + 2, -2);
	if (whole <= width) {
		const laid = (row: readonly string[]) =>
			row
				.map((cell, column) => cell + ' '.repeat((widths[column] ?? 0) - stringWidth(cell)))
				.join('  ')
				.trimEnd();
		return [{text: laid(head), tone: 'plain'}, ...rows.map((row): Row => ({text: laid(row), tone: 'plain'}))];
	}
	return rows.flatMap(([name = '', ...cells]) => [
		{text: name, tone: 'strong', goesOn: false} as const,
		...cells.flatMap((cell, column) => textRows(`${head[column + 1] ?? ''}: ${cell}`, width, look)),
	]);
}
