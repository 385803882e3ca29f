import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import type {Shown, Tone} from '../pages/shown-lines.js';
import {printable} from '../terminal/printable.js';
import {words} from '../words/index.js';
import {armOverRecord} from './arm-over-record.js';
import {curvePicture} from './curve-picture.js';
import {historyPicture} from './history-picture.js';
import {leverPicture} from './lever-picture.js';
import {type Look, toneMark, written} from './look.js';
import {bandsPicture, planPicture, windowPicture} from './pictures.js';

/** As in the words, or the bar over a screen. */
export type RowTone = Tone | 'bar';

/** One line of the screen, no wider than it. */
export type Row = {
	readonly text: string;
	readonly tone: RowTone;
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
	tone: 'dim',
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

/** All that is shown beside the question, as lines of the screen. */
export const rowsOf = (shown: readonly Shown[], width: number, look: Look): Row[] =>
	shown.flatMap((one, place) =>
		rowsOfOne(one, width, look).map(({text, tone, goesOn = true}, index) => ({
			text: clipped(text, width),
			tone,
			...(goesOn && (index > 0 || hasHeading(shown, place)) ? {goesOn} : {}),
		})),
	);

/** Whether the line before a picture or a table is its heading, which must not stand alone at the foot of a page. */
function hasHeading(shown: readonly Shown[], place: number): boolean {
	const before = shown[place - 1];
	return shown[place]?.kind !== 'line' && before?.kind === 'line' && before.tone === 'strong';
}

/** Ink cuts a text of many lines as one when a single line is too wide, so none may be. */
const clipped = (text: string, width: number): string => (stringWidth(text) > width ? printable(text, width) : text);

function rowsOfOne(one: Shown, width: number, look: Look): Row[] {
	if (one.kind === 'line') {
		const mark = toneMark(one.tone, look);
		return textRows(`${mark}${one.text}`, width, look, one.tone);
	}
	if (look.screenReader) return textRows(one.caption, width, look);
	switch (one.kind) {
		case 'bands':
			return plainRows(bandsPicture(one, width, look.unicode));
		case 'window':
			return [{text: windowPicture(one, width, look.unicode), tone: 'plain'}];
		case 'table':
			return tableRows(one.head, one.rows, width, look);
		case 'curve':
			// An arm that reaches no part of the record has no curve, and the caption says so.
			return one.wanted.length === 0
				? textRows(one.caption, width, look)
				: plainRows(curvePicture(one, width, look.unicode));
		case 'lever':
			return plainRows(leverPicture(one, width, look.unicode));
		case 'history':
			return plainRows(historyPicture(one, width, look.unicode));
		case 'gauged-arm':
			return plainRows(armOverRecord(one, width, look.unicode));
		case 'plan':
			return plainRows(planPicture(look.unicode));
	}
}

const plainRows = (lines: readonly string[]): Row[] => lines.map((text) => ({text, tone: 'plain'}));

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
