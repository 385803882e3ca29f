import {describe, expect, it} from 'vitest';
import {dayText, monthText} from '../../source/words/dates.js';
import {listed, percent, plural, span, withSign} from '../../source/words/numbers.js';

// Truth: Intl, which has the habits of German from the Unicode CLDR.
describe('In German', () => {
	it.each([0, 1.5, -0.25, 12.345, 1234.5])('the number %d has the decimal comma that Intl writes', (value) => {
		const digits = {minimumFractionDigits: 2, maximumFractionDigits: 2, useGrouping: false};
		const format = new Intl.NumberFormat('de-DE', {...digits, signDisplay: 'exceptZero'});
		expect(withSign(value, 2)).toBe(format.format(value.toFixed(2) as `${number}`));
	});

	it('figures stand with their unit and what is not sure of them', () => {
		expect([percent(6.75, 1), span(6.2, 0.7)]).toEqual(['6,8 %', '6,2 % ± 0,7 %']);
	});

	it('days and months are what Intl writes', () => {
		const days = new Intl.DateTimeFormat('de-DE', {day: '2-digit', month: '2-digit', year: 'numeric', timeZone: 'UTC'});
		const months = new Intl.DateTimeFormat('de-DE', {month: 'short', year: 'numeric', timeZone: 'UTC'});
		for (let month = 1; month <= 12; month++) {
			const at = Date.UTC(2026, month - 1, 9);
			const date = `2026-${month}-9`;
			expect([dayText(date), monthText(date)]).toEqual([days.format(at), months.format(at)]);
		}
	});

	it('lists and plurals are those of Intl', () => {
		const parts = ['a', 'b', 'c'];
		expect(listed(parts)).toBe(new Intl.ListFormat('de-DE').format(parts));
		expect([0, 1, 2].map((count) => plural(count, {one: 'Runde', other: 'Runden'}))).toEqual([
			'Runden',
			'Runde',
			'Runden',
		]);
	});
});
