import {type CurveLayout, curveLayout} from '../../pages/pictures/curve-layout.js';
import type {ShownAs, Tone} from '../../pages/shown-lines.js';
import {words} from '../../words/index.js';
import {plainNumber} from '../../words/numbers.js';
import {ascii} from '../ascii.js';
import type {Row} from '../body.js';
import type {Look} from '../look.js';
import {type Across, across, curvePlot, type PlotCell} from './curve-plot.js';
import {brokenText, type Room, sheetOf, shownText} from './sheet.js';

type Glyphs = Readonly<Record<PlotCell | 'least' | 'side' | 'number' | 'corner', string>>;

// Told apart by shape: a colour may not be there.
const glyphs: Readonly<Record<'unicode' | 'ascii', Glyphs>> = {
	unicode: {
		measured: '●',
		own: '○',
		wanted: '⠒',
		wantedLow: '⠤',
		wantedHigh: '⠉',
		leftOver: '│',
		join: '·',
		band: '⠂',
		zero: '╴',
		floor: '─',
		tick: '┬',
		empty: ' ',
		least: '▲',
		side: '│',
		number: '┤',
		corner: '└',
	},
	ascii: {
		measured: '#',
		own: 'o',
		wanted: '-',
		wantedLow: '_',
		wantedHigh: "'",
		leftOver: '|',
		join: '~',
		band: '.',
		zero: '-',
		floor: '-',
		tick: '+',
		empty: ' ',
		least: '^',
		side: '|',
		number: '+',
		corner: '+',
	},
};

// A flatter picture of the same height shows less of how the curve bends.
const mostColumns = 96;

// What it takes to see how the curve bends; and rows of an axis, its radii and a legend.
const leastPlot = {columns: 16, rows: 3};
const axisRows = 2;
// Higher than this a row is finer than an arm is read.
const mostHeight = 16;

/**
 * The wanted reading over the record with what was read, to scale: the plot, its axis, the radii, and a legend of one
 * line, or of two where it is narrow. Its sentence where there is no room, or the arm reaches no part of the record.
 */
export function curvePicture(curve: ShownAs<'curve'>, room: Room, look: Look): Row[] {
	for (const legendRows of [1, 2]) {
		const height = Math.min(mostHeight, room.rows - axisRows - legendRows);
		if (curve.wanted.length === 0 || height < leastPlot.rows || room.columns < leastPlot.columns) break;
		const drawn = drawnWith(curve, height, room.columns, look);
		if (drawn.length <= room.rows) return drawn;
	}
	return brokenText(shownText(curve.caption, look), room.columns)
		.slice(0, room.rows)
		.map((text) => ({text, tone: 'plain'}));
}

/** @param height rows above the axis */
function drawnWith(curve: ShownAs<'curve'>, height: number, width: number, look: Look): Row[] {
	const glyph = glyphs[look.unicode ? 'unicode' : 'ascii'];
	const layout = curveLayout(curve, height);
	const numbers = new Map(layout.up.ticks.map(({row, pct}) => [row, `${plainNumber(pct)}%`]));
	// At least as wide as 'mm', which stands under it with a space.
	const margin = Math.max(3, ...[...numbers.values()].map(({length}) => length));
	const over = across(layout, Math.max(2, Math.min(mostColumns, width - margin - 1)));
	// As many as have room for their numbers.
	const spanMm = layout.over.high - layout.over.low;
	const radii = layout.radiiMm((leastGapColumns * spanMm) / (over.columns - 1));
	const {cells, dotsAt} = curvePlot(curve, layout, over, look.unicode);
	for (const radius of radii)
		if (cells[0]?.[over.columnOf(radius)] === 'floor') cells[0][over.columnOf(radius)] = 'tick';
	const sheet = sheetOf({columns: width, rows: cells.length + 1});
	cells.forEach((line, index) => {
		const row = cells.length - 1 - index;
		const number = numbers.get(index) ?? '';
		const side = index === 0 ? 'corner' : number === '' ? 'side' : 'number';
		sheet.write(row, 0, `${number.padStart(margin)}${glyph[side]}`);
		line.forEach((cell, column) => {
			const isLine = cell === 'wanted' || cell === 'band';
			const text = (isLine ? dotsAt(index, column) : undefined) ?? glyph[cell];
			sheet.write(row, margin + 1 + column, text, tones[cell]);
		});
	});
	sheet.write(cells.length, 0, radiiLine(layout, over, radii, margin, glyph.least));
	const legend = legendOf(layout, cells, glyph, look.unicode, width);
	return [...sheet.rows(), ...legend.map((text): Row => ({text, tone: 'plain'}))];
}

/** Wanted and read differ by colour too, where there is any. */
const tones: Readonly<Partial<Record<PlotCell, Tone>>> = {
	wanted: 'curve',
	wantedLow: 'curve',
	wantedHigh: 'curve',
	band: 'curve',
	measured: 'strong',
};

const leastGapColumns = 6;

/** The numbers under the axis. One is left out where it would seem to belong to what stands there already. */
function radiiLine(
	{leastRadiusMm}: CurveLayout,
	over: Across,
	radii: readonly number[],
	margin: number,
	mark: string,
): string {
	const cells = Array.from({length: margin + 1 + over.columns}, () => ' ');
	const write = (text: string, start: number, space = 1): boolean => {
		const around = cells.slice(Math.max(0, start - space), start + text.length + space);
		if (start < 0 || start + text.length > cells.length || around.some((cell) => cell !== ' ')) return false;
		cells.splice(start, text.length, ...text);
		return true;
	};
	if (leastRadiusMm !== null) {
		const {least} = words.pictures.curve;
		const at = margin + 1 + over.columnOf(leastRadiusMm);
		write(`${mark} ${least}`, at) || write(`${least} ${mark}`, at - least.length - 1) || write(mark, at);
	}
	for (const radius of radii) {
		const text = String(radius);
		write(text, margin + 1 + over.columnOf(radius) - Math.floor(text.length / 2), 2);
	}
	write('mm', 0);
	return cells.join('');
}

/** Names what is drawn, and nothing else; on one line if it fits in any of its wordings, else on two. */
function legendOf(
	{marks}: CurveLayout,
	cells: readonly (readonly PlotCell[])[],
	glyph: Glyphs,
	unicode: boolean,
	width: number,
): string[] {
	const drawn = new Set(cells.flat());
	const said = words.pictures.curve;
	const named = marks.filter((mark) => mark === 'wanted' || drawn.has(mark));
	const entries = (room: 'brief' | 'least') =>
		named.map((mark) => `${glyph[mark]} ${unicode ? said.marks[mark][room] : ascii(said.marks[mark][room])}`);
	const brief = entries('brief');
	const wordings = [[...brief, said.up].join('  '), brief.join('  '), entries('least').join(' ')];
	const fitting = wordings.find((one) => one.length <= width);
	return fitting === undefined ? broken(entries('least'), width).slice(0, 2) : [fitting];
}

function broken(parts: readonly string[], width: number): string[] {
	const lines: string[] = [];
	for (const part of parts) {
		const last = lines.at(-1);
		if (last !== undefined && last.length + 1 + part.length <= width) lines[lines.length - 1] = `${last} ${part}`;
		else lines.push(part);
	}
	return lines;
}
