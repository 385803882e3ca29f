import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {isSeasonTold} from '../../source/measures/trend.js';

describe('the season', () => {
	// All dates are invented. A quarter is that of the calendar: January to March and so on.
	it.each([
		['three quarters of one year', ['2024-01-15', '2024-06-20', '2024-11-03'], true],
		['all four quarters', ['2024-01-15', '2024-06-20', '2024-08-03', '2025-11-14'], true],
		['two quarters again and again', ['2024-01-15', '2024-07-15', '2025-01-15', '2025-07-15'], false],
		['two quarters over three years', ['2023-03-31', '2023-07-01', '2024-02-29', '2026-09-30'], false],
		['two checks far apart', ['2020-01-01', '2025-07-01'], false],
		['quarters of different years', ['2023-01-10', '2024-04-01', '2025-12-31'], true],
	] as const)('is told or not by %s', (_what, dates, told) => {
		expect(isSeasonTold(dates)).toBe(told);
	});

	it('tells quarters apart at their very ends', () => {
		const withTwoQuarters = (date: string) => isSeasonTold(['2024-01-01', '2025-07-01', date]);
		expect(withTwoQuarters('2024-03-31')).toBe(false);
		expect(withTwoQuarters('2024-04-01')).toBe(true);
		expect(withTwoQuarters('2024-09-30')).toBe(false);
		expect(withTwoQuarters('2024-10-01')).toBe(true);
	});

	it('is not told from one check or none', () => {
		expect(isSeasonTold([])).toBe(false);
		expect(isSeasonTold(['2024-01-15'])).toBe(false);
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
