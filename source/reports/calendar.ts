import {createHash} from 'node:crypto';
import {ICalAlarmType, ICalCalendar, ICalCalendarMethod, ICalEventStatus, ICalEventTransparency} from 'ical-generator';
import type {DueArm} from '../results/years/due.js';
import {visibleText} from '../visible-text.js';
import {reportWords} from '../words/reports.js';

export type CalendarEvent = {
	readonly due: DueArm;
	/** Why it is due then, as it was said at the check. */
	readonly because: string;
	/** What tells this arm from every other one, and stays when the arm is renamed. */
	readonly identity: string;
	/** It is not to be checked any more: the event goes. */
	readonly isCancelled: boolean;
};

const PRODUCT = '//armdrift//next checks//EN';
const DAY_SECONDS = 86_400;

/**
 * A calendar file (RFC 5545): for every arm the day of its next check, with a reminder a week before. A check that is
 * overdue is put on the day after the writing: nobody looks for it in the past. The UID of an event is always the same
 * for the same arm, so that a calendar that takes the file in again moves the event, or takes it away.
 * @param stamp time of writing, ISO
 */
export function calendarOf(events: readonly CalendarEvent[], stamp: string): string {
	// RFC 5546 3.2.1 and 3.2.5: what is published may hold cancelled events; alone, they are a cancellation.
	const isCancellation = events.every(({isCancelled}) => isCancelled);
	const method = isCancellation ? ICalCalendarMethod.CANCEL : ICalCalendarMethod.PUBLISH;
	const calendar = new ICalCalendar({prodId: PRODUCT, method});
	for (const {due, because, identity, isCancelled} of events) {
		const summary = visibleText(reportWords.calendar.summary({arm: due.arm}));
		const isOverdue = due.inDays < 0;
		const told = {because, last: due.last, ...(isOverdue && {dueSince: due.date})};
		const event = calendar.createEvent({
			id: uidOf(identity),
			stamp,
			sequence: sequenceAt(stamp, isCancelled),
			// A date alone is taken as midnight UTC and written back in UTC: the same day in any time zone.
			start: isOverdue ? dayAfter(stamp.slice(0, 10)) : due.date,
			allDay: true,
			summary,
			description: visibleText(reportWords.calendar.description(told)),
			transparency: ICalEventTransparency.TRANSPARENT,
			...(isCancelled && {status: ICalEventStatus.CANCELLED}),
		});
		const triggerBefore = isOverdue ? 0 : 7 * DAY_SECONDS;
		if (!isCancelled) event.createAlarm({type: ICalAlarmType.display, triggerBefore, description: summary});
	}
	return withoutExtensions(calendar.toString());
}

/**
 * RFC 5545 3.8.7.4: it grows with every revision. The minute of writing does, and nobody has to remember it; within a
 * minute a cancellation comes after what it cancels.
 */
const sequenceAt = (stamp: string, isCancelled: boolean): number =>
	2 * Math.floor(Date.parse(stamp) / 60_000) + (isCancelled ? 1 : 0);

/** The day after one on the calendar; both as `2026-11-25`. */
const dayAfter = (day: string): string => new Date(Date.parse(day) + 1000 * DAY_SECONDS).toISOString().slice(0, 10);

/**
 * The library adds lines of its own for some calendar programs, which a dated event does not need; and leaves out the
 * end of the last line (RFC 5545 3.1).
 */
const withoutExtensions = (text: string): string =>
	text
		.split('\r\n')
		.filter((line) => line !== '' && !line.startsWith('X-'))
		.map((line) => `${line}\r\n`)
		.join('');

/** Whether a file is one that this program wrote, by its beginning. */
export const isOwnCalendar = (head: string): boolean =>
	head.startsWith('BEGIN:VCALENDAR\r\n') && head.split('\r\n').includes(`PRODID:-${PRODUCT}`);

// RFC 7986 5.3: a UID should not be told from by whom or where it was made; a name in it would.
const uidOf = (identity: string): string =>
	`${createHash('sha256').update(`next check of ${identity}`).digest('hex').slice(0, 32)}@armdrift`;
