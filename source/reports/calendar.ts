import {createHash} from 'node:crypto';
import {ICalAlarmType, ICalCalendar, ICalCalendarMethod, ICalEventTransparency} from 'ical-generator';
import type {DueArm} from '../results/years/due.js';
import {visibleText} from '../visible-text.js';
import {reportWords} from '../words/reports.js';

export type CalendarEvent = {
	readonly due: DueArm;
	/** Why it is due then, as it was said at the check. */
	readonly because: string;
	/** What tells this arm from every other one, and stays when the arm is renamed. */
	readonly identity: string;
};

const PRODUCT = '//armdrift//next checks//EN';
const DAY_SECONDS = 86_400;

/**
 * A calendar file (RFC 5545): for every arm the day of its next check, with a reminder a week before. The UID of an
 * event is always the same for the same arm, so that a calendar that takes the file in again moves the event.
 * @param stamp time of writing, ISO
 */
export function calendarOf(events: readonly CalendarEvent[], stamp: string): string {
	const calendar = new ICalCalendar({prodId: PRODUCT, method: ICalCalendarMethod.PUBLISH});
	for (const {due, because, identity} of events) {
		const summary = visibleText(reportWords.calendar.summary({arm: due.arm}));
		const event = calendar.createEvent({
			id: uidOf(identity),
			stamp,
			// RFC 5545 3.8.7.4: it grows with every revision. The day of writing does, and nobody has to remember it.
			sequence: Math.floor(Date.parse(stamp) / (1000 * DAY_SECONDS)),
			// A date alone is taken as midnight UTC and written back in UTC: the same day in any time zone.
			start: due.date,
			allDay: true,
			summary,
			description: visibleText(reportWords.calendar.description({because, last: due.last})),
			transparency: ICalEventTransparency.TRANSPARENT,
		});
		event.createAlarm({type: ICalAlarmType.display, triggerBefore: 7 * DAY_SECONDS, description: summary});
	}
	return withoutExtensions(calendar.toString());
}

/** The library adds lines of its own for some calendar programs; a dated event needs none of them. */
const withoutExtensions = (text: string): string =>
	text
		.split('\r\n')
		.filter((line) => !line.startsWith('X-'))
		.join('\r\n');

/** Whether a file is one that this program wrote, by its beginning. */
export const isOwnCalendar = (head: string): boolean =>
	head.startsWith('BEGIN:VCALENDAR\r\n') && head.split('\r\n').includes(`PRODID:-${PRODUCT}`);

// RFC 7986 5.3: a UID should not be told from by whom or where it was made; a name in it would.
const uidOf = (identity: string): string =>
	`${createHash('sha256').update(`next check of ${identity}`).digest('hex').slice(0, 32)}@armdrift`;
