/** The one door through which days and times are printed for a person, by `Intl`. */
import {locale, monthLocale} from './locale.js';

type Formats = {
	readonly day: Intl.DateTimeFormat;
	readonly month: Intl.DateTimeFormat;
	readonly monthOfYear: Intl.DateTimeFormat;
	readonly clock: Intl.DateTimeFormat;
};

let made: Formats | undefined;

// A date without a time belongs to no zone; a time is told as the clock on the wall shows it.
const formats = (): Formats => {
	made ??= {
		day: new Intl.DateTimeFormat(locale, {day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC'}),
		month: new Intl.DateTimeFormat(monthLocale, {month: 'short', timeZone: 'UTC'}),
		monthOfYear: new Intl.DateTimeFormat(monthLocale, {month: 'short', year: 'numeric', timeZone: 'UTC'}),
		clock: new Intl.DateTimeFormat(locale, {hour: '2-digit', minute: '2-digit', hourCycle: 'h23'}),
	};
	return made;
};

const timeOf = (date: string): number => {
	const [year, month, day] = date.split('-').map(Number);
	return Date.UTC(year ?? 0, (month ?? 1) - 1, day ?? 1);
};

/** A date such as '2026-05-04': '4 May 2026'. */
export const dayText = (date: string): string =>
	formats()
		.day.formatToParts(timeOf(date))
		.map(({type, value}) => (type === 'month' ? formats().month.format(timeOf(date)) : value))
		.join('');

/** The month of a date such as '2026-05-04': 'May 2026'. */
export const monthText = (date: string): string => formats().monthOfYear.format(timeOf(date));

const two = (number: number): string => String(number).padStart(2, '0');

/** Day on the wall calendar by ISO 8601, '2026-11-25', the same in every language. */
const isoDay = (time: Date): string => `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;

/** Time on the wall clock, '14:32'; with the day where it is not today. */
export const timeText = (time: Date, now: Date): string => {
	const clock = formats().clock.format(time);
	return isoDay(time) === isoDay(now) ? clock : `${isoDay(time)} ${clock}`;
};
