import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import type {Tone} from '../../pages/shown-lines.js';
import {printable} from '../../terminal/printable.js';
import type {Row, Span} from '../body.js';
import {type Look, written} from '../look.js';

/** Cells that a drawing may have; it is never larger. */
export type Room = {readonly columns: number; readonly rows: number};

/** Cells to draw on. What is drawn later lies over what was drawn before; outside of them nothing is drawn. */
export type Sheet = {
	readonly write: (row: number, column: number, text: string, tone?: Tone) => void;
	/** Whether a text would stand there within the sheet, with a blank cell to both its sides. */
	readonly isFree: (row: number, column: number, text: string) => boolean;
	/** Without blank rows at the end. */
	readonly rows: () => Row[];
};

type Cell = {readonly text: string; readonly tone: Tone};

const blank: Cell = {text: ' ', tone: 'plain'};

export function sheetOf({columns, rows}: Room): Sheet {
	const cells = Array.from({length: Math.max(0, rows)}, () => Array.from({length: Math.max(0, columns)}, () => blank));
	const write = (row: number, column: number, text: string, tone: Tone = 'plain'): void => {
		const line = cells[row];
		let at = column;
		for (const character of text) {
			const width = cellsOf(character);
			const before = line?.[at - 1];
			// A mark goes over the letter before it; a wide character takes the next cell too.
			if (line && width === 0 && before) line[at - 1] = {...before, text: before.text + character};
			else if (line && at >= 0 && at + width <= columns) {
				line[at] = {text: character, tone};
				if (width > 1) line[at + 1] = {text: '', tone};
			}
			at += width;
		}
	};
	const isFree = (row: number, column: number, text: string): boolean => {
		const end = column + stringWidth(text);
		const around = cells[row]?.slice(Math.max(0, column - 1), end + 1);
		return column >= 0 && end <= columns && around?.every((cell) => cell.text === ' ') === true;
	};
	return {write, isFree, rows: () => withoutBlankEnd(cells.map(rowOf))};
}

/** Letters of the keyboard, lines, blocks and Braille are a cell each; anything else is measured. */
const cellsOf = (character: string): number =>
	/^[ -~\u2500-\u259f\u2800-\u28ff]$/.test(character) ? 1 : stringWidth(character);

/** One tone where all that is written has the same; else spans over plain. */
function rowOf(line: readonly Cell[]): Row {
	const text = line
		.map((cell) => cell.text)
		.join('')
		.trimEnd();
	const tones = new Set(line.filter((cell) => cell.text.trim() !== '').map(({tone}) => tone));
	const [first = 'plain'] = tones;
	if (tones.size < 2) return {text, tone: first};
	return {text, tone: 'plain', spans: spansOf(line)};
}

function spansOf(line: readonly Cell[]): Span[] {
	const spans: Span[] = [];
	line.forEach(({tone}, column) => {
		if (tone === 'plain') return;
		const last = spans.at(-1);
		if (last?.tone === tone && last.to === column) spans[spans.length - 1] = {...last, to: column + 1};
		else spans.push({from: column, to: column + 1, tone});
	});
	return spans;
}

function withoutBlankEnd(rows: readonly Row[]): Row[] {
	const last = rows.findLastIndex(({text}) => text !== '');
	return rows.slice(0, last + 1);
}

/** A text as this terminal can show it, on one line. */
export const shownText = (text: string, look: Look): string => printable(written(text, look));

/** A text broken over lines of so many columns. */
export const brokenText = (text: string, columns: number): string[] =>
	text === '' || columns < 1 ? [] : wrapAnsi(text, columns, {hard: true, trim: true}).split('\n');

/** Texts beside each other, as many on a line as fit; one that is wider than a line is broken. */
export function packed(texts: readonly string[], columns: number): string[] {
	const lines: string[] = [];
	for (const text of texts) {
		const last = lines.at(-1);
		if (last !== undefined && stringWidth(last) + 3 + stringWidth(text) <= columns)
			lines[lines.length - 1] = `${last}   ${text}`;
		else lines.push(...brokenText(text, columns));
	}
	return lines;
}

/** Where a text begins that stands about a column: pushed inside where it would leave the first or the last of a span. */
export const startAbout = (text: string, column: number, [from, to]: readonly [number, number]): number =>
	Math.max(from, Math.min(to - stringWidth(text) + 1, column - Math.floor(stringWidth(text) / 2)));
