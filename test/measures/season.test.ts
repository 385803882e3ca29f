import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {isSeasonTold} from '../../source/measures/season.js';

describe('the season', () => {
	// All dates are invented. A quarter is that of the calendar: January to March and so on.
	it.each([
		['18 months and three quarters', ['2024-01-15', '2024-06-20', '2024-11-03', '2025-07-15'], true],
		['a day less than 18 months', ['2024-01-15', '2024-06-20', '2024-11-03', '2025-07-14'], false],
		['18 months, but two quarters', ['2024-01-15', '2024-07-15', '2025-01-15', '2025-07-15'], false],
		['three years, but two quarters', ['2023-03-31', '2023-07-01', '2024-02-29', '2026-09-30'], false],
		['two checks far apart', ['2020-01-01', '2025-07-01'], false],
		['quarters of different years', ['2023-01-10', '2024-04-01', '2025-12-31'], true],
	] as const)('is told or not by %s', (_what, dates, told) => {
		expect(isSeasonTold(dates)).toBe(told);
	});

	it('counts months to the last day of a shorter month', () => {
		expect(isSeasonTold(['2024-08-31', '2025-05-02', '2025-10-10', '2026-02-28'])).toBe(true);
		expect(isSeasonTold(['2024-08-31', '2025-05-02', '2025-10-10', '2026-02-27'])).toBe(false);
		expect(isSeasonTold(['2024-12-31', '2025-08-02', '2025-10-10', '2026-06-30'])).toBe(true);
	});

	it('tells quarters apart at their very ends', () => {
		const with18Months = (...dates: string[]) => isSeasonTold(['2024-01-01', '2025-07-01', ...dates]);
		expect(with18Months('2024-03-31')).toBe(false);
		expect(with18Months('2024-04-01')).toBe(true);
		expect(with18Months('2024-09-30')).toBe(false);
		expect(with18Months('2024-10-01')).toBe(true);
	});

	it('is not told from one check or none', () => {
		expect(isSeasonTold([])).toBe(false);
		expect(isSeasonTold(['2024-01-15'])).toBe(false);
	});

	it('does not accept a day that is none', () => {
		expect(() => isSeasonTold(['2024-01-15', '2024-02-30'])).toThrow(RangeError);
	});

	it('does not hang on the order of the checks, and once told stays told', () => {
		const day = fc
			.date({min: new Date('2020-01-01'), max: new Date('2027-12-31'), noInvalidDate: true})
			.map((date) => date.toISOString().slice(0, 10));
		fc.assert(
			fc.property(fc.array(day, {maxLength: 8}), day, (dates, more) => {
				const told = isSeasonTold(dates);
				expect(isSeasonTold(dates.toReversed())).toBe(told);
				if (told) expect(isSeasonTold([...dates, more])).toBe(true);
			}),
		);
	});
});
