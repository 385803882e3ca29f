import type {PullAt, Shown, WantedAt} from '../pages/shown-lines.js';
import type {CurveScale} from './curve-scale.js';

export type Curve = Extract<Shown, {kind: 'curve'}>;

/** What a cell shows. The wanted reading is drawn to half a row: low, in the middle or high in its cell. */
export type Cell =
	| 'measured'
	| 'own'
	| 'wanted'
	| 'wantedLow'
	| 'wantedHigh'
	| 'stroke'
	| 'join'
	| 'band'
	| 'zero'
	| 'floor'
	| 'tick'
	| 'empty';

/** Where the radii stand: from the inside on the left to the outside on the right. */
export type Across = {
	readonly columns: number;
	readonly fromMm: number;
	readonly toMm: number;
	/** A whole column, which may lie outside the plot. */
	readonly columnOf: (radiusMm: number) => number;
	readonly radiusAt: (column: number) => number;
};

export function across({wanted, own, measured}: Curve, columns: number): Across {
	const radii = [...wanted, ...own, ...measured].map(({radiusMm}) => radiusMm);
	const [fromMm, toMm] = [Math.min(...radii), Math.max(...radii)];
	const mmPerColumn = Math.max(toMm - fromMm, 1) / (columns - 1);
	return {
		columns,
		fromMm,
		toMm,
		columnOf: (radiusMm) => Math.round((radiusMm - fromMm) / mmPerColumn),
		radiusAt: (column) => fromMm + column * mmPerColumn,
	};
}

type Draw = (row: number, column: number, cell: Cell) => void;

/** A curve as rows of cells from the axis upward: what is drawn later lies over what was drawn before. */
export function curvePlot(curve: Curve, {columns, columnOf, radiusAt}: Across, scale: CurveScale): Cell[][] {
	const {height, rowOf} = scale;
	const cells = Array.from({length: height + 1}, (_, row) =>
		Array.from({length: columns}, (_, column) => groundAt(row, column, rowOf(0))),
	);
	const draw: Draw = (row, column, cell) => {
		const line = cells[row];
		if (line && column >= 0 && column < columns) line[column] = cell;
	};
	const wanted = Array.from({length: columns}, (_, column) => wantedAt(curve.wanted, radiusAt(column)));
	wanted.forEach((at, column) => {
		if (at) drawBand(at, column, scale, draw);
	});
	drawJoin(curve.own, columnOf, scale, draw);
	for (const {radiusMm, pct} of curve.measured) {
		const at = wanted[columnOf(radiusMm)];
		if (at) drawStroke(rowOf(pct), rowOf(at.pct), columnOf(radiusMm), draw);
	}
	wanted.forEach((at, column) => {
		if (at) draw(rowOf(at.pct), column, heightInCell(at.pct, scale));
	});
	for (const {radiusMm, pct} of curve.own) draw(rowOf(pct), columnOf(radiusMm), 'own');
	for (const {radiusMm, pct} of curve.measured) draw(rowOf(pct), columnOf(radiusMm), 'measured');
	return cells;
}

/** Zero is a broken line, so that nobody takes it for a reading. */
function groundAt(row: number, column: number, zeroRow: number): Cell {
	if (row === 0) return 'floor';
	return row === zeroRow && column % 2 === 1 ? 'zero' : 'empty';
}

type Wanted = Omit<WantedAt, 'radiusMm'>;

/** The curve at any radius, straight between those given; nothing beyond its ends. */
function wantedAt(wanted: readonly WantedAt[], radiusMm: number): Wanted | undefined {
	// The last column may miss the last radius by the rounding of a product.
	const above = wanted.findIndex((one) => one.radiusMm >= radiusMm - 1e-6);
	const high = wanted[above];
	const low = wanted[above - 1] ?? high;
	if (!low || !high || low.radiusMm > radiusMm + 1e-6) return;
	const part = low === high ? 0 : (radiusMm - low.radiusMm) / (high.radiusMm - low.radiusMm);
	const between = (one: number, other: number) => one + part * (other - one);
	return {
		pct: between(low.pct, high.pct),
		lowPct: between(low.lowPct, high.lowPct),
		highPct: between(low.highPct, high.highPct),
	};
}

function heightInCell(pct: number, {stepPct}: CurveScale): Cell {
	const over = pct / stepPct - Math.round(pct / stepPct);
	if (over > 0.25) return 'wantedHigh';
	return over < -0.25 ? 'wantedLow' : 'wanted';
}

/** Shaded from end to end by the rows in which readings stand, so that a reading within the band is drawn within it. */
function drawBand({lowPct, highPct}: Wanted, column: number, {rowOf}: CurveScale, draw: Draw): void {
	const [one, other] = [rowOf(lowPct), rowOf(highPct)];
	// Below zero the lesser drag is the upper end.
	for (let row = Math.max(1, Math.min(one, other)); row <= Math.max(one, other); row++) draw(row, column, 'band');
}

/** A light line from point to point of the own pull; beyond them nothing was measured. The axis stays whole. */
function drawJoin(own: readonly PullAt[], columnOf: Across['columnOf'], {rowOf}: CurveScale, draw: Draw): void {
	const points = own.toSorted((one, other) => one.radiusMm - other.radiusMm);
	points.slice(1).forEach((right, index) => {
		const left = points[index] ?? right;
		const [from, to] = [columnOf(left.radiusMm), columnOf(right.radiusMm)];
		for (let column = from + 1; column < to; column++) {
			const row = rowOf(left.pct + ((column - from) / (to - from)) * (right.pct - left.pct));
			if (row > 0) draw(row, column, 'join');
		}
	});
}

function drawStroke(from: number, to: number, column: number, draw: Draw): void {
	for (let row = Math.min(from, to) + 1; row < Math.max(from, to); row++) draw(row, column, 'stroke');
}
