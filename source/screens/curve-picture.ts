import {numberAt, radiiLine, ticksMm} from './curve-axes.js';
import {legendLines} from './curve-legend.js';
import {across, type Cell, type Curve, curvePlot} from './curve-plot.js';
import {curveScale} from './curve-scale.js';

type Glyphs = Readonly<Record<Cell | 'least' | 'side' | 'number' | 'corner', string>>;

// Told apart by shape: a colour may not be there.
const glyphs: Readonly<Record<'unicode' | 'ascii', Glyphs>> = {
	unicode: {
		measured: '●',
		own: '○',
		wanted: '─',
		wantedLow: '▁',
		wantedHigh: '▔',
		stroke: '│',
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
		stroke: '|',
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
export function curvePicture(curve: Curve, width: number, unicode: boolean, height = width < 60 ? 6 : 8): string[] {
	if (curve.wanted.length === 0) return [];
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	const scale = curveScale(pctsOf(curve), height);
	const numbers = Array.from({length: height + 1}, (_, row) => numberAt(row, scale));
	// At least as wide as 'mm', which stands under it with a space.
	const margin = Math.max(3, ...numbers.map(({length}) => length));
	const over = across(curve, Math.max(2, Math.min(mostColumns, width - margin - 1)));
	const ticks = ticksMm(over);
	const cells = curvePlot(curve, over, scale);
	for (const tick of ticks) if (cells[0]?.[over.columnOf(tick)] === 'floor') cells[0][over.columnOf(tick)] = 'tick';
	const plot = cells.map((row, index) => {
		const number = numbers[index] ?? '';
		const side = index === 0 ? 'corner' : number === '' ? 'side' : 'number';
		return `${number.padStart(margin)}${glyph[side]}${row.map((cell) => glyph[cell]).join('')}`;
	});
	const radii = radiiLine(curve, over, ticks, margin, glyph.least);
	return [...plot.toReversed(), radii, ...legendOf(cells, glyph, unicode, width)].map((text) =>
		text.trimEnd().slice(0, width),
	);
}

const pctsOf = ({wanted, own, measured}: Curve): number[] => [
	...wanted.flatMap(({pct, lowPct, highPct}) => [pct, lowPct, highPct]),
	...[...own, ...measured].map(({pct}) => pct),
];

/** Names what is drawn, and nothing else. */
function legendOf(cells: readonly (readonly Cell[])[], glyph: Glyphs, unicode: boolean, width: number): string[] {
	const drawn = new Set(cells.flat());
	const more = unicode ? '±' : '+/-';
	const entries = [
		{cell: 'wanted', mark: glyph.wanted, long: 'wanted', short: 'wanted'},
		{cell: 'band', mark: glyph.band, long: `drag ${more}`, short: `drag${more}`},
		{cell: 'own', mark: glyph.own, long: 'bias off', short: 'own'},
		{cell: 'measured', mark: glyph.measured, long: 'bias on', short: 'read'},
		{cell: 'stroke', mark: glyph.stroke, long: 'left over', short: 'left'},
	] as const;
	const named = entries.filter(({cell}) => cell === 'wanted' || drawn.has(cell));
	return legendLines(named, 'up is toward the rim', width);
}
