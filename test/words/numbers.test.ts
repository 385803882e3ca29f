import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {locale} from '#language/locale';
import {
	inUnit,
	listed,
	percent,
	plainNumber,
	plural,
	readingText,
	rounded,
	span,
	withSign,
	withUncertainty,
} from '../../source/words/numbers.js';

// Truth: what JavaScript's own toFixed writes (ECMA-262, Number.prototype.toFixed): the digits of the binary number.
const sizes = fc.oneof(
	fc.double({min: -1e6, max: 1e6, noNaN: true}),
	// What a gauge shows lies in steps: these stand on halves of the last digit.
	fc.integer({min: -2_000_000, max: 2_000_000}).map((steps) => steps / 2000),
	fc.double({min: -0.01, max: 0.01, noNaN: true}),
	fc.constantFrom(0, -0, 0.5, -0.5, 1.005, 1.45, 8.345, 0.0005, -0.0004, 999.9995, 1234567.125),
);
const runs = {numRuns: 20_000};

describe('A number in print', () => {
	it('has the digits of toFixed, a hyphen for a minus, and no minus before a zero', () => {
		fc.assert(
			fc.property(sizes, fc.integer({min: 0, max: 6}), (value, decimals) => {
				const digits = value.toFixed(decimals);
				expect(rounded(value, decimals)).toBe(Number(digits) === 0 ? digits.replace('-', '') : digits);
			}),
			runs,
		);
	});

	it('is what Intl prints in the language in use, whichever way it is printed', () => {
		fc.assert(
			fc.property(sizes, fc.integer({min: 0, max: 6}), (value, decimals) => {
				const digits = {minimumFractionDigits: decimals, maximumFractionDigits: decimals};
				const format = new Intl.NumberFormat(locale.name, {...digits, signDisplay: 'negative', useGrouping: false});
				expect(rounded(value, decimals)).toBe(format.format(value.toFixed(decimals) as `${number}`));
			}),
			{numRuns: 2000},
		);
	});

	it('has no zeros at its end and three decimals at most where it is plain', () => {
		fc.assert(
			fc.property(sizes, (value) => {
				expect(plainNumber(value)).toBe(String(Number(value.toFixed(3))));
			}),
			runs,
		);
	});

	it('has a sign where it is one of a gauge, and none where it prints as zero', () => {
		fc.assert(
			fc.property(sizes, fc.integer({min: 0, max: 4}), (value, decimals) => {
				const size = Math.abs(value).toFixed(decimals);
				const sign = value < 0 ? '-' : '+';
				expect(withSign(value, decimals)).toBe(Number(size) === 0 ? size : `${sign}${size}`);
			}),
			runs,
		);
		expect([withSign(0.25), withSign(-3), withSign(0)]).toEqual(['+0.25', '-3', '0']);
		expect([readingText(1.5, 0.05), readingText(-2, 0.1), readingText(-0.01, 0.1)]).toEqual(['+1.50', '-2.0', '0.0']);
	});

	it('stands with its unit and with what is not sure of it', () => {
		expect(inUnit(17.652, 'gf')).toBe('1.8 g');
		expect(inUnit(-0.4, 'deg', 0)).toBe('0°');
		expect(inUnit(1234.5, 'mm')).toBe('1234.5 mm');
		expect(percent(6.75, 1)).toBe('6.8 %');
		expect(span(6.2, 0.7)).toBe('6.2 % ± 0.7 %');
		expect([withUncertainty(18.4, 1, ' µm'), withUncertainty(1.25, 0.05, '°')]).toEqual([
			'18 µm ± 1 µm',
			'1.25° ± 0.05°',
		]);
	});
});

describe('Several things in one sentence', () => {
	it('are listed as Intl lists them (Unicode CLDR): without a comma before the last', () => {
		const lists = [[], ['a'], ['a', 'b'], ['a', 'b', 'c'], ['a', 'b', 'c', 'd']];
		const format = new Intl.ListFormat(locale.name);
		expect(lists.map(listed)).toEqual(lists.map((parts) => format.format(parts)));
		expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
	});

	it('have the form of a word that goes with their count', () => {
		const forms = {one: 'check', other: 'checks'};
		expect([0, 1, 2].map((count) => plural(count, forms))).toEqual(['checks', 'check', 'checks']);
	});
});
