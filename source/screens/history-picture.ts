import {type HistoryMark, historyLayout} from '../pages/pictures/history-layout.js';
import {type ForceAxis, placesOn} from '../pages/pictures/scale.js';
import type {ShownAs} from '../pages/shown-lines.js';
import {words} from '../words/index.js';

const glyphs = {
	unicode: {point: '●', bar: '│', end: '┬', foot: '┴', limit: '┄', zero: '·', tick: '┤', corner: '└', floor: '─'},
	ascii: {point: 'o', bar: '|', end: '-', foot: '-', limit: '~', zero: '.', tick: '+', corner: '+', floor: '-'},
} as const;
type Glyphs = (typeof glyphs)['unicode' | 'ascii'];

const marginColumns = 6;
const mostColumns = 72;

/** A figure over the years: each check with its uncertainty as a bar, the limits as broken lines. */
export function historyPicture(
	history: ShownAs<'history'>,
	width: number,
	unicode: boolean,
	height = width < 60 ? 6 : 8,
): string[] {
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	const columns = Math.max(12, Math.min(mostColumns, width - marginColumns));
	const {over, up, points, limits} = historyLayout(history, height);
	// A column is left free on both sides, so that no bar stands on the axis.
	const place = placesOn(over, [0, columns - 3]);
	const cells = Array.from({length: height + 1}, () => Array.from({length: columns}, () => ' '));
	const draw = (row: number, column: number, mark: string): void => {
		const line = cells[row];
		if (line && column >= 0 && column < columns && row > 0) line[column] = mark;
	};
	for (let column = 0; column < columns; column += 2) draw(up.rowOf(0), column, glyph.zero);
	for (const {pct} of limits) for (let column = 0; column < columns; column++) draw(up.rowOf(pct), column, glyph.limit);
	for (const point of points) drawPoint(point, 1 + Math.round(place(point.day)), up, glyph, draw);
	const body = cells
		.map((line, row) => (row === 0 ? '' : `${sideOf(row, up, glyph)}${line.join('').trimEnd()}`))
		.slice(1)
		.reverse();
	const {heading, legend} = words.pictures.history;
	return [
		heading({label: history.label, count: points.length}).slice(0, width),
		...body,
		`${' '.repeat(marginColumns - 1)}${glyph.corner}${glyph.floor.repeat(columns)}`,
		`${' '.repeat(marginColumns)}${firstAndLast(points, columns)}`,
		legend(glyph).slice(0, width),
	];
}

function drawPoint(
	{pct, lowPct, highPct}: HistoryMark,
	column: number,
	{rowOf}: ForceAxis,
	glyph: Glyphs,
	draw: (row: number, column: number, mark: string) => void,
): void {
	const [low, middle, high] = [rowOf(lowPct), rowOf(pct), rowOf(highPct)];
	for (let row = low; row <= high; row++) draw(row, column, glyph.bar);
	if (high > middle) draw(high, column, glyph.end);
	if (low < middle) draw(low, column, glyph.foot);
	draw(middle, column, glyph.point);
}

function sideOf(row: number, {ticks}: ForceAxis, glyph: Glyphs): string {
	const tick = ticks.find((one) => one.row === row);
	return `${(tick ? `${tick.pct}%` : '').padStart(marginColumns - 1)}${tick ? glyph.tick : glyph.bar}`;
}

/** First and last day under the axis. */
function firstAndLast(points: readonly HistoryMark[], columns: number): string {
	const [first, last] = [points[0]?.date ?? '', points.at(-1)?.date ?? ''];
	return first === last ? first : `${first}${last.padStart(columns - first.length)}`;
}
