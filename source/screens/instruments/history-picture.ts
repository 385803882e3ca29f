import stringWidth from 'string-width';
import {dayNumber} from '../../pages/pictures/date-ticks.js';
import {type HistoryLayout, type HistoryMark, historyLayout} from '../../pages/pictures/history-layout.js';
import {type ForceAxis, placesOn} from '../../pages/pictures/scale.js';
import type {ShownAs} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {plainNumber} from '../../words/numbers.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {brokenText, packed, type Room, type Sheet, sheetOf, shownText} from './sheet.js';

const glyphs = {
	unicode: {point: '●', bar: '│', end: '┬', foot: '┴', limit: '┄', zero: '·', tick: '┤', corner: '└', floor: '─'},
	ascii: {point: 'o', bar: '|', end: '-', foot: '-', limit: '~', zero: '.', tick: '+', corner: '+', floor: '-'},
} as const;
type Glyphs = (typeof glyphs)['unicode' | 'ascii'];

const marginColumns = 6;
const mostColumns = 72;
const mostHeight = 12;
const least = {columns: 30, height: 3};
// Heading, axis and days.
const fixedRows = 3;
/** From here on the limits have name and number at their lines. */
const namedFrom = 60;

/**
 * A figure over the years: each check with its uncertainty as a bar, the limits as broken lines, and on the axis what
 * was done meanwhile. Its sentence where there is no room.
 */
export function historyPicture(history: ShownAs<'history'>, room: Room, look: Look): Row[] {
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const legends = legendsOf(history, room.columns, glyph, look);
	const fits = legends.find(({lines}) => room.rows - fixedRows - lines.length >= least.height);
	if (!fits || room.columns < least.columns) return asSentence(history, room, look);
	const legend = fits.lines;
	const height = Math.min(mostHeight, room.rows - fixedRows - legend.length);
	const {pictures, instruments} = words;
	const layout = historyLayout(history, height);
	const names = layout.limits.map(({pct, zone}) => ({pct, text: instruments.bands[zone]({pct})}));
	const after = room.columns < namedFrom ? 0 : Math.max(0, ...names.map(({text}) => stringWidth(text))) + 1;
	const columns = Math.min(mostColumns, room.columns - marginColumns - after);
	const sheet = sheetOf(room);
	const heading = pictures.history.heading({label: history.label, count: history.points.length});
	sheet.write(0, 0, brokenText(shownText(heading, look), room.columns)[0] ?? '', 'strong');
	drawPlot(layout, height, columns, sheet, glyph);
	if (after > 0)
		for (const {pct, text} of names) {
			const row = height + 1 - layout.up.rowOf(pct);
			if (row <= height && sheet.isFree(row, marginColumns + columns + 1, text))
				sheet.write(row, marginColumns + columns + 1, text);
		}
	if (fits.namesEvents) drawEvents(history, layout, height + 1, columns, sheet);
	legend.forEach((text, row) => {
		sheet.write(height + fixedRows + row, 0, text);
	});
	return sheet.rows();
}

const asSentence = ({caption}: ShownAs<'history'>, room: Room, look: Look): Row[] =>
	brokenText(shownText(caption, look), room.columns)
		.slice(0, room.rows)
		.map((text) => ({text, tone: 'plain'}));

type Legend = {readonly lines: readonly string[]; readonly namesEvents: boolean};

/** What the marks stand for, and the limits by number; with less and less of it for less room, the limits last. */
function legendsOf(history: ShownAs<'history'>, columns: number, glyph: Glyphs, look: Look): Legend[] {
	const [goodPct = 0, usablePct = goodPct] = [...new Set(history.limitsPct.map(Math.abs))].sort(
		(one, other) => one - other,
	);
	const said = words.instruments.history;
	const isTwoSided = history.limitsPct.some((pct) => pct < 0);
	const point = [said.point({point: glyph.point})];
	const limits = usablePct > 0 ? [said.limits({limit: glyph.limit, goodPct, usablePct, isTwoSided})] : [];
	const events = (history.events ?? []).map(said.event);
	const legend = (texts: readonly string[], namesEvents: boolean): Legend => {
		const lines = packed(
			texts.map((text) => shownText(text, look)),
			columns,
		);
		return {lines, namesEvents};
	};
	const whole = legend([...point, ...limits, ...events], true);
	// On a line of its own the mark of a check is told at the cost of a row.
	const narrow = legend([...limits, ...events], true);
	return [...(columns < namedFrom ? [] : [whole]), narrow, legend(limits, false)];
}

function drawPlot(
	{over, up, points, limits}: HistoryLayout,
	height: number,
	columns: number,
	sheet: Sheet,
	glyph: Glyphs,
): void {
	const axisRow = height + 1;
	const draw = (row: number, column: number, mark: string, isStrong = false): void => {
		if (row > 0 && column >= 0 && column < columns)
			sheet.write(axisRow - row, marginColumns + column, mark, isStrong ? 'strong' : 'plain');
	};
	for (let column = 0; column < columns; column += 2) draw(up.rowOf(0), column, glyph.zero);
	for (const {pct} of limits) for (let column = 0; column < columns; column++) draw(up.rowOf(pct), column, glyph.limit);
	const place = placesOn(over, dayColumns(columns));
	for (const point of points) drawPoint(point, Math.round(place(point.day)), up, glyph, draw);
	for (let row = 1; row <= height; row++) sheet.write(axisRow - row, 0, sideOf(row, up, glyph));
	sheet.write(axisRow, marginColumns - 1, `${glyph.corner}${glyph.floor.repeat(columns)}`);
	sheet.write(axisRow + 1, marginColumns, firstAndLast(points, columns));
}

/** A column is left free on both sides, so that no bar stands on the axis. */
const dayColumns = (columns: number): readonly [number, number] => [1, columns - 2];

function drawPoint(
	{pct, lowPct, highPct}: HistoryMark,
	column: number,
	{rowOf}: ForceAxis,
	glyph: Glyphs,
	draw: (row: number, column: number, mark: string, isStrong?: boolean) => void,
): void {
	const [low, middle, high] = [rowOf(lowPct), rowOf(pct), rowOf(highPct)];
	for (let row = low; row <= high; row++) draw(row, column, glyph.bar);
	if (high > middle) draw(high, column, glyph.end);
	if (low < middle) draw(low, column, glyph.foot);
	draw(middle, column, glyph.point, true);
}

function sideOf(row: number, {ticks}: ForceAxis, glyph: Glyphs): string {
	const tick = ticks.find((one) => one.row === row);
	return `${(tick ? `${plainNumber(tick.pct)}%` : '').padStart(marginColumns - 1)}${tick ? glyph.tick : glyph.bar}`;
}

/** First and last day under the axis. */
function firstAndLast(points: readonly HistoryMark[], columns: number): string {
	const [first, last] = [points[0]?.date ?? '', points.at(-1)?.date ?? ''];
	return first === last ? first : `${first}${last.padStart(columns - first.length)}`;
}

/** A letter on the axis on each day on which something was done; two of one time stand side by side. */
function drawEvents(
	{events = []}: ShownAs<'history'>,
	{over}: HistoryLayout,
	row: number,
	columns: number,
	sheet: Sheet,
): void {
	const place = placesOn(over, dayColumns(columns));
	const taken = new Set<number>();
	for (const {date, mark} of events) {
		let column = Math.max(0, Math.min(columns - 1, Math.round(place(dayNumber(date)))));
		while (taken.has(column) && column < columns - 1) column++;
		taken.add(column);
		sheet.write(row, marginColumns + column, mark, 'strong');
	}
}
