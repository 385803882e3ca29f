import {isCounted, type PastCheck} from '../../check/past-check.js';
import type {Profile} from '../../procedure/facts.js';
import {type KnownArm, knownArms} from './arms-named.js';
import {type DueArm, dueArms} from './due.js';

/** Where an arm stands, by all that is on file of it. */
export type ArmState = KnownArm & {
	/** The profile that its checks start from, by its id. */
	readonly profileId: string | undefined;
	/** It is offered no more. */
	readonly isAside: boolean;
	/** How many checks of it are on file, void ones too. */
	readonly checks: number;
	/** The latest check that counts and came to a verdict. */
	readonly last: PastCheck | undefined;
	/** Undefined where no check gave a day for the next one. */
	readonly due: DueArm | undefined;
	/** The latest check after which the deck was not put back, by its id. */
	readonly deckOpenAfter: string | undefined;
};

type Gathered = {checks: number; last?: PastCheck; deckOpenAfter?: string};

/**
 * Every arm on file. The one that is due first comes first, then those without a day, and last those that are set aside.
 * @param newestFirst all checks on file
 * @param today as yyyy-mm-dd
 */
export function armStates(
	newestFirst: readonly PastCheck[],
	profiles: readonly Profile[],
	today: string,
): readonly ArmState[] {
	const known = knownArms(new Set(newestFirst.map(({arm}) => arm)), profiles);
	const gathered = new Map<string, Gathered>();
	for (const {name, formerNames} of known) {
		const one: Gathered = {checks: 0};
		for (const each of [name, ...formerNames]) if (!gathered.has(each)) gathered.set(each, one);
	}
	for (const past of newestFirst) {
		const one = gathered.get(past.arm);
		if (!one) continue;
		one.checks += 1;
		if (isCounted(past) && past.verdict !== null) one.last ??= past;
		if (past.outcome === 'interrupted') one.deckOpenAfter ??= past.id;
	}
	const dueOf = new Map(dueArms(newestFirst, profiles, today).map((due, place) => [due.arm, {due, place}]));
	const profileOf = new Map(profiles.filter(({kind}) => kind === 'arm').map((one) => [one.name, one]));
	const states = known.map(({name, formerNames}): ArmState => {
		const {checks = 0, last, deckOpenAfter} = gathered.get(name) ?? {};
		const profile = profileOf.get(name);
		const isAside = profile?.setAside ?? false;
		const due = dueOf.get(name)?.due;
		return {name, formerNames, profileId: profile?.id, isAside, checks, last, due, deckOpenAfter};
	});
	const rank = ({name, isAside}: ArmState): number =>
		isAside ? Number.POSITIVE_INFINITY : (dueOf.get(name)?.place ?? dueOf.size);
	return states.toSorted((one, other) => {
		const [first, second] = [rank(one), rank(other)];
		return first === second ? (one.name < other.name ? -1 : 1) : first - second;
	});
}
