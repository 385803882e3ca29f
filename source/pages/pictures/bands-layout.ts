import type {BandRow, ShownAs} from '../shown-lines.js';
import {ticksOn} from './scale.js';

/** A hold band with the uncertainty (95 %) of its middle, where that is known. */
export type BandBar = BandRow & {readonly pullUncertaintyPct?: number | undefined};
export type BandBars = Omit<ShownAs<'bands'>, 'rows'> & {readonly rows: readonly BandBar[]};

export type BandsLayout = ReturnType<typeof bandsLayout>;

const axisReaches = [5, 10, 15, 20, 30, 50, 100];

/** A round end of an axis on which all sizes lie. */
export function axisReach(sizes: readonly number[]): number {
	const least = Math.max(...sizes);
	return axisReaches.find((one) => one >= least) ?? Math.ceil(least / 100) * 100;
}

/** Hold bands on one axis, with a fifth to spare beyond the limits of the pull. */
export function bandsLayout({rows, goodPct, usablePct, begun}: BandBars) {
	const ends = rows.flatMap(({lowPct, highPct}) => [Math.abs(lowPct), Math.abs(highPct)]);
	const reach = axisReach([usablePct * 1.2, Math.abs(begun?.lowPct ?? 0), ...ends]);
	const axis = {low: -reach, high: reach};
	const limits = [
		{zone: 'usable', size: usablePct},
		{zone: 'good', size: goodPct},
	] as const;
	return {
		/** In percent of tracking force, zero in its middle. */
		axis,
		/** Limits of the pull to both sides of zero, the outer ones first. */
		limits: limits.flatMap(({zone, size}) => [-size, size].map((pct) => ({pct, zone}))),
		/** Numbers under the axis, by weight: where there is little room, and where there is more. */
		fewTicks: [-reach, -goodPct, 0, goodPct, reach],
		manyTicks: ticksOn(axis, 8),
	};
}
