import constants from '../../shared/constants.json' with {type: 'json'};
import limits from '../../shared/limits.json' with {type: 'json'};
import {pooledSpread} from './statistics.js';
import {coverageFactor, effectiveDegreesOfFreedom} from './student-t.js';

/** How well rounds repeat: the standard deviation of one round, in percent of the playing force. */
export type Scatter = {
	readonly sd: number;
	/** Infinite where no radius has two rounds alike: then the size is an assumption. */
	readonly degreesOfFreedom: number;
};

export const isAssumed = ({degreesOfFreedom}: Scatter): boolean => degreesOfFreedom === Number.POSITIVE_INFINITY;

const scatterOr =
	(assumedPct: number) =>
	(groups: readonly (readonly number[])[]): Scatter =>
		pooledSpread(groups) ?? {sd: assumedPct, degreesOfFreedom: Number.POSITIVE_INFINITY};

/** Scatter of a round's middle, pooled over groups of rounds alike; 0.3 % assumed where there is none with two. */
export const centreScatter = scatterOr(limits.assumedCentrePct.value);

/** Scatter of a round's width; 0.6 % assumed. */
export const widthScatter = scatterOr(limits.assumedWidthPct.value);

/** What the gauge is read in, in percent of the playing force. */
export type ReadingGrain = {readonly stepPct: number; readonly nudgePct: number};

/** Variance that step and nudge leave in the middle of one round: half the sum of two limits (JCGM 100:2008 F.2.2.1). */
export const centreReading = ({stepPct, nudgePct}: ReadingGrain): number => (stepPct ** 2 + nudgePct ** 2) / 24;

/** Variance that step and nudge leave in the width of one round: the difference of two limits. */
export const widthReading = ({stepPct, nudgePct}: ReadingGrain): number => (stepPct ** 2 + nudgePct ** 2) / 6;

/**
 * The part of that variance which the scatter does not show: it is the same in all rounds, and no mean takes it away.
 * A scatter that is larger holds it already.
 */
export const unseenReading = (reading: number, scatter: Scatter): number =>
	isAssumed(scatter) ? reading : Math.max(0, reading - scatter.sd ** 2);

/** What is known of one series, as far as it makes figures uncertain; variances in %². */
export type SeriesKnown = {
	readonly centres: Scatter;
	readonly widths: Scatter;
	/** Variances of {@link unseenReading}. */
	readonly centreReading: number;
	readonly widthReading: number;
	/** Variance of setting the gauge up, where it was not set anew between rounds. */
	readonly settingUp: number;
	/** Relative standard uncertainty of a whole figure, in percent. */
	readonly gainPct: number;
};

/** Rounds that a figure is a mean of. */
export type Turned = {readonly used: number; readonly turned: number};

/** The variance of a figure, in %²: what more rounds take away, and what is common to all of them. */
export type Budget = {
	readonly scatter: number;
	readonly common: number;
	/** Those of the scatter. */
	readonly degreesOfFreedom: number;
};

/** Where the zero of the gauge comes from that is taken off the rounds of a radius. */
export type ZeroOfPull =
	/** Rounds with the gauge turned at the same radius: it cancels. */
	| {readonly kind: 'turned-here'; readonly turned: number}
	/** Such rounds at another radius. */
	| {readonly kind: 'turned-there'; readonly there: Turned}
	/** Read or assumed apart, with a variance of its own. */
	| {readonly kind: 'apart'; readonly variance: number};

const gain = (valuePct: number, {gainPct}: SeriesKnown): number => ((valuePct * gainPct) / 100) ** 2;

const halfSum = ({used, turned}: Turned): number => (1 / used + 1 / turned) / 4;

function shares(
	used: number,
	zero: ZeroOfPull,
): {readonly means: number; readonly times: number; readonly apart: number} {
	switch (zero.kind) {
		case 'turned-here':
			return {means: halfSum({used, turned: zero.turned}), times: 1 / 2, apart: 0};
		case 'turned-there':
			return {means: 1 / used + halfSum(zero.there), times: 3 / 2, apart: 0};
		case 'apart':
			return {means: 1 / used, times: 1, apart: zero.variance};
	}
}

/** Budget of a side pull that is the mean of so many rounds as used. */
export function pullBudget(valuePct: number, used: number, zero: ZeroOfPull, series: SeriesKnown): Budget {
	const {means, times, apart} = shares(used, zero);
	return {
		scatter: series.centres.sd ** 2 * means,
		common: times * (series.centreReading + series.settingUp) + apart + gain(valuePct, series),
		degreesOfFreedom: series.centres.degreesOfFreedom,
	};
}

/** Budget of the zero of the gauge, from rounds as used and turned at one radius. */
export const zeroBudget = (rounds: Turned, {centres, centreReading: reading, settingUp}: SeriesKnown): Budget => ({
	scatter: centres.sd ** 2 * halfSum(rounds),
	common: (reading + settingUp) / 2,
	degreesOfFreedom: centres.degreesOfFreedom,
});

/** Budget of a hold band that is the mean of so many rounds, turned or not: the zero of the gauge drops out. */
export const bandBudget = (valuePct: number, rounds: number, series: SeriesKnown): Budget => ({
	scatter: series.widths.sd ** 2 / rounds,
	common: series.widthReading + gain(valuePct, series),
	degreesOfFreedom: series.widths.degreesOfFreedom,
});

/**
 * Budget of the difference of the pulls at two radii: the zero is common to both and cancels.
 *
 * @param differencePct of the pulls as they are, tilt and all
 * @param slantPct standard uncertainty of what the tilt makes of the difference
 */
export const pullDifferenceBudget = (
	differencePct: number,
	used: readonly [number, number],
	slantPct: number,
	series: SeriesKnown,
): Budget => ({
	scatter: series.centres.sd ** 2 * (1 / used[0] + 1 / used[1]),
	common: 2 * (series.centreReading + series.settingUp) + slantPct ** 2 + gain(differencePct, series),
	degreesOfFreedom: series.centres.degreesOfFreedom,
});

/** Budget of the difference of the hold bands at two radii. */
export const bandDifferenceBudget = (
	differencePct: number,
	rounds: readonly [number, number],
	series: SeriesKnown,
): Budget => ({
	scatter: series.widths.sd ** 2 * (1 / rounds[0] + 1 / rounds[1]),
	common: 2 * series.widthReading + gain(differencePct, series),
	degreesOfFreedom: series.widths.degreesOfFreedom,
});

export type Expanded = {readonly uncertaintyPct: number; readonly degreesOfFreedom: number};

/** Expanded uncertainty for 95 % (JCGM 100:2008 G.4.1); only the scatter has finite degrees of freedom. */
export const expandedUncertainty = (budget: Budget): Expanded => {
	const {scatter, common, degreesOfFreedom: known} = budget;
	const isKnown = Number.isFinite(known) && scatter >= constants.leastVariance.value;
	const degreesOfFreedom = isKnown
		? effectiveDegreesOfFreedom([
				{uncertainty: Math.sqrt(scatter), degreesOfFreedom: known},
				{uncertainty: Math.sqrt(common), degreesOfFreedom: Number.POSITIVE_INFINITY},
			])
		: Number.POSITIVE_INFINITY;
	return {uncertaintyPct: coverageFactor(degreesOfFreedom) * standardUncertaintyPct(budget), degreesOfFreedom};
};

/** Combined standard uncertainty, in percent. */
export const standardUncertaintyPct = ({scatter, common}: Budget): number => Math.sqrt(scatter + common);

/** Variance of setting arm and gauge up, in %²: nothing where they are set up anew for each round, for the scatter holds it. */
export const settingUpVariance = (isSetAnew: boolean): number => (isSetAnew ? 0 : limits.settingUpPct.value ** 2);
