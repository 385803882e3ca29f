import {carriedForceMn, mnPerGram} from '../measures/tracking-force.js';
import type {Facts} from './facts.js';
import {gaugeUnitOf, isPushedByHand} from './readings.js';

/** How the guard stands to the weighing, in the words of stored documents. */
export type GuardHandling = 'included' | 'left-out' | 'none';

/** Undefined while it is not settled: not answered, or left out with an unknown mass. */
export function guardHandling(facts: Facts): GuardHandling | undefined {
	if (facts.is('guard-on', 'no-guard')) return 'none';
	if (!facts.is('guard-on', 'on')) return;
	if (facts.is('weighed', 'with') || isPushedByHand(facts)) return 'included';
	return facts.is('weighed', 'without') && facts.number('guard-mass') !== undefined ? 'left-out' : undefined;
}

/** The reading of the stylus scale that counts: at probe height where it was taken again there, nothing of a floating arm. */
export function scaleReadingMn(facts: Facts): number | undefined {
	if (!isPushedByHand(facts)) return facts.number('force-at-height') ?? facts.number('force-reading');
	// Percent of nothing are no figures.
	return facts.yes('arm-afloat') && gaugeUnitOf(facts) !== 'percent' ? 0 : undefined;
}

/** The force that the gauge would carry by a reading of the scale, in mN; undefined while the guard is not settled. */
export function carriedWith(facts: Facts, readingMn: number | undefined): number | undefined {
	const guard = guardHandling(facts);
	if (readingMn === undefined || guard === undefined) return;
	return carriedForceMn(readingMn, guard === 'left-out' ? (facts.number('guard-mass') ?? 0) : 0);
}

/** The force that the gauge carries during the probe, in mN; undefined until weighed. */
export const carriedMn = (facts: Facts): number | undefined => carriedWith(facts, scaleReadingMn(facts));

/** A force in mN beside the playing force, in percent of it; undefined where either is not known. */
export function besidePlaying(facts: Facts, forceMn: number | undefined, allowedShare: number) {
	const playingMn = facts.number('playing-force');
	if (forceMn === undefined || playingMn === undefined) return;
	return {playingMn, offPct: 100 * (forceMn / playingMn - 1), allowedPct: 100 * allowedShare};
}

/** Weight of the guard in mN, 0 when there is none or its mass is unknown. */
export const guardWeightMn = (facts: Facts): number =>
	facts.is('guard-on', 'no-guard') ? 0 : (facts.number('guard-mass') ?? 0) * mnPerGram;
