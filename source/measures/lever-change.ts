import limits from '../../shared/limits.json' with {type: 'json'};
import {radians} from './angles.js';
import type {ForceAt} from './bias-fit.js';
import {leverShare} from './lever.js';

/** How the bias changes from one radius to another: as measured, and as the lever would have it; in percent. */
export type LeverChange = {
	readonly fromMm: number;
	readonly toMm: number;
	readonly measuredPct: number;
	readonly expectedPct: number;
	/** What reading the angles by eye leaves open of the expected change. */
	readonly openPct: number;
};

/** By how much a change differs from what the lever would make of it, in percent. */
export const unexplainedPct = ({measuredPct, expectedPct}: LeverChange): number => Math.abs(measuredPct - expectedPct);

/**
 * The change of bias between two radii that a lever, or the angle of a thread, explains least. The lever's share of the
 * weight, the sine of its angle (`leverShare`), is scaled to all measured bias at once by least squares. Of an angle
 * that is off by a little, the share is off by its cosine times that (JCGM 100:2008 5.1.3), and the two ends add as
 * squares. One angle in degrees for each radius; undefined with fewer than two radii, or where nothing of the weight
 * acts anywhere.
 */
export function leastExplained(bias: readonly ForceAt[], anglesDeg: readonly number[]): LeverChange | undefined {
	const square = anglesDeg.reduce((sum, deg) => sum + leverShare(deg) ** 2, 0);
	if (bias.length < 2 || anglesDeg.length !== bias.length || square === 0) return;
	const scale = bias.reduce((sum, {pct}, index) => sum + pct * leverShare(anglesDeg[index] ?? 0), 0) / square;
	const ends = bias.map(({radiusMm, pct}, index) => {
		const deg = anglesDeg[index] ?? 0;
		const openPct = scale * Math.cos(radians(deg)) * radians(limits.leverReadDeg.value);
		return {radiusMm, pct, expectedPct: scale * leverShare(deg), openPct};
	});
	const changes = ends.flatMap((from, index) =>
		ends.slice(index + 1).map((to) => ({
			fromMm: from.radiusMm,
			toMm: to.radiusMm,
			measuredPct: to.pct - from.pct,
			expectedPct: to.expectedPct - from.expectedPct,
			openPct: Math.hypot(from.openPct, to.openPct),
		})),
	);
	return changes.reduce((worst, one) => (unexplainedPct(one) > unexplainedPct(worst) ? one : worst));
}
