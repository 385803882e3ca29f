import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import {heardOf, inWords, type Shown, type Tone} from '../pages/shown-lines.js';
import {printable} from '../terminal/printable.js';
import {heldTogether} from '../words/held-together.js';
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

/** As in the words, or the bar over a screen, or the keys under it: they alone are faint. */
export type RowTone = Tone | 'bar' | 'dim';

/** One line of the screen, no wider than it. */
export type Row = {
	readonly text: string;
	readonly tone: RowTone;
	/** Cells that are meant otherwise than the rest of the line, from the left, none over another. */
	readonly spans?: readonly Span[];
	/** Belongs to the line before: a page does not end between them if it can help it. */
	readonly goesOn?: boolean;
	/** A page begins here, by this name. */
	readonly leaf?: string;
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
	const lines = wrapAnsi(heldTogether(printable(text)), width, {hard: true, trim: true})
		.replaceAll('\u00a0', ' ')
		.split('\n');
	broken.set(key, lines);
	return lines;
}

// Breaking a page of text takes some 5 ms, and at the next key nearly all of it is the same.
const broken = new Map<string, readonly string[]>();
const mostBroken = 500;

/** One thing that is shown, in the room there is for it: a picture has no more lines than that. A voice has it in words. */
export function rowsOfOne(one: Shown, room: Room, look: Look): Row[] {
	if (look.screenReader || one.kind === 'line') {
		const text = look.screenReader ? heardOf(one) : inWords(one);
		const tone = one.kind === 'line' ? one.tone : 'plain';
		return text === '' ? [] : textRows(`${toneMark(tone, look)}${text}`, room.columns, look, tone);
	}
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
