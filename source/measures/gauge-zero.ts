import {rootSumSquares} from './statistics.js';

export type GaugeReading = {
	readonly step: number;
	readonly nudge: number;
	/** Standard deviation of a round's centre, where it is known already. */
	readonly centreSd?: number;
};

/**
 * The gauge's zero by reversal, in its own unit and sign: the arm's pull changes sign as the gauge is turned end for
 * end on the same spot, its zero does not, so half the sum of the two centres is the zero.
 */
export const gaugeZero = (centreDirect: number, centreTurned: number): number => (centreDirect + centreTurned) / 2;

/** Standard uncertainty of that zero: half the sum of two centres, each with its step, nudge and repeatability. */
export const gaugeZeroUncertainty = ({step, nudge, centreSd = 0}: GaugeReading): number =>
	rootSumSquares(step / Math.sqrt(24), nudge / Math.sqrt(24), centreSd) / Math.SQRT2;
