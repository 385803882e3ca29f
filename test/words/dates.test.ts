import {describe, expect, it} from 'vitest';
import {dayText, monthText} from '../../source/words/dates.js';

describe('A date in print', () => {
	it('has the names of months that Intl has (Unicode CLDR, plain English)', () => {
		const names = new Intl.DateTimeFormat('en', {month: 'short', timeZone: 'UTC'});
		for (let month = 1; month <= 12; month++)
			expect(monthText(`2026-${month}-01`)).toBe(`${names.format(Date.UTC(2026, month - 1, 1))} 2026`);
	});

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
