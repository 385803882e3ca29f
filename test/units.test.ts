import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {readNumber} from '../source/procedure/read-number.js';
import {findUnit, formatIn, fromBase, labelsOf, toBase, type UnitId, unitIds, units} from '../source/units.js';

/** One literal for each unit, so that a wrong constant cannot agree with itself. */
const anchors: Readonly<Record<UnitId, readonly [entered: number, base: number, source: string]>> = {
	mm: [1, 1, 'base unit of lengths here'],
	cm: [2, 20, 'SI Brochure, prefix centi: 1 cm = 10 mm'],
	in: [1, 25.4, '1959 agreement; NIST SP 811 (2008) app. B.8: 1 in = 25.4 mm'],
	mN: [1, 1, 'base unit of forces here'],
	gf: [2, 19.6133, 'NIST SP 811 (2008) app. B.8: 1 kgf = 9.80665 N, so 1 gf = 9.80665 mN'],
	g: [1, 1, 'base unit of masses here'],
	mg: [500, 0.5, 'SI Brochure, prefix milli'],
	deg: [1, 1, 'base unit of angles here'],
	arcmin: [30, 0.5, 'SI Brochure table 8: 1′ = (1/60)°'],
	mmPerM: [10, 0.5729577951308232, 'small-angle rule: 10 mm/m = 0.01 rad, 1 rad = 180/π degrees'],
	celsius: [1, 1, 'base unit of temperatures here'],
	fahrenheit: [212, 100, 'NIST SP 811 (2008) app. B.8: t/°C = (t/°F − 32)/1.8; water boils at 212 °F'],
	percent: [1, 1, 'base unit of shares here'],
	umPerMn: [15, 15, 'by dimension: 1e-6 cm/dyn = 1e-8 m / 1e-5 N = 1 mm/N = 1 µm/mN'],
	ofForce: [0.3, 0.3, 'a ratio of two forces has no unit'],
	s: [1, 1, 'base unit of times here'],
};

// Exact by definition; twelve digits leave room for binary fractions only.
const exact = (value: number) => expect.closeTo(value, 11);

describe('Units', () => {
	it.each(Object.entries(anchors).map(([id, anchor]) => [id, ...anchor] as const))(
		'%s: %d makes %d (%s)',
		(id, entered, base) => {
			const unit = unitIds.find((one) => one === id);
			expect(unit && toBase(entered, unit)).toEqual(exact(base));
		},
	);

	it('turn the freezing point too: 32 °F is 0 °C', () => {
		expect(toBase(32, 'fahrenheit')).toEqual(exact(0));
	});

	it('come back as they went in', () => {
		fc.assert(
			fc.property(fc.constantFrom(...unitIds), fc.double({min: -1e6, max: 1e6, noNaN: true}), (id, entered) => {
				// Two roundings of a double, and one more where an offset is taken off again.
				expect(Math.abs(fromBase(toBase(entered, id), id) - entered)).toBeLessThan(
					1e-9 * Math.max(1, Math.abs(entered)),
				);
			}),
		);
	});

	const spellings = unitIds.flatMap((id) =>
		[id, units[id].label, ...units[id].also].map((name) => [name, id] as const),
	);

	it.each(spellings)("'%s' is found as %s", (name, id) => {
		expect(findUnit(name, units[id].of)).toBe(id);
		expect(findUnit(` ${name.toUpperCase()} `, units[id].of)).toBe(id);
	});

	it.each(spellings)("'12 %s' is read as a number in %s", (name, id) => {
		expect(readNumber(`12 ${name}`, units[id].of, id)).toMatchObject({ok: true, unit: id, entered: 12});
	});

	it('are looked for in their own quantity only', () => {
		expect(findUnit('g', 'force')).toBe('gf');
		expect(findUnit('g', 'mass')).toBe('g');
		expect(findUnit('mm', 'force')).toBeUndefined();
		expect(findUnit('', 'length')).toBeUndefined();
	});

	it('say which ones there are', () => {
		expect(labelsOf('force')).toEqual(['mN', 'g']);
	});

	// The sheet says 15·10⁻⁶ cm/dyn; a plain keyboard has no raised digits.
	it.each([
		'15e-6 cm/dyn',
		'15 ×10⁻⁶ cm/dyn',
		'15 x 10^-6 cm/dyn',
		'15·10^-6 cm/dyn',
		'15*10-6 cm/dyn',
		'15 µm/mN',
		'15 um/mN',
		'15 mm/N',
	])('take a compliance from a data sheet as it stands there: %s', (typed) => {
		expect(readNumber(typed, 'compliance', 'umPerMn')).toMatchObject({ok: true, value: 15});
	});
});

describe('A value in print', () => {
	it.each([
		[17.65197, 'gf', '1.8 g'],
		[18, 'mN', '18 mN'],
		[18.256, 'mN', '18.26 mN'],
		[0.5, 'deg', '0.5°'],
		[0.5, 'arcmin', '30′'],
		[-0.0001, 'deg', '0°'],
		[100, 'mm', '100 mm'],
		[20, 'fahrenheit', '68 °F'],
	] as const)('%d in %s is %s', (value, id, text) => {
		expect(formatIn(value, id)).toBe(text);
	});
});
