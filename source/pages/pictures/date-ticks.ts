import {dayText, monthText as monthOfYear} from '../../words/dates.js';

const dayMs = 86_400_000;

/** Days from 1970 to a date such as `2026-05-04`. */
export const dayNumber = (date: string): number => {
	const [year = 1970, month = 1, day = 1] = date.split('-').map(Number);
	return Date.UTC(year, month - 1, day) / dayMs;
};

export type DateTick = {readonly day: number; readonly text: string};

const monthSteps = [1, 3, 6, 12, 24, 60, 120, 240];
const mostTicks = 4;

/** Firsts of months or years within a range of days; where there are fewer than two, the first and the last date. */
export function dateTicks(dates: readonly string[], low: number, high: number): DateTick[] {
	const months = monthsWithin(low, high);
	const step = monthSteps.find((one) => months.filter((month) => month % one === 0).length <= mostTicks) ?? 240;
	const ticks = months
		.filter((month) => month % step === 0)
		.map((month) => ({day: dayOfMonth(month), text: monthText(month, step)}));
	if (ticks.length >= 2) return ticks;
	const ends = [...new Set([dates[0], dates.at(-1)])].filter((one) => one !== undefined);
	return ends.map((date) => ({day: dayNumber(date), text: dayText(date)}));
}

/** Months counted from the year 0. */
function monthsWithin(low: number, high: number): number[] {
	const first = monthNumber(low) + 1;
	return Array.from({length: Math.max(0, monthNumber(high) - first + 1)}, (_, index) => first + index);
}

const monthNumber = (day: number): number => {
	const date = new Date(day * dayMs);
	return date.getUTCFullYear() * 12 + date.getUTCMonth();
};

const dayOfMonth = (month: number): number => Date.UTC(Math.floor(month / 12), month % 12, 1) / dayMs;

const monthText = (month: number, step: number): string => {
	const year = String(Math.floor(month / 12));
	if (step >= 12) return year;
	return monthOfYear(`${year}-${(month % 12) + 1}-1`);
};
