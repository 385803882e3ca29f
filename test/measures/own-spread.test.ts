import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import examples from '../../shared/check-values/uncertainty-examples.json' with {type: 'json'};
import {ownSpreadMn} from '../../source/measures/own-spread.js';

const forces = fc.array(fc.double({min: -5, max: 5, noNaN: true}), {minLength: 4, maxLength: 12});

describe("an arm's own spread", () => {
	it('is, for the ten days of JCGM 100:2008 H.5, the spread of the daily means', () => {
		// Printed without decimals: half a digit.
		const {dailyMeans, sd} = examples.betweenDays;
		expect(Math.abs((ownSpreadMn(dailyMeans) ?? 0) - sd)).toBeLessThanOrEqual(0.5);
	});

	it('is unknown below four checks', () => {
		expect(ownSpreadMn([])).toBeUndefined();
		expect(ownSpreadMn([1, 2, 3])).toBeUndefined();
		// By hand: deviations ±1 and ±3 give 20/3.
		expect(ownSpreadMn([1, 3, 5, 7])).toBeCloseTo(Math.sqrt(20 / 3), 12);
	});

	it('is zero where all checks agree', () => {
		expect(ownSpreadMn([0.1 + 0.2, 0.3, 0.3, 0.3])).toBe(0);
	});

	it('is the same for pulls that are shifted or turned round, and scales with them', () => {
		fc.assert(
			fc.property(forces, fc.double({min: -5, max: 5, noNaN: true}), (values, byMn) => {
				const before = ownSpreadMn(values) ?? Number.NaN;
				// Nine digits: shifting rounds, and a spread below 1e-9 is taken as none.
				expect(ownSpreadMn(values.map((one) => one + byMn))).toBeCloseTo(before, 8);
				expect(ownSpreadMn(values.map((one) => -one))).toBeCloseTo(before, 8);
				expect(ownSpreadMn(values.map((one) => one * byMn))).toBeCloseTo(before * Math.abs(byMn), 7);
			}),
		);
	});
});
