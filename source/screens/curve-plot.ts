import type {CurveLayout, WantedReading} from '../pages/pictures/curve-layout.js';
import type {ForceAxis} from '../pages/pictures/scale.js';
import type {PullAt, ShownAs} from '../pages/shown-lines.js';

/** What a cell shows. The wanted reading is drawn to half a row: low, in the middle or high in its cell. */
export type PlotCell =
	| 'measured'
	| 'own'
	| 'wanted'
	| 'wantedLow'
	| 'wantedHigh'
	| 'leftOver'
	| 'join'
	| 'band'
	| 'zero'
	| 'floor'
	| 'tick'
	| 'empty';

/** Where the radii stand: from the inside on the left to the outside on the right. */
export type Across = {
	readonly columns: number;
	/** A whole column, which may lie outside the plot. */
	readonly columnOf: (radiusMm: number) => number;
	readonly radiusAt: (column: number) => number;
};

export function across({over: {low, high}}: CurveLayout, columns: number): Across {
	const mmPerColumn = Math.max(high - low, 1) / (columns - 1);
	return {
		columns,
		columnOf: (radiusMm) => Math.round((radiusMm - low) / mmPerColumn),
		radiusAt: (column) => low + column * mmPerColumn,
	};
}

type Draw = (row: number, column: number, cell: PlotCell) => void;

/** A curve as rows of cells from the axis upward: what is drawn later lies over what was drawn before. */
export function curvePlot(
	{measured}: ShownAs<'curve'>,
	{up, own, wantedAt}: CurveLayout,
	{columns, columnOf, radiusAt}: Across,
): PlotCell[][] {
	const {rows, rowOf} = up;
	const cells = Array.from({length: rows + 1}, (_, row) =>
		Array.from({length: columns}, (_, column) => groundAt(row, column, rowOf(0))),
	);
	const draw: Draw = (row, column, cell) => {
		const line = cells[row];
		if (line && column >= 0 && column < columns) line[column] = cell;
	};
	const wanted = Array.from({length: columns}, (_, column) => wantedAt(radiusAt(column)));
	wanted.forEach((at, column) => {
		if (at) drawBand(at, column, up, draw);
	});
	drawJoin(own, columnOf, up, draw);
	for (const {radiusMm, pct} of measured) {
		const at = wanted[columnOf(radiusMm)];
		if (at) drawStroke(rowOf(pct), rowOf(at.pct), columnOf(radiusMm), draw);
	}
	wanted.forEach((at, column) => {
		if (at) draw(rowOf(at.pct), column, heightInCell(at.pct, up));
	});
	for (const {radiusMm, pct} of own) draw(rowOf(pct), columnOf(radiusMm), 'own');
	for (const {radiusMm, pct} of measured) draw(rowOf(pct), columnOf(radiusMm), 'measured');
	return cells;
}

/** Zero is a broken line, so that nobody takes it for a reading. */
function groundAt(row: number, column: number, zeroRow: number): PlotCell {
	if (row === 0) return 'floor';
	return row === zeroRow && column % 2 === 1 ? 'zero' : 'empty';
}

function heightInCell(pct: number, {stepPct}: ForceAxis): PlotCell {
	const over = pct / stepPct - Math.round(pct / stepPct);
	if (over > 0.25) return 'wantedHigh';
	return over < -0.25 ? 'wantedLow' : 'wanted';
}

/** Shaded from end to end by the rows in which readings stand, so that a reading within the band is drawn within it. */
function drawBand({lowPct, highPct}: WantedReading, column: number, {rowOf}: ForceAxis, draw: Draw): void {
	const [one, other] = [rowOf(lowPct), rowOf(highPct)];
	// Below zero the lesser drag is the upper end.
	for (let row = Math.max(1, Math.min(one, other)); row <= Math.max(one, other); row++) draw(row, column, 'band');
}

/** A light line from point to point of the own pull; beyond them nothing was measured. The axis stays whole. */
function drawJoin(own: readonly PullAt[], columnOf: Across['columnOf'], {rowOf}: ForceAxis, draw: Draw): void {
	own.slice(1).forEach((right, index) => {
		const left = own[index] ?? right;
		const [from, to] = [columnOf(left.radiusMm), columnOf(right.radiusMm)];
		for (let column = from + 1; column < to; column++) {
			const row = rowOf(left.pct + ((column - from) / (to - from)) * (right.pct - left.pct));
			if (row > 0) draw(row, column, 'join');
		}
	});
}

function drawStroke(from: number, to: number, column: number, draw: Draw): void {
	for (let row = Math.min(from, to) + 1; row < Math.max(from, to); row++) draw(row, column, 'leftOver');
}
