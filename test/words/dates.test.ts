import {describe, expect, it} from 'vitest';
import {dayText, monthText, timeText} from '../../source/words/dates.js';

describe('A date in print', () => {
	it('has day, month by three letters and year, in any zone', () => {
		expect(dayText('2026-05-04')).toBe('4 May 2026');
		const first = Array.from({length: 12}, (_, index) => dayText(`2026-${String(index + 1).padStart(2, '0')}-01`));
		expect(first.join(', ')).toBe(
			'1 Jan 2026, 1 Feb 2026, 1 Mar 2026, 1 Apr 2026, 1 May 2026, 1 Jun 2026, 1 Jul 2026, 1 Aug 2026, 1 Sep 2026, 1 Oct 2026, 1 Nov 2026, 1 Dec 2026',
		);
		expect(dayText('2024-02-29')).toBe('29 Feb 2024');
		expect([monthText('2026-09-01'), monthText('2026-9-1')]).toEqual(['Sep 2026', 'Sep 2026']);
	});
});

describe('A time in print', () => {
	it('is the one on the wall, with the day where it is not today', () => {
		const saved = new Date(2026, 10, 5, 4, 2);
		expect(timeText(saved, new Date(2026, 10, 5, 23, 59))).toBe('04:02');
		expect(timeText(saved, new Date(2026, 10, 6, 0, 1))).toBe('2026-11-05 04:02');
		expect(timeText(new Date(2026, 0, 1, 0, 0), new Date(2026, 0, 1, 9, 0))).toBe('00:00');
	});
});
