import type {ShownAs, WantedAt} from '../shown-lines.js';
import {type Axis, forceAxis} from './scale.js';

/** What is drawn in a curve, in the order in which a legend names it. */
export const curveMarks = ['wanted', 'band', 'own', 'measured', 'leftOver'] as const;
export type CurveMark = (typeof curveMarks)[number];

export type CurveLayout = ReturnType<typeof curveLayout>;
export type WantedReading = Omit<WantedAt, 'radiusMm'>;

/** @param rows above the axis */
export function curveLayout({wanted, own, measured, leastRadiusMm}: ShownAs<'curve'>, rows: number) {
	const radii = [...wanted, ...own, ...measured].map(({radiusMm}) => radiusMm);
	const over = {low: Math.min(...radii), high: Math.max(...radii)};
	const pcts = [
		...wanted.flatMap(({pct, lowPct, highPct}) => [pct, lowPct, highPct]),
		...[...own, ...measured].map(({pct}) => pct),
	];
	const isLeastInSight = leastRadiusMm !== null && leastRadiusMm >= over.low && leastRadiusMm <= over.high;
	const hasMark = {wanted: true, band: true, own: own.length > 0, measured: measured.length > 0};
	return {
		/** From the inside of the record to its outside, in mm. */
		over,
		up: forceAxis(pcts, rows),
		/** Round radii on the axis, no nearer to each other than that. */
		radiiMm: (leastGapMm: number) => radiiOn(over, leastGapMm),
		/** The wanted reading at any radius, straight between those given; nothing beyond its ends. */
		wantedAt: (radiusMm: number) => wantedAt(wanted, radiusMm),
		/** From the inside to the outside. */
		own: own.toSorted((one, other) => one.radiusMm - other.radiusMm),
		/** Where skating is least; null where that is not in sight. */
		leastRadiusMm: isLeastInSight ? leastRadiusMm : null,
		marks: curveMarks.filter((mark) => (mark === 'leftOver' ? hasMark.measured : hasMark[mark])),
	};
}

function radiiOn({low, high}: Axis, leastGapMm: number): number[] {
	const every = [10, 20, 40, 100, 200, 500].find((one) => one >= leastGapMm) ?? 1000;
	const first = Math.ceil(low / every);
	return Array.from({length: Math.max(0, Math.floor(high / every) - first + 1)}, (_, index) => (first + index) * every);
}

function wantedAt(wanted: readonly WantedAt[], radiusMm: number): WantedReading | undefined {
	// The last column of a drawing may miss the last radius by the rounding of a product.
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
