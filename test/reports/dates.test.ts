import {describe, expect, it} from 'vitest';
import {dateTicks, dayNumber} from '../../source/pages/pictures/date-ticks.js';

// The calendar is the outside truth: 1970-01-01 is day 0, 2024 a leap year.
describe('Days under a picture', () => {
	it.each([
		['1970-01-01', 0],
		['1970-12-31', 364],
		['2024-03-01', 19783],
	])('%s is day %i', (date, day) => {
		expect(dayNumber(date)).toBe(day);
	});

	it.each([
		['2026-05-01', '2026-05-20', ['1 May 2026', '20 May 2026']],
		['2026-01-15', '2026-05-20', ['Feb 2026', 'Mar 2026', 'Apr 2026', 'May 2026']],
		['2024-05-11', '2026-05-16', ['Jul 2024', 'Jan 2025', 'Jul 2025', 'Jan 2026']],
		['2024-05-11', '2026-11-14', ['2025', '2026']],
		['2010-05-11', '2026-05-16', ['2015', '2020', '2025']],
	])('from %s to %s are few round ones', (first, last, texts) => {
		const ticks = dateTicks([first, last], dayNumber(first), dayNumber(last));
		expect(ticks.map(({text}) => text)).toEqual(texts);
	});
});
