import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from './compare.js';
import type {LimitPair} from './hold-band.js';

/** How far rounds that do not agree lie apart, and how far is usual; both in the gauge's unit. */
export type RoundsApart = {readonly apart: number; readonly usual: number};

/**
 * The rounds at one radius whose middles lie farther apart than a careful hand leaves them; undefined where they agree.
 *
 * @param step smallest step of the gauge, in its unit
 * @param nudge size of one nudge, in the same unit
 */
export function roundsApart(rounds: readonly LimitPair[], step: number, nudge: number): RoundsApart | undefined {
	const middles = rounds.map(({innerLimit, outerLimit}) => (innerLimit + outerLimit) / 2);
	const apart = Math.max(...middles) - Math.min(...middles);
	const usual = limits.roundsAgreeTimes.value * (step + nudge);
	return isAbove(apart, usual) ? {apart, usual} : undefined;
}
