import type {CurveLayout, WantedReading} from '../../pages/pictures/curve-layout.js';
import type {ForceAxis} from '../../pages/pictures/scale.js';
import type {PullAt, ShownAs} from '../../pages/shown-lines.js';
import {dotCanvas, dotsAcross, dotsDown, middleOf} from './dot-canvas.js';

/** What a cell shows. In plain characters the wanted reading is drawn to half a row: low, in the middle or high. */
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
	/** A column, or a part of one. */
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

/** Rows of cells from the axis upward: what is drawn later lies over what was drawn before. */
export type CurvePlot = {
	readonly cells: readonly PlotCell[][];
	/** How the lines look in a cell that shows one of them, where there are dots. */
	readonly dotsAt: (row: number, column: number) => string | undefined;
};

/** The wanted reading and both ends of its band as lines, under them the own pull, over them what was read. */
export function curvePlot(
	{measured}: ShownAs<'curve'>,
	layout: CurveLayout,
	over: Across,
	unicode: boolean,
): CurvePlot {
	const {up, own, wantedAt} = layout;
	const {columns, columnOf, radiusAt} = over;
	const {rows, rowOf} = up;
	const cells = Array.from({length: rows + 1}, (_, row) =>
		Array.from({length: columns}, (_, column) => groundAt(row, column, rowOf(0))),
	);
	const draw: Draw = (row, column, cell) => {
		const line = cells[row];
		if (line && column >= 0 && column < columns) line[column] = cell;
	};
	drawJoin(own, columnOf, up, draw);
	const dots = unicode ? drawInDots(layout, over, draw) : undefined;
	const wanted = Array.from({length: columns}, (_, column) => wantedAt(radiusAt(column)));
	if (!unicode) drawInCells(wanted, up, draw);
	for (const {radiusMm, pct} of measured) {
		const at = wanted[columnOf(radiusMm)];
		if (at) drawStroke(rowOf(pct), rowOf(at.pct), columnOf(radiusMm), draw);
	}
	for (const {radiusMm, pct} of own) draw(rowOf(pct), columnOf(radiusMm), 'own');
	for (const {radiusMm, pct} of measured) draw(rowOf(pct), columnOf(radiusMm), 'measured');
	return {cells, dotsAt: (row, column) => dots?.[rows - row]?.[column]};
}

/** Zero is a broken line, so that nobody takes it for a reading. */
function groundAt(row: number, column: number, zeroRow: number): PlotCell {
	if (row === 0) return 'floor';
	return row === zeroRow && column % 2 === 1 ? 'zero' : 'empty';
}

/** The wanted line is whole; the ends of its band have a dot at every third place. */
const [wholeLine, thinLine] = [1, 3];

/** Lines to a quarter of a row and half a column; the lines of text from the top. */
function drawInDots({up, wantedAt}: CurveLayout, {columns, radiusAt}: Across, draw: Draw): string[] {
	const canvas = dotCanvas(columns, up.rows + 1);
	const downOf = (pct: number) => middleOf(up.rows - (pct / up.stepPct + up.rowOf(0)), dotsDown);
	const line = (valueAt: (one: WantedReading) => number, every: number, cell: PlotCell): void => {
		let before: number | undefined;
		for (let x = 0; x < columns * dotsAcross; x++) {
			const column = Math.floor(x / dotsAcross);
			const at = wantedAt(radiusAt(Math.max(0, Math.min(columns - 1, (x - middleOf(0, dotsAcross)) / dotsAcross))));
			if (!at) continue;
			const y = Math.round(downOf(valueAt(at)));
			// A steep line has no gaps.
			const from = before === undefined || every > 1 ? y : before + Math.sign(y - before);
			before = y;
			if (x % every !== 0) continue;
			for (let dot = from; ; dot += Math.sign(y - dot)) {
				canvas.dot(x, dot);
				draw(up.rows - Math.floor(dot / dotsDown), column, cell);
				if (dot === y) break;
			}
		}
	};
	line(({lowPct}) => lowPct, thinLine, 'band');
	line(({highPct}) => highPct, thinLine, 'band');
	line(({pct}) => pct, wholeLine, 'wanted');
	return canvas.lines(true);
}

function drawInCells(wanted: readonly (WantedReading | undefined)[], up: ForceAxis, draw: Draw): void {
	wanted.forEach((at, column) => {
		if (!at || column % 2 === 1) return;
		for (const pct of [at.lowPct, at.highPct]) draw(up.rowOf(pct), column, 'band');
	});
	wanted.forEach((at, column) => {
		if (at) draw(up.rowOf(at.pct), column, heightInCell(at.pct, up));
	});
}

function heightInCell(pct: number, {stepPct}: ForceAxis): PlotCell {
	const over = pct / stepPct - Math.round(pct / stepPct);
	if (over > 0.25) return 'wantedHigh';
	return over < -0.25 ? 'wantedLow' : 'wanted';
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
