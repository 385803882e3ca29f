import ICAL from 'ical.js';
import {afterEach, describe, expect, it, vi} from 'vitest';
import {type CalendarEvent, calendarOf, isOwnCalendar} from '../../source/reports/calendar.js';
import {summaryOf} from '../../source/results/record.js';
import {dueArms} from '../../source/results/years/due.js';
import {filed} from '../helpers/filed-checks.js';
import {played} from '../helpers/invented-checks.js';
import {words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';

const STAMP = '2026-11-25T13:14:15+01:00';
const because = 'In six months (common practice, no source).';

const eventFor = (arm: string, date: string, more: Partial<CalendarEvent> = {}): CalendarEvent => {
	const last = summaryOf(filed({at: '2026-05-25T10:00:00Z', arm, next: {date, because}}));
	const [due] = dueArms([last], [], STAMP);
	if (!due) throw new Error('an arm with a date is due at some time');
	return {due, because, identity: arm, isCancelled: false, ...more};
};

/** Reads a calendar with another library than the one that wrote it. */
function readBack(text: string) {
	const calendar = new ICAL.Component(ICAL.parse(text));
	const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one, {strictExceptions: true}));
	return {calendar, events};
}
const onlyEvent = (one: CalendarEvent) => {
	const [event] = readBack(calendarOf([one], STAMP)).events;
	if (!event) throw new Error('no event was read');
	return event;
};

const hard = 'north, south; back\\slash: "quoted"\nsecond line';
const long = 'Übergroßer Tonarm 横田式 🎧 '.repeat(8).trim();

afterEach(() => void vi.unstubAllEnvs());

describe('The calendar of next checks, read back by another library', () => {
	it('has no properties of any one calendar program', () => {
		expect(calendarOf([eventFor('north deck', '2026-11-25')], STAMP)).not.toMatch(/^X-/m);
	});

	it('has what RFC 5545 wants of a calendar (3.6), an event (3.6.1) and a displayed alarm (3.6.6)', () => {
		const {calendar, events} = readBack(calendarOf([eventFor('north deck', '2026-11-25')], STAMP));
		expect(calendar.name).toBe('vcalendar');
		expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
		expect(calendar.getAllProperties('prodid')).toHaveLength(1);
		expect(events).toHaveLength(1);
		const [alarm] = events[0]?.component.getAllSubcomponents('valarm') ?? [];
		for (const name of ['uid', 'dtstamp', 'dtstart'])
			expect(events[0]?.component.getAllProperties(name)).toHaveLength(1);
		for (const name of ['action', 'trigger', 'description']) expect(alarm?.getAllProperties(name)).toHaveLength(1);
		expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
	});

	it('has one event a day long for each arm, and its reminder a week before', () => {
		// The day of writing is not over yet.
		const {events} = readBack(calendarOf([eventFor('a', '2026-11-25'), eventFor('b', '2027-02-28')], STAMP));
		expect(events.map(({startDate}) => [startDate.isDate, startDate.toString()])).toEqual([
			[true, '2026-11-25'],
			[true, '2027-02-28'],
		]);
		// RFC 5545 3.6.1: with a date and no end, the event takes that one day.
		expect(events.map(({duration}) => duration.toSeconds())).toEqual([86_400, 86_400]);
		for (const {component} of events) {
			const [alarm] = component.getAllSubcomponents('valarm');
			expect(String(alarm?.getFirstPropertyValue('trigger'))).toBe('-P7D');
		}
	});

	it.each(['Pacific/Auckland', 'America/Los_Angeles', 'UTC'])('keeps the day in %s', (zone) => {
		vi.stubEnv('TZ', zone);
		expect(onlyEvent(eventFor('north deck', '2027-02-28')).startDate.toString()).toBe('2027-02-28');
	});

	it.each([
		// Calendar months, clamped to the last day of a shorter one; 2028 is a leap year of the Gregorian calendar.
		['2026-08-31T10:00:00+02:00', '2027-02-28'],
		['2027-08-31T10:00:00+02:00', '2028-02-29'],
	])('a check of %s is due on the last day of February', (at, date) => {
		// A finer gauge leaves nothing undecided, so that six months are asked for.
		const limits = ['0.5 out', '0.6 out'] as const;
		const script = northDeckWith(
			{
				'gauge-step': '0.05',
				'gauge-nudge': '0.05',
			},
			{inner: [limits, ['-0.5', '-0.6'], limits], outer: [limits, limits, limits], closing: [limits]},
		);
		const last = summaryOf(played({at, script}));
		const [due] = dueArms([last], [], at);
		expect(due?.date).toBe(date);
		expect(due && onlyEvent({due, because, identity: 'a', isCancelled: false}).startDate.toString()).toBe(date);
	});

	it('gives an arm the same UID every time, and every arm its own', () => {
		const uid = (one: CalendarEvent): string => onlyEvent(one).uid;
		expect(uid(eventFor('a', '2026-11-25'))).toBe(uid(eventFor('a', '2027-05-25')));
		expect(uid(eventFor('a', '2026-11-25'))).toBe(uid(eventFor('renamed', '2026-11-25', {identity: 'a'})));
		expect(uid(eventFor('a', '2026-11-25'))).not.toBe(uid(eventFor('b', '2026-11-25')));
	});

	it('a later calendar replaces an earlier one: DTSTAMP in UTC, SEQUENCE never falls (RFC 5545 3.8.7)', () => {
		const [event, later] = [STAMP, '2026-11-27T13:14:15+01:00'].map(
			(stamp) => readBack(calendarOf([eventFor('a', '2026-11-25')], stamp)).events[0],
		);
		expect(String(event?.component.getFirstPropertyValue('dtstamp'))).toBe('2026-11-25T12:14:15Z');
		expect(later?.sequence).toBeGreaterThan(event?.sequence ?? Number.POSITIVE_INFINITY);
	});

	it('puts nothing in the past: an overdue check is tomorrow, and says since when it is due', () => {
		const late = eventFor('a', '2026-11-24');
		const {startDate, description, component} = onlyEvent(late);
		expect(startDate.toString()).toBe('2026-11-26');
		const {date, id} = late.due.last;
		expect(description).toBe(words.reports.calendar.description({because, last: {date, id}, dueSince: '2026-11-24'}));
		// A reminder a week before would lie in the past.
		const trigger = component.getFirstSubcomponent('valarm')?.getFirstPropertyValue('trigger');
		expect(trigger instanceof ICAL.Duration && trigger.toSeconds()).toBe(0);
	});

	it.each([
		// Gregorian calendar: the last day of a year, and of a February in a leap year.
		['2026-12-31T23:30:00+01:00', '2027-01-01'],
		['2028-02-28T00:30:00-08:00', '2028-02-29'],
	])('written at %s, tomorrow is %s', (stamp, tomorrow) => {
		const last = summaryOf(filed({at: '2026-05-25T10:00:00Z', next: {date: '2026-06-25', because}}));
		const [due] = dueArms([last], [], stamp);
		const [event] = due ? readBack(calendarOf([{due, because, identity: 'a', isCancelled: false}], stamp)).events : [];
		expect(event?.startDate.toString()).toBe(tomorrow);
	});

	it('takes the event of an arm away that is set aside: the same UID, a higher SEQUENCE, a DTSTAMP (RFC 5545 3.8)', () => {
		const there = eventFor('a', '2026-12-25');
		const [before, gone, back] = [
			onlyEvent(there),
			onlyEvent({...there, isCancelled: true}),
			readBack(calendarOf([there], '2026-11-25T13:15:15+01:00')).events[0],
		];
		expect(gone.uid).toBe(before.uid);
		expect(gone.component.getFirstPropertyValue('status')).toBe('CANCELLED');
		expect(before.component.getFirstPropertyValue('status')).toBeNull();
		expect(gone.sequence).toBeGreaterThan(before.sequence);
		// RFC 5545 3.3.8: a signed number of 32 bits.
		expect(gone.sequence).toBeLessThan(2 ** 31);
		expect(String(gone.component.getFirstPropertyValue('dtstamp'))).toBe('2026-11-25T12:14:15Z');
		expect(gone.component.getAllSubcomponents('valarm')).toEqual([]);
		// A minute later it may be taken up again.
		expect(back?.sequence).toBeGreaterThan(gone.sequence);
	});

	it('is a cancellation where it holds nothing else (RFC 5546 3.2.5), else published (3.2.1)', () => {
		const [there, gone] = [eventFor('a', '2026-12-25'), eventFor('b', '2026-12-25', {isCancelled: true})];
		const methodOf = (events: CalendarEvent[]) =>
			readBack(calendarOf(events, STAMP)).calendar.getFirstPropertyValue('method');
		expect([methodOf([there]), methodOf([there, gone]), methodOf([gone])]).toEqual(['PUBLISH', 'PUBLISH', 'CANCEL']);
	});

	it.each([hard, long, '\u001B[31mred\u0007', ' spaces  at both ends '])('keeps the text of %j', (arm) => {
		const event = eventFor(arm, '2026-11-25');
		const {due} = event;
		const {summary, description} = onlyEvent(event);
		const shown = arm.replace('\u001B', '\\x1b').replace('\u0007', '\\x07').replace('\n', '\\n');
		expect(summary).toBe(words.reports.calendar.summary({arm: shown}));
		const last = {date: '2026-05-25', id: due.last.id};
		expect(description).toBe(words.reports.calendar.description({because, last}));
	});

	it('ends every line with CRLF and folds it at 75 octets, between characters (RFC 5545 3.1)', () => {
		const text = calendarOf([eventFor(long, '2026-11-25'), eventFor(hard, '2026-11-25')], STAMP);
		expect(text).toMatch(/\r\nEND:VCALENDAR\r\n$/);
		const lines = text.replace(/\r\n$/, '').split('\r\n');
		expect(lines.filter((line) => /[\r\n]/.test(line) || Buffer.byteLength(line) > 75)).toEqual([]);
		expect(lines.filter((line) => Buffer.from(line).toString() !== line)).toEqual([]);
		expect(lines.some((line) => line.startsWith(' '))).toBe(true);
	});

	it('is known again by its first lines, and another calendar is not', () => {
		const text = calendarOf([eventFor('a', '2026-11-25')], STAMP);
		expect(isOwnCalendar(text.slice(0, 120))).toBe(true);
		expect(isOwnCalendar(text.replace(/PRODID:[^\r]*/, 'PRODID:-//another//EN'))).toBe(false);
		expect(isOwnCalendar(`x${text}`)).toBe(false);
		expect(isOwnCalendar('')).toBe(false);
	});
});
