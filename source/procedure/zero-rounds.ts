import {isAbove} from '../measures/compare.js';
import type {Facts} from './facts.js';

/** One round as the gauge stands, one after it was turned end for end. */
export type ZeroRound = 'first' | 'turned';

/** Both limits of a round of the zero check in base units; undefined until both were read. */
export function zeroRoundOf(
	facts: Facts,
	round: ZeroRound,
): {readonly inner: number; readonly outer: number} | undefined {
	const inner = facts.number(`zero-${round}-inner`);
	const outer = facts.number(`zero-${round}-outer`);
	return inner === undefined || outer === undefined ? undefined : {inner, outer};
}

/** Turned round, the gauge shows the same pushes with the other sign, so its limits lie the other way. */
export function isCrossed(facts: Facts, round: ZeroRound): boolean {
	const limits = zeroRoundOf(facts, round);
	if (!limits) return false;
	const {inner, outer} = limits;
	return round === 'first' ? isAbove(inner, outer) : isAbove(outer, inner);
}
