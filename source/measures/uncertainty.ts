import {rootSumSquares, type Spread} from './statistics.js';
import {coverageFactor, effectiveDegreesOfFreedom} from './student-t.js';

/** What makes a mean of rounds uncertain, all as standard uncertainties in percent of the playing force. */
export type Budget = {
	readonly rounds: number;
	/** Standard deviation of one round, pooled; null when no radius has two rounds. */
	readonly repeatability: Spread | null;
	/** Reading step and nudge together: what a finer step would cure. */
	readonly reading: number;
	/** The rest, which neither rounds nor a finer step can cure. */
	readonly rest: number;
};

export type GaugeUncertainty = {
	/** Percent of the playing force for each unit of the gauge. */
	readonly factor: number;
	readonly step: number;
	readonly nudge: number;
	readonly zeroUncertainty: number;
	/** Relative standard uncertainty of the whole figure, in percent. */
	readonly relativePct: number;
};

/** Budget of a side pull: half the sum of two limits, so each limit's step/√12 and nudge/√12 enter by half. */
export const pullBudget = (
	valuePct: number,
	rounds: number,
	repeatability: Spread | null,
	{factor, step, nudge, zeroUncertainty, relativePct}: GaugeUncertainty,
): Budget => ({
	rounds,
	repeatability,
	reading: rootSumSquares((factor * step) / Math.sqrt(24), (factor * nudge) / Math.sqrt(24)),
	rest: rootSumSquares((Math.abs(valuePct) * relativePct) / 100, factor * zeroUncertainty),
});

/** Budget of a hold band: the difference of two limits, so step/√6 and nudge/√6; the gauge's zero drops out. */
export const bandBudget = (
	valuePct: number,
	rounds: number,
	repeatability: Spread | null,
	{factor, step, nudge, relativePct}: GaugeUncertainty,
): Budget => ({
	rounds,
	repeatability,
	reading: rootSumSquares((factor * step) / Math.sqrt(6), (factor * nudge) / Math.sqrt(6)),
	rest: (valuePct * relativePct) / 100,
});

export type Expanded = {readonly uncertaintyPct: number; readonly degreesOfFreedom: number};

/** The same budget as it would be after so many rounds in all. */
export const withRounds = (budget: Budget, rounds: number): Budget => ({
	...budget,
	rounds,
	repeatability: budget.repeatability && {
		sd: budget.repeatability.sd,
		degreesOfFreedom: budget.repeatability.degreesOfFreedom + rounds - budget.rounds,
	},
});

const repeatabilityOfMean = ({rounds, repeatability}: Budget): number =>
	repeatability === null ? 0 : repeatability.sd / Math.sqrt(rounds);

/** Combined standard uncertainty, in percent. */
export const standardUncertaintyPct = (budget: Budget): number =>
	rootSumSquares(repeatabilityOfMean(budget), budget.reading, budget.rest);

/** Expanded uncertainty for 95 % (JCGM 100:2008 G.4.1), with its effective degrees of freedom. */
export const expandedUncertainty = (budget: Budget): Expanded => {
	const infinite = Number.POSITIVE_INFINITY;
	const degreesOfFreedom = effectiveDegreesOfFreedom([
		{
			uncertainty: repeatabilityOfMean(budget),
			degreesOfFreedom: budget.repeatability?.degreesOfFreedom ?? infinite,
		},
		{uncertainty: rootSumSquares(budget.reading, budget.rest), degreesOfFreedom: infinite},
	]);
	return {uncertaintyPct: coverageFactor(degreesOfFreedom) * standardUncertaintyPct(budget), degreesOfFreedom};
};
