import {isCounted, type PastCheck} from '../../check/past-check.js';
import type {Profile} from '../../procedure/facts.js';
import {namesOfToday} from './arms.js';

/** What tells of a check when its arm is due. */
export type DatedCheck = Pick<
	PastCheck,
	'arm' | 'startedAt' | 'verdict' | 'voidBecause' | 'isVoidUnknown' | 'nextDate'
>;

/** When an arm is to be checked again. */
export type DueArm<C = PastCheck> = {
	readonly arm: string;
	/** Day of the next check, `2027-05-25`. */
	readonly date: string;
	/** The check that the date comes from. */
	readonly last: C;
	/** Days from today to it: 0 and less is due. */
	readonly inDays: number;
};

/** The latest check of every arm that counts, by the name that the arm has today. */
function latestOfArms<C extends DatedCheck>(
	all: readonly C[],
	nameOf: (checkedAs: string) => string,
): ReadonlyMap<string, C> {
	const latest = new Map<string, C>();
	for (const one of all) {
		if (!isCounted(one) || one.verdict === null) continue;
		const name = nameOf(one.arm);
		const known = latest.get(name);
		if (!known || known.startedAt < one.startedAt) latest.set(name, one);
	}
	return latest;
}

/** Arms with a date for their next check, the first one due first; those set aside are left out. */
export function dueArms<C extends DatedCheck>(
	all: readonly C[],
	profiles: readonly Profile[],
	today: string,
): readonly DueArm<C>[] {
	const aside = new Set(profiles.filter((one) => one.kind === 'arm' && one.setAside).map(({name}) => name));
	const now = dayNumber(today.slice(0, 10));
	return [...latestOfArms(all, namesOfToday(profiles))]
		.flatMap(([arm, last]): DueArm<C>[] => {
			if (last.nextDate === null || aside.has(arm)) return [];
			const inDays = dayNumber(last.nextDate) - now;
			// A file may have been edited by hand, so that this is no day.
			return Number.isNaN(inDays) ? [] : [{arm, date: last.nextDate, last, inDays}];
		})
		.sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : one.arm < other.arm ? -1 : 1));
}

const dayMs = 86_400_000;

/** Days from the start of 1970 to a day `2026-11-29` of the Gregorian calendar, in no time zone; NaN where it is none. */
function dayNumber(day: string): number {
	if (!/^\d{4}-\d\d-\d\d$/.test(day)) return Number.NaN;
	const date = new Date(`${day}T00:00Z`);
	// A 30th of February would be taken for a day of March.
	return date.getUTCDate() === Number(day.slice(8)) ? date.getTime() / dayMs : Number.NaN;
}
