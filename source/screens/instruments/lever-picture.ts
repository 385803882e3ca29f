import {type LeverMark, leverHours, leverMarks} from '../../pages/pictures/lever-layout.js';
import type {ShownAs} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import type {Room} from './sheet.js';

const glyphs = {
	unicode: {pivot: '◉', hour: '·', lever: '•'},
	ascii: {pivot: 'o', hour: '.', lever: '*'},
} as const;

type Glyphs = (typeof glyphs)['unicode' | 'ascii'];

// A cell is about twice as high as wide, so this is a circle. Two columns to each side are kept for more letters.
const [radiusColumns, radiusRows] = [6, 3];
const [middleColumn, middleRow] = [radiusColumns + 2, radiusRows];

/** A clock face with the pivot in the middle and a lettered lever for each radius, which a list beside it explains. */
export function leverPicture(lever: ShownAs<'lever'>, room: Room, look: Look): Row[] {
	const width = room.columns;
	const marks = leverMarks(lever);
	if (marks.length === 0) return [];
	const list = listLines(marks);
	const face = faceOf(marks, glyphs[look.unicode ? 'unicode' : 'ascii']).map((row) => row.join(''));
	const faceWidth = face[0]?.length ?? 0;
	const isRoom = faceWidth + 2 + Math.max(...list.map(({length}) => length)) <= width && face.length <= room.rows;
	const above = Math.max(0, Math.floor((face.length - list.length) / 2));
	const lines = isRoom
		? Array.from({length: Math.max(face.length, list.length)}, (_, row) =>
				`${(face[row] ?? '').padEnd(faceWidth)}  ${list[row - above] ?? ''}`.trimEnd(),
			)
		: list;
	return lines.slice(0, room.rows).map((text) => ({text: text.slice(0, width), tone: 'plain'}));
}

function listLines(marks: readonly LeverMark[]): string[] {
	const widest = (texts: readonly string[]) => Math.max(...texts.map(({length}) => length));
	const radiusWidth = widest(marks.map(({radius}) => radius));
	const timeWidth = widest(marks.map(({time}) => time));
	const {heading, row} = words.pictures.lever;
	return [
		heading,
		...marks.map(({letter, radius, time}) =>
			row({letter, radius: radius.padStart(radiusWidth), time: time.padStart(timeWidth)}),
		),
	];
}

function faceOf(marks: readonly LeverMark[], glyph: Glyphs): string[][] {
	const cells = Array.from({length: 2 * middleRow + 1}, () => Array.from({length: 2 * middleColumn + 1}, () => ' '));
	const write = (row: number, column: number, text: string): boolean => {
		const line = cells[row];
		if (!line || line.slice(column, column + text.length).some((cell) => cell !== ' ')) return false;
		if (column < 0 || column + text.length > line.length) return false;
		line.splice(column, text.length, ...text);
		return true;
	};
	write(middleRow, middleColumn, glyph.pivot);
	for (const {clockDeg, letter} of marks) {
		const [row, column] = tipOf(clockDeg, 1);
		const outward = column < middleColumn ? -1 : 1;
		// Another letter at the same hour stands beside the first.
		[0, 1, 2].some((step) => write(row, column + step * outward, letter));
	}
	for (const {clockDeg} of marks) {
		const parts = partsOf(clockDeg);
		for (let part = 1; part < parts; part++) write(...tipOf(clockDeg, part / parts), glyph.lever);
	}
	for (const {clockDeg, number} of leverHours) {
		const [row, column] = tipOf(clockDeg, 1);
		const text = number ?? glyph.hour;
		write(row, column - (text.length - 1), text);
	}
	return cells;
}

/** The cell at a part of the way from the pivot to the rim of the face. */
function tipOf(clockDeg: number, part: number): [row: number, column: number] {
	const turn = (clockDeg * Math.PI) / 180;
	return [
		middleRow - evenly(part * radiusRows * Math.cos(turn)),
		middleColumn + evenly(part * radiusColumns * Math.sin(turn)),
	];
}

/** Dots from pivot to tip: one a row for a steep lever, one a column for a flat one, so that it looks equally thin. */
function partsOf(clockDeg: number): number {
	const [row, column] = tipOf(clockDeg, 1);
	const [rows, columns] = [Math.abs(row - middleRow), Math.abs(column - middleColumn)];
	return columns <= 2 * rows ? rows : columns;
}

/** Rounds halves away from the pivot on all sides, and a cosine's last digits to where they belong. */
const evenly = (cells: number): number => Math.sign(cells) * Math.round(Math.abs(cells) + 1e-9);
