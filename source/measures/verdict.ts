import constants from '../../shared/constants.json' with {type: 'json'};
import defaults from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isAtMost, isBelow} from './compare.js';
import {type Budget, expandedUncertainty, standardUncertaintyPct} from './uncertainty.js';

export type Limits = {readonly good: number; readonly usable: number};
export type Zone = 'good' | 'usable' | 'beyond';

/** A verdict, and the worst zone that value and uncertainty leave open. */
export type GuardedVerdict = {readonly verdict: Zone | 'undecided'; readonly atWorst: Zone};
/** The same of a radius that may have no figures at all. */
export type Judged = {readonly verdict: GuardedVerdict['verdict'] | 'off-scale'; readonly atWorst: Zone | 'off-scale'};

/** What would decide an undecided figure: rounds in all at that radius, a finer step, or nothing. */
export type WouldDecide = {readonly rounds: number} | {readonly finerStep: true} | {readonly onLimit: true};

/** Zone of a size, the limits themselves belonging to the better side. */
export const zoneOf = (size: number, {good, usable}: Limits): Zone => {
	if (isAtMost(size, good)) return 'good';
	return isAtMost(size, usable) ? 'usable' : 'beyond';
};

/**
 * Guarded verdict (JCGM 106:2012 7.5): a zone counts only when the whole interval value ± U lies in it; else the
 * figure is undecided, and the worst zone that the interval reaches is given.
 */
export const guardedVerdict = (value: number, uncertainty: number, limits: Limits): GuardedVerdict => {
	const best = zoneOf(Math.max(0, Math.abs(value) - uncertainty), limits);
	const atWorst = zoneOf(Math.abs(value) + uncertainty, limits);
	return {verdict: best === atWorst ? best : 'undecided', atWorst};
};

const severity = {good: 0, usable: 2, beyond: 4, 'off-scale': 5} as const satisfies Record<Judged['atWorst'], number>;

// An undecided figure stands just below the zone that it may turn out to be in.
const rank = ({verdict, atWorst}: Judged): number =>
	verdict === 'undecided' ? severity[atWorst] - 1 : severity[verdict];

/** The gravest of several verdicts: what ranks highest is also the worst at worst, so one order serves both words. */
export const gravest = <T extends Judged>(first: T, ...others: readonly T[]): T =>
	others.reduce((worst, one) => (rank(one) > rank(worst) ? one : worst), first);

const nearestLimitInside = (size: number, uncertainty: number, {good, usable}: Limits): number | null => {
	const inside = [good, usable].filter(
		(limit) => isBelow(size - uncertainty, limit) && isAbove(size + uncertainty, limit),
	);
	return inside.length === 0 ? null : Math.min(...inside.map((limit) => Math.abs(size - limit)));
};

/** A figure at one radius, and what its uncertainty would be with more rounds as used there. */
export type Figure = {
	readonly value: number;
	/** Rounds as used. */
	readonly used: number;
	/** Whether its scatter is an assumption. */
	readonly isAssumed: boolean;
	/** @param isFiner without what step and nudge leave beside the scatter */
	readonly budgetWith: (moreRounds: number, isFiner: boolean) => Budget;
};

const isDecidedWith = (budget: Budget, distance: number): boolean => {
	// Student's factor is never below the normal one, which spares most of the quantiles.
	const atBest = constants.normalQuantile975.value * standardUncertaintyPct(budget);
	return isAtMost(atBest, distance) && isAtMost(expandedUncertainty(budget).uncertaintyPct, distance);
};

/** What would probably decide a figure; null where no limit lies within its uncertainty. */
export const whatWouldDecide = ({value, used, isAssumed, budgetWith}: Figure, limits: Limits): WouldDecide | null => {
	const size = Math.abs(value);
	const distance = nearestLimitInside(size, expandedUncertainty(budgetWith(0, false)).uncertaintyPct, limits);
	if (distance === null) return null;
	const {roundsToLearn, mostRounds} = defaults;
	if (isAssumed || used < roundsToLearn.value) return {rounds: roundsToLearn.value};
	for (let rounds = used + 1; rounds <= mostRounds.value; rounds++)
		if (isDecidedWith(budgetWith(rounds - used, false), distance)) return {rounds};
	const isFinerOfUse = used < mostRounds.value && isDecidedWith(budgetWith(mostRounds.value - used, true), distance);
	return isFinerOfUse ? {finerStep: true} : {onLimit: true};
};
