import fc from 'fast-check';
import {leastSkatingRadiusMm, wantedReadingPct} from '../../source/measures/skating.js';
import type {PullAt, Shown} from '../../source/pages/shown-lines.js';

export type Curve = Extract<Shown, {kind: 'curve'}>;

/** Lengths and readings here are invented; the curve itself is held to its sources where it is measured. */
function curveOf(lengthMm: number, pivotMm: number, own: readonly PullAt[], measured: readonly PullAt[]): Curve {
	const arm = {effectiveLengthMm: lengthMm, pivotDistanceMm: pivotMm};
	const wanted = Array.from({length: 44}, (_, index) => 60 + 2 * index).map((radiusMm) => ({
		radiusMm,
		pct: wantedReadingPct(arm, 0.3, radiusMm),
		lowPct: wantedReadingPct(arm, 0.25, radiusMm),
		highPct: wantedReadingPct(arm, 0.35, radiusMm),
	}));
	return {kind: 'curve', wanted, leastRadiusMm: leastSkatingRadiusMm(arm), own, measured, caption: 'In words.'};
}

export const at = (radiusMm: number, pct: number): PullAt => ({radiusMm, pct});
const own = [at(68, 5.375), at(136, 3.375)];
const read = [at(136, 9.125), at(68, 8.875)];
export const nineInch = (measured: readonly PullAt[] = read, pulls: readonly PullAt[] = own): Curve =>
	curveOf(233, 215.4, pulls, measured);
export const underhung = curveOf(228.6, 240, [at(68, 2), at(136, 1)], [at(136, 5), at(68, 4)]);

const pulls = fc.array(
	fc.record({radiusMm: fc.integer({min: 55, max: 155}), pct: fc.double({min: -60, max: 60, noNaN: true})}),
	{
		maxLength: 4,
	},
);
export const anyCurve = fc
	.record({
		lengthMm: fc.double({min: 200, max: 320, noNaN: true}),
		overhangMm: fc.double({min: -20, max: 25, noNaN: true}),
		own: pulls,
		measured: pulls,
	})
	.map((one) => curveOf(one.lengthMm, one.lengthMm - one.overhangMm, one.own, one.measured));

/** The plot with the axis as its last row, without radii and legend. */
export const plotOf = (picture: readonly string[]): string[] =>
	picture.slice(
		0,
		picture.findIndex((row) => row.startsWith('mm')),
	);

/** Where a mark stands: rows counted from the top. */
export const placesOf = (rows: readonly string[], marks: string): {row: number; column: number}[] =>
	rows.flatMap((text, row) => [...text].flatMap((cell, column) => (marks.includes(cell) ? [{row, column}] : [])));

/** The reading that stands at a row, by the numbers at the side. */
export function pctOfRow(picture: readonly string[], row: number): {pct: number; stepPct: number} {
	const numbers = picture.flatMap((text, index) => {
		const found = /^ *(-?[\d.]+)%/.exec(text);
		return found ? [{index, pct: Number(found[1])}] : [];
	});
	const [top, next] = numbers;
	if (!top || !next) throw new Error('Fewer than two numbers at the side.');
	const stepPct = (top.pct - next.pct) / (next.index - top.index);
	return {pct: top.pct + (top.index - row) * stepPct, stepPct};
}
