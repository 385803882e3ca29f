import type {PastCheck} from '../../check/past-check.js';
import type {ArmEvent, NotedEvent} from '../../procedure/arm-event.js';

/** Something done to an arm, as it stands in its history: told at a check, on whose day it stands, or noted by itself. */
export type DoneEvent = ArmEvent & {readonly noted?: NotedEvent};

/** What holds of what was noted: all that is not struck out. */
export const holding = (events: readonly NotedEvent[]): readonly NotedEvent[] =>
	events.filter(({struckAt}) => struckAt === undefined);

/**
 * Whether something noted was done before a check. On the day of the check itself it was, unless it was noted that same
 * day after the check had begun.
 */
export function isDoneBefore({on, at}: NotedEvent, {date, startedAt}: Pick<PastCheck, 'date' | 'startedAt'>): boolean {
	if (on !== date) return on < date;
	return at.slice(0, 10) !== on || Date.parse(at) < Date.parse(startedAt);
}

/** The checks of an arm, newest first, each with what was noted as done between it and the next one, or the one named. */
export function withNoted(
	checks: readonly PastCheck[],
	events: readonly NotedEvent[],
	next?: Pick<PastCheck, 'date' | 'startedAt'>,
): readonly PastCheck[] {
	const noted = holding(events);
	if (noted.length === 0) return checks;
	return checks.map((one, index) => {
		const before = checks[index - 1] ?? next;
		const doneAfter = noted
			.filter((event) => !isDoneBefore(event, one) && (!before || isDoneBefore(event, before)))
			.map(plain)
			.toSorted(byDay);
		return doneAfter.length === 0 ? one : {...one, doneAfter};
	});
}

const plain = ({kind, on, note}: ArmEvent): ArmEvent => ({kind, on, ...(note === undefined ? {} : {note})});
const byDay = (one: ArmEvent, other: ArmEvent): number => (one.on < other.on ? -1 : one.on > other.on ? 1 : 0);

/** What was told at a check as done since the one before; it stands on the day of the check. */
export const toldAt = ({
	doneSince,
	doneNote,
	date,
}: Pick<PastCheck, 'doneSince' | 'doneNote' | 'date'>): readonly ArmEvent[] =>
	doneSince.map((kind) => ({kind, on: date, ...(kind === 'other' && doneNote !== null ? {note: doneNote} : {})}));

/** All that was done between a check and the last one, the newest of those before it. */
export const doneSinceLast = (now: PastCheck, [last]: readonly PastCheck[]): readonly ArmEvent[] => [
	...(last?.doneAfter ?? []),
	...toldAt(now),
];

/** All that was done between two checks of an arm, both among its checks, in any order. */
export function doneBetween(checks: readonly PastCheck[], then: PastCheck, now: PastCheck): readonly ArmEvent[] {
	const isAfter = (one: PastCheck, other: PastCheck) => one.startedAt > other.startedAt;
	return checks
		.toSorted((one, other) => (isAfter(one, other) ? 1 : -1))
		.flatMap((one) => [
			...(isAfter(one, then) && !isAfter(one, now) ? toldAt(one) : []),
			...(isAfter(now, one) && !isAfter(then, one) ? (one.doneAfter ?? []) : []),
		]);
}

/** All that was done over some checks of an arm, newest first: in order of the day. */
export const doneOver = (checks: readonly PastCheck[]): readonly ArmEvent[] =>
	checks.toReversed().flatMap((one) => [...toldAt(one), ...(one.doneAfter ?? [])]);

/** All events of an arm, in order of the day: those told at its checks that count, and those noted, struck out or not. */
export const eventsOf = (checks: readonly PastCheck[], noted: readonly NotedEvent[]): readonly DoneEvent[] =>
	[...checks.flatMap(toldAt), ...noted.map((event): DoneEvent => ({...plain(event), noted: event}))].toSorted(byDay);
