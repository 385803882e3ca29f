import type {HistoryPoint, Shown} from '../pages/shown-lines.js';
import {numberAt} from './curve-axes.js';
import {type CurveScale, curveScale} from './curve-scale.js';

type History = Extract<Shown, {kind: 'history'}>;

const glyphs = {
	unicode: {
		point: '●',
		bar: '│',
		end: '┬',
		foot: '┴',
		limit: '┄',
		zero: '·',
		axis: '│',
		tick: '┤',
		corner: '└',
		floor: '─',
	},
	ascii: {
		point: 'o',
		bar: '|',
		end: '-',
		foot: '-',
		limit: '~',
		zero: '.',
		axis: '|',
		tick: '+',
		corner: '+',
		floor: '-',
	},
} as const;
type Glyphs = (typeof glyphs)['unicode' | 'ascii'];

const marginColumns = 6;
const mostColumns = 72;

/** A figure over the years: each check with its uncertainty as a bar, the limits as broken lines. */
export function historyPicture(
	history: History,
	width: number,
	unicode: boolean,
	height = width < 60 ? 6 : 8,
): string[] {
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	const columns = Math.max(12, Math.min(mostColumns, width - marginColumns));
	const {points, label} = history;
	const shownLimits = limitsInSight(history);
	const ends = points.flatMap(({pct, uncertaintyPct}) => [pct - uncertaintyPct, pct + uncertaintyPct]);
	const scale = curveScale([...ends, ...shownLimits, 0], height);
	const cells = Array.from({length: height + 1}, () => Array.from({length: columns}, () => ' '));
	const draw = (row: number, column: number, mark: string): void => {
		const line = cells[row];
		if (line && column >= 0 && column < columns && row > 0) line[column] = mark;
	};
	for (let column = 0; column < columns; column += 2) draw(scale.rowOf(0), column, glyph.zero);
	for (const limit of shownLimits)
		for (let column = 0; column < columns; column++) draw(scale.rowOf(limit), column, glyph.limit);
	for (const point of points) drawPoint(point, columnIn(points, columns), scale, glyph, draw);
	const body = cells
		.map((line, row) => (row === 0 ? '' : `${sideOf(row, scale, glyph)}${line.join('').trimEnd()}`))
		.slice(1)
		.reverse();
	return [
		`${label} (${points.length} checks)`.slice(0, width),
		...body,
		`${' '.repeat(marginColumns - 1)}${glyph.corner}${glyph.floor.repeat(columns)}`,
		`${' '.repeat(marginColumns)}${dates(points, columns)}`,
		`${glyph.point} with its uncertainty  ${glyph.limit} limits`.slice(0, width),
	];
}

/** The limits that lie where the figure does: to both sides of zero only for one that lies about there. */
function limitsInSight({points, limitsPct}: History): readonly number[] {
	const highest = Math.max(...points.map(({pct, uncertaintyPct}) => pct + uncertaintyPct));
	const lowest = Math.min(...points.map(({pct, uncertaintyPct}) => pct - uncertaintyPct));
	return limitsPct.filter((limit) => (limit > 0 ? highest > 0 : lowest < 0));
}

/** Where a day stands between the first and the last. */
function columnIn(points: readonly HistoryPoint[], columns: number): (date: string) => number {
	const days = points.map(({date}) => Date.parse(date));
	const [first, last] = [Math.min(...days), Math.max(...days)];
	// A column is left free on both sides, so that no bar stands on the axis.
	return (date) => 1 + Math.round(((Date.parse(date) - first) / Math.max(1, last - first)) * (columns - 3));
}

function drawPoint(
	{date, pct, uncertaintyPct}: HistoryPoint,
	columnOf: (date: string) => number,
	{rowOf}: CurveScale,
	glyph: Glyphs,
	draw: (row: number, column: number, mark: string) => void,
): void {
	const column = columnOf(date);
	const [low, middle, high] = [rowOf(pct - uncertaintyPct), rowOf(pct), rowOf(pct + uncertaintyPct)];
	for (let row = low; row <= high; row++) draw(row, column, glyph.bar);
	if (high > middle) draw(high, column, glyph.end);
	if (low < middle) draw(low, column, glyph.foot);
	draw(middle, column, glyph.point);
}

function sideOf(row: number, scale: CurveScale, glyph: Glyphs): string {
	const text = numberAt(row, scale);
	return `${text.padStart(marginColumns - 1)}${text === '' ? glyph.axis : glyph.tick}`;
}

/** First and last day under the axis. */
function dates(points: readonly HistoryPoint[], columns: number): string {
	const [first, last] = [points[0]?.date ?? '', points.at(-1)?.date ?? ''];
	return first === last ? first : `${first}${last.padStart(columns - first.length)}`;
}
