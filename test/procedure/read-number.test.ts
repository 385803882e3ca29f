import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {readNumber} from '../../source/procedure/read-number.js';
import {unitIds, units} from '../../source/units.js';
import {inQuotes} from '../../source/words/en/refusals.js';
import {refusalText} from '../../source/words/step-text.js';
import {words} from '../helpers/said.js';

describe('A number', () => {
	it.each([
		['4', 4],
		['4.5', 4.5],
		['4,5', 4.5],
		['.5', 0.5],
		['.25', 0.25],
		[',5', 0.5],
		['4.', 4],
		['+4', 4],
		['-3', -3],
		['\u22123', -3],
		['\u20133', -3],
		['\uFF0D3', -3],
		['４．５', 4.5],
		['  4.5\t', 4.5],
		['\u00A04\u3000', 4],
		['4 %', 4],
		['4%', 4],
		['４％', 4],
		['-0', 0],
		['007', 7],
		['1,234', 1.234],
	])("written '%s' is %d", (typed, value) => {
		expect(readNumber(typed, 'percent', 'percent')).toMatchObject({ok: true, value});
	});

	it.each([
		['1.8 g', 17.65197],
		['1,8g', 17.65197],
		['1.8 grams', 17.65197],
		['21 mN', 21],
		['21MN', 21],
		['21', 21],
	])("of force written '%s' is %d mN", (typed, value) => {
		// 1.8 × 9.80665 mN (NIST SP 811 app. B.8), exact but for binary fractions.
		expect(readNumber(typed, 'force', 'mN')).toMatchObject({ok: true, value: expect.closeTo(value, 9)});
	});

	it.each([
		['0.7 in', 17.78],
		['0.7"', 17.78],
		['1.8 cm', 18],
	])("of length written '%s' is %d mm", (typed, value) => {
		expect(readNumber(typed, 'length', 'mm')).toMatchObject({ok: true, value: expect.closeTo(value, 9)});
	});

	it('is never a negative zero', () => {
		const read = readNumber('-0', 'percent', 'percent');
		expect(read.ok && Object.is(read.value, 0)).toBe(true);
	});

	it('tells whether a sign stood before it', () => {
		expect(readNumber('+4', 'percent', 'percent')).toMatchObject({signed: true});
		expect(readNumber('4', 'percent', 'percent')).toMatchObject({signed: false});
	});
});

describe('What is no number', () => {
	it.each([
		'',
		'   ',
		'+',
		'-',
		'.',
		'1.2.3',
		'1,234.5',
		'1.234,5',
		'1 234',
		'1e400',
		'1e3',
		'0x10',
		'NaN',
		'Infinity',
		'--4',
		'4-5',
		'4±1',
		'2²',
		'4½',
		'½',
		'④',
		'٤',
		'9'.repeat(400),
		`0.${'0'.repeat(400)}1`,
		'-3 out',
		'4 mm',
		'4 °C',
		'👍',
		'4 👍',
		'\u0000',
		'4\u001B[31m',
		'4\n5',
		'four',
	])("'%s' is refused in one sentence with an example", (typed) => {
		const read = readNumber(typed, 'percent', 'percent');
		if (read.ok) throw new Error('it is no number');
		const example = read.refusal.id === 'unit-not-known' ? / %\.$/ : / 4\.5 %\.$/;
		expect(refusalText(read.refusal)).toMatch(/^[A-Z']/);
		expect(refusalText(read.refusal)).toMatch(example);
	});

	it('is quoted as it was typed, cut after twenty letters', () => {
		expect(inQuotes('  four  ')).toBe("'four'");
		expect(inQuotes('x'.repeat(20))).toBe(`'${'x'.repeat(20)}'`);
		expect(inQuotes('x'.repeat(21))).toBe(`'${'x'.repeat(20)}…'`);
	});

	it('has at most fifteen digits, as many as a double keeps', () => {
		// IEEE 754 binary64: DBL_DIG = 15 (C standard, float.h).
		expect(readNumber('9'.repeat(15), 'percent', 'percent')).toMatchObject({ok: true, value: 999_999_999_999_999});
		expect(readNumber('9'.repeat(16), 'percent', 'percent')).toMatchObject({ok: false});
	});

	it('says what is wrong: nothing typed, no number, two decimal marks, another unit', () => {
		const refusal = (typed: string) => {
			const read = readNumber(typed, 'percent', 'percent');
			return read.ok ? undefined : read.refusal;
		};
		expect(refusal(' ')).toEqual({id: 'no-number-typed', values: {typed: ' ', unit: 'percent'}});
		expect(refusal('four')).toEqual({id: 'not-a-number', values: {typed: 'four', unit: 'percent'}});
		expect(refusal('1.2.3')).toEqual({id: 'more-than-one-mark', values: {typed: '1.2.3', unit: 'percent'}});
		expect(refusal('4 %2')).toEqual({id: 'unit-not-known', values: {tail: '%2', quantity: 'percent'}});
	});

	it.each([
		['gf', '1.8 g'],
		['mN', '18 mN'],
		['g', '0.5 g'],
		['mm', '12.5 mm'],
	] as const)('is shown an example in the unit wanted: %s', (unit, example) => {
		const read = readNumber('', units[unit].of, unit);
		expect(read.ok ? '' : refusalText(read.refusal)).toContain(` ${example}.`);
	});

	it('is quoted no longer than a screen can bear', () => {
		for (const typed of ['x'.repeat(5000), `4 ${'x'.repeat(5000)}`, '9'.repeat(5000), `1.2.${'3'.repeat(5000)}`]) {
			const read = readNumber(typed, 'percent', 'percent');
			if (read.ok) throw new Error('it is no number');
			const {id, values} = read.refusal;
			const said = words.refusals[id] as (values: object) => string;
			// At most twenty letters of it, and a mark that there were more.
			expect(said(values)).toContain('…');
			expect(said(values).length - said({...values, typed: '', tail: ''}).length).toBeLessThanOrEqual(21);
		}
	});
});

describe('Any text at all', () => {
	const text = fc.oneof(
		fc.string({unit: 'binary'}),
		fc.string({unit: fc.constantFrom(...'0123456789.,+-−eE xXgmNin%°²½４')}),
		fc.tuple(fc.double(), fc.constantFrom(...unitIds)).map(([value, id]) => `${value} ${units[id].label}`),
	);

	it('gives a finite value or a sentence, and never throws', () => {
		fc.assert(
			fc.property(text, fc.constantFrom(...unitIds), (typed, unit) => {
				const read = readNumber(typed, units[unit].of, unit);
				if (read.ok) expect(Number.isFinite(read.value) && Number.isFinite(read.entered)).toBe(true);
				else expect(refusalText(read.refusal)).toMatch(/\.$/);
			}),
			{numRuns: 500},
		);
	});

	it('means the same with a comma as with a point', () => {
		fc.assert(
			fc.property(fc.integer({min: 0, max: 9999}), fc.integer({min: 0, max: 999}), (whole, part) => {
				expect(readNumber(`${whole},${part}`, 'length', 'mm')).toEqual(readNumber(`${whole}.${part}`, 'length', 'mm'));
			}),
		);
	});
});
