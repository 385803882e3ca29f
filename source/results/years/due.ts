import {differenceInCalendarDays} from 'date-fns/differenceInCalendarDays';
import {parseISO} from 'date-fns/parseISO';
import {isCounted, type PastCheck} from '../../check/past-check.js';
import type {Profile} from '../../procedure/facts.js';
import {namesOf} from './arms.js';

/** When an arm is to be checked again. */
export type DueArm = {
	readonly arm: string;
	/** Day of the next check, `2027-05-25`. */
	readonly date: string;
	/** The check that the date comes from. */
	readonly last: PastCheck;
	/** Days from today to it: 0 and less is due. */
	readonly inDays: number;
};

/** The latest check of every arm that counts, by the name that the arm has today. */
function latestOfArms(all: readonly PastCheck[], profiles: readonly Profile[]): ReadonlyMap<string, PastCheck> {
	const latest = new Map<string, PastCheck>();
	const today = new Map<string, string>();
	for (const one of all) {
		if (!isCounted(one) || one.verdict === null) continue;
		const name = today.get(one.arm) ?? namesOf(one.arm, profiles)[0] ?? one.arm;
		today.set(one.arm, name);
		const known = latest.get(name);
		if (!known || known.startedAt < one.startedAt) latest.set(name, one);
	}
	return latest;
}

/** Arms with a date for their next check, the first one due first; those set aside are left out. */
export function dueArms(all: readonly PastCheck[], profiles: readonly Profile[], today: string): readonly DueArm[] {
	const aside = new Set(profiles.filter((one) => one.kind === 'arm' && one.setAside).map(({name}) => name));
	return [...latestOfArms(all, profiles)]
		.flatMap(([arm, last]): DueArm[] => {
			if (last.nextDate === null || aside.has(arm)) return [];
			const inDays = differenceInCalendarDays(parseISO(last.nextDate), parseISO(today.slice(0, 10)));
			// A file may have been edited by hand, so that this is no day.
			return Number.isNaN(inDays) ? [] : [{arm, date: last.nextDate, last, inDays}];
		})
		.sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : one.arm < other.arm ? -1 : 1));
}
