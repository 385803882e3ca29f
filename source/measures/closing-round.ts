import constants from '../../shared/constants.json' with {type: 'json'};
import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from './compare.js';
import {mean, pooledSpread} from './statistics.js';
import {coverageFactor} from './student-t.js';

/** The closing round against the other rounds at its radius; all in percent of the playing force. */
export type ClosingRound = {
	/** Its middle less theirs. */
	readonly movedPct: number;
	/** So much either way is no change. */
	readonly allowedPct: number;
	readonly moved: boolean;
};

type Closing = {
	/** Middle of the closing round. */
	readonly centrePct: number;
	/** Middles of the other rounds as used at its radius: one at least. */
	readonly othersPct: readonly number[];
	/** Middles of all rounds but the closing one, in groups alike. */
	readonly groupsPct: readonly (readonly number[])[];
	/** Variance of step and nudge in one middle, and of setting up, in %². */
	readonly reading: number;
	readonly settingUp: number;
};

/**
 * Whether gauge, deck or lead moved while the rounds were taken: the closing round is farther from the mean of the
 * others than scatter, reading and setting up explain (a prediction interval for one more value, by Student's t), and by
 * more than half a percent.
 */
export function closingRound({centrePct, othersPct, groupsPct, reading, settingUp}: Closing): ClosingRound {
	const spread = pooledSpread(groupsPct);
	const assumed = limits.assumedCentrePct.value ** 2;
	const variance = spread ? Math.max(spread.sd ** 2, reading) : assumed + reading;
	const factor = spread ? coverageFactor(spread.degreesOfFreedom) : constants.normalQuantile975.value;
	const allowedPct = Math.max(
		limits.closingRoundPct.value,
		factor * Math.sqrt(variance * (1 + 1 / othersPct.length) + 2 * settingUp),
	);
	const movedPct = centrePct - mean(othersPct);
	return {movedPct, allowedPct, moved: isAbove(Math.abs(movedPct), allowedPct)};
}
