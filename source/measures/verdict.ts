import constants from '../../shared/constants.json' with {type: 'json'};
import defaults from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isAtMost} from './compare.js';
import {type Budget, expandedUncertainty, standardUncertaintyPct, withRounds} from './uncertainty.js';

export type Limits = {readonly good: number; readonly usable: number};
export type Zone = 'good' | 'usable' | 'beyond';
export type GuardedVerdict = {readonly verdict: Zone | 'undecided'; readonly atWorst: Zone};

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

const nearestLimitInside = (size: number, uncertainty: number, {good, usable}: Limits): number | null => {
	const inside = [good, usable].filter(
		(limit) => isAtMost(size - uncertainty, limit) && isAbove(size + uncertainty, limit),
	);
	return inside.length === 0 ? null : Math.min(...inside.map((limit) => Math.abs(size - limit)));
};

const enoughRounds = (budget: Budget, distance: number): number | null => {
	for (let rounds = budget.rounds + 1; rounds <= defaults.mostRounds.value; rounds++) {
		const more = withRounds(budget, rounds);
		// Student's factor is never below the normal one, which spares most of the quantiles.
		const atBest = constants.normalQuantile975.value * standardUncertaintyPct(more);
		if (isAtMost(atBest, distance) && isAtMost(expandedUncertainty(more).uncertaintyPct, distance)) return rounds;
	}
	return null;
};

/** What would decide a figure; null where it is decided already. */
export const whatWouldDecide = (value: number, budget: Budget, limits: Limits): WouldDecide | null => {
	const size = Math.abs(value);
	const distance = nearestLimitInside(size, expandedUncertainty(budget).uncertaintyPct, limits);
	if (distance === null) return null;
	if (budget.repeatability === null) return {rounds: defaults.roundsToLearn.value};
	const rounds = enoughRounds(budget, distance);
	if (rounds !== null) return {rounds};
	return isAtMost(constants.normalQuantile975.value * budget.rest, distance) ? {finerStep: true} : {onLimit: true};
};
