import {isCounted} from '../../check/past-check.js';
import type {Profile} from '../../procedure/facts.js';
import {knownArms} from './arms-named.js';
import {type DatedCheck, type DueArm, dueArms} from './due.js';

/** Arms on file, in short: how many, how many of them are due, and the one that is due first. */
export type ArmsAtAGlance = {
	readonly arms: number;
	readonly due: number;
	readonly first: DueArm<DatedCheck> | undefined;
};

/**
 * One check for each name under which an arm was checked, which is all that a glance needs: the latest that counts, else
 * the newest. Of ten thousand checks of some arms it leaves a handful.
 */
export function latestOfNames<C extends DatedCheck>(newestFirst: readonly C[]): readonly C[] {
	const latest = new Map<string, C>();
	for (const one of newestFirst) {
		const known = latest.get(one.arm);
		if (!known || (counts(one) && (!counts(known) || known.startedAt < one.startedAt))) latest.set(one.arm, one);
	}
	const left = new Set(latest.values());
	return newestFirst.filter((one) => left.has(one));
}

const counts = (one: DatedCheck): boolean => one.verdict !== null && isCounted(one);

/** @param checks all on file, or `latestOfNames` of them, newest first; @param today as yyyy-mm-dd */
export function armsAtAGlance(
	checks: readonly DatedCheck[],
	profiles: readonly Profile[],
	today: string,
): ArmsAtAGlance {
	const dated = dueArms(checks, profiles, today);
	const arms = knownArms(new Set(checks.map(({arm}) => arm)), profiles).length;
	return {arms, due: dated.filter(({inDays}) => inDays <= 0).length, first: dated[0]};
}
