import {type CurveLayout, curveLayout} from '../pages/pictures/curve-layout.js';
import type {ShownAs} from '../pages/shown-lines.js';
import {words} from '../words/index.js';
import {ascii} from './ascii.js';
import {type Across, across, curvePlot, type PlotCell} from './curve-plot.js';

type Glyphs = Readonly<Record<PlotCell | 'least' | 'side' | 'number' | 'corner', string>>;

// Told apart by shape: a colour may not be there.
const glyphs: Readonly<Record<'unicode' | 'ascii', Glyphs>> = {
	unicode: {
		measured: '●',
		own: '○',
		wanted: '─',
		wantedLow: '▁',
		wantedHigh: '▔',
		leftOver: '│',
		join: '·',
		band: '░',
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
const mostColumns = 90;

/**
 * The wanted reading over the record with what was read, to scale: the plot, its axis, the radii, and a legend of one
 * line, or of two where it is narrow. Nothing where the arm reaches no part of the record.
 *
 * @param height rows above the axis
 */
export function curvePicture(
	curve: ShownAs<'curve'>,
	width: number,
	unicode: boolean,
	height = width < 60 ? 6 : 8,
): string[] {
	if (curve.wanted.length === 0) return [];
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	const layout = curveLayout(curve, height);
	const numbers = new Map(layout.up.ticks.map(({row, pct}) => [row, `${pct}%`]));
	// At least as wide as 'mm', which stands under it with a space.
	const margin = Math.max(3, ...[...numbers.values()].map(({length}) => length));
	const over = across(layout, Math.max(2, Math.min(mostColumns, width - margin - 1)));
	// As many as have room for their numbers.
	const spanMm = layout.over.high - layout.over.low;
	const radii = layout.radiiMm((leastGapColumns * spanMm) / (over.columns - 1));
	const cells = curvePlot(curve, layout, over);
	for (const radius of radii)
		if (cells[0]?.[over.columnOf(radius)] === 'floor') cells[0][over.columnOf(radius)] = 'tick';
	const plot = cells.map((row, index) => {
		const number = numbers.get(index) ?? '';
		const side = index === 0 ? 'corner' : number === '' ? 'side' : 'number';
		return `${number.padStart(margin)}${glyph[side]}${row.map((cell) => glyph[cell]).join('')}`;
	});
	return [
		...plot.toReversed(),
		radiiLine(layout, over, radii, margin, glyph.least),
		...legendOf(layout, cells, glyph, unicode, width),
	].map((text) => text.trimEnd().slice(0, width));
}

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
