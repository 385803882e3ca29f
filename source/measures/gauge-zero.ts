import limits from '../../shared/limits.json' with {type: 'json'};
import {mean} from './statistics.js';

/**
 * The gauge's zero by reversal, in percent: turned end for end on the same spot the gauge shows the arm's pull with the
 * other sign and its own zero with the same one, so half the sum of both middles is the zero.
 *
 * @param usedPct middles of the rounds as used
 * @param turnedPct middles of the rounds with the gauge turned, in the gauge's own sign
 */
export const zeroByTurningPct = (usedPct: readonly number[], turnedPct: readonly number[]): number =>
	(mean(usedPct) + mean(turnedPct)) / 2;

/** The arm's side pull where the gauge was turned, in percent: half the difference of both middles, free of the zero. */
export const pullByTurningPct = (usedPct: readonly number[], turnedPct: readonly number[]): number =>
	(mean(usedPct) - mean(turnedPct)) / 2;

/**
 * Standard uncertainty of a zero that nobody looked at, in percent: it may be a step off, and half a percent at least,
 * all alike likely (JCGM 100:2008 4.3.7).
 */
export const uncheckedZeroPct = (stepPct: number): number =>
	Math.max(stepPct, limits.uncheckedZeroPct.value) / Math.sqrt(3);
