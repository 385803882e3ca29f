import type {Check} from '../../check/check.js';
import {isCounted, type PastCheck} from '../../check/past-check.js';
import type {ArmEvent, NotedEvent} from '../../procedure/arm-event.js';
import type {Profile} from '../../procedure/facts.js';
import {holding, isDoneBefore, toldAt, withNoted} from './events.js';

/** Every name under which an arm was checked: the one it has, and those that it had before it was renamed. */
export function namesOf(
	known: string,
	profiles: readonly Profile[],
	kindOf: Profile['kind'] = 'arm',
): readonly string[] {
	const profile = profileOf(known, profiles, kindOf);
	return profile ? [profile.name, ...(profile.formerNames ?? [])] : [known];
}

const profileOf = (known: string, profiles: readonly Profile[], kindOf: Profile['kind']): Profile | undefined =>
	profiles.find(({kind, name, formerNames = []}) => kind === kindOf && [name, ...formerNames].includes(known));

/** The name that an arm has today, by the one under which it was checked. */
export function namesOfToday(profiles: readonly Profile[]): (checkedAs: string) => string {
	const today = new Map<string, string>();
	for (const {kind, name, formerNames = []} of profiles) {
		if (kind !== 'arm') continue;
		for (const one of [name, ...formerNames]) if (!today.has(one)) today.set(one, name);
	}
	return (checkedAs) => today.get(checkedAs) ?? checkedAs;
}

/** What was noted as done to an arm, struck out or not, in the order in which it was noted. */
export const notedOf = (armName: string, profiles: readonly Profile[]): readonly NotedEvent[] =>
	profileOf(armName, profiles, 'arm')?.events ?? [];

/** Checks made with a gauge and tools under any of their names, with this one: a new name is no other gauge. */
export function withTools(
	past: readonly PastCheck[],
	tools: string,
	profiles: readonly Profile[],
): readonly PastCheck[] {
	const names = namesOf(tools, profiles, 'tools');
	if (names.length === 1) return past;
	return past.map((one) =>
		one.measuredWith && names.includes(one.measuredWith.tools)
			? {...one, measuredWith: {...one.measuredWith, tools}}
			: one,
	);
}

/** The name under which each arm was first checked, by its name of today: it stays when the arm is renamed again. */
export function firstNames(
	newestFirst: readonly PastCheck[],
	profiles: readonly Profile[],
): ReadonlyMap<string, string> {
	const first = new Map<string, string>();
	for (const {arm} of newestFirst) first.set(namesOf(arm, profiles)[0] ?? arm, arm);
	return first;
}

/** A check that may be compared with another: it came to figures, and is known to count. */
const counts = (past: PastCheck): boolean => past.measuredWith !== null && isCounted(past);

/** For checks handed over oldest first: what was noted as done to the arm of each before it, and after the one before. */
export function notedInTurn(profiles: readonly Profile[]): (check: Check) => readonly ArmEvent[] {
	const told = new Set<NotedEvent>();
	return ({answers, startedAt}) => {
		const when = {startedAt, date: startedAt.slice(0, 10)};
		const noted = holding(notedOf(String(answers['arm-name']?.value ?? ''), profiles)).filter(
			(event) => !told.has(event) && isDoneBefore(event, when),
		);
		for (const event of noted) told.add(event);
		return noted;
	};
}

type When = Pick<PastCheck, 'date' | 'startedAt'>;

/** The checks of an arm that count, newest first, each with what was done before the next one, or before the time named. */
export function checksOfArm(
	all: readonly PastCheck[],
	armName: string,
	profiles: readonly Profile[],
	until?: When & {readonly id: string},
): readonly PastCheck[] {
	const names = new Set(namesOf(armName, profiles));
	const isEarlier = ({id, startedAt}: PastCheck) => !until || (id !== until.id && startedAt <= until.startedAt);
	const ofArm = all.filter((one) => names.has(one.arm) && isEarlier(one));
	// What was told at a check that came to no figures was done all the same.
	const told = ofArm
		.filter((one) => !counts(one) && isCounted(one))
		.flatMap((one) => toldAt(one).map((event): NotedEvent => ({...event, at: one.startedAt})));
	return withNoted(ofArm.filter(counts), [...notedOf(armName, profiles), ...told], until);
}

/** What came before a check of the same arm, newest first, with its tools called as they are in the check; an invented arm has no past. */
export function historyOf(check: Check, all: readonly PastCheck[], profiles: readonly Profile[]): readonly PastCheck[] {
	const armName = check.answers['arm-name']?.value;
	if (typeof armName !== 'string' || check.practice) return [];
	const {id, startedAt} = check;
	const earlier = checksOfArm(all, armName, profiles, {id, startedAt, date: startedAt.slice(0, 10)});
	const tools = check.answers['tools-name']?.value;
	return typeof tools === 'string' ? withTools(earlier, tools, profiles) : earlier;
}
