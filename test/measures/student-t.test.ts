import fc from 'fast-check';
import {jStat} from 'jstat';
import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/student-t.json' with {type: 'json'};
import examples from '../../shared/check-values/uncertainty-examples.json' with {type: 'json'};
import {rootSumSquares} from '../../source/measures/statistics.js';
import {coverageFactor, coverageFactor99, effectiveDegreesOfFreedom} from '../../source/measures/student-t.js';

describe('the coverage factor', () => {
	it.each(published.printed)('is the printed one at $degreesOfFreedom degrees of freedom', (row) => {
		expect(Math.abs(coverageFactor(row.degreesOfFreedom) - row.t95)).toBeLessThanOrEqual(row.halfDigit);
	});

	it.each(published.fourDigits)('has four right digits at $degreesOfFreedom degrees of freedom', (row) => {
		expect(Math.abs(coverageFactor(row.degreesOfFreedom) - row.t95)).toBeLessThanOrEqual(5e-5);
	});

	it('is the normal one for infinite degrees of freedom', () => {
		expect(Math.abs(coverageFactor(Number.POSITIVE_INFINITY) - published.infinite)).toBeLessThan(0.0005);
	});

	it('agrees with a second library between whole degrees of freedom', () => {
		fc.assert(
			fc.property(fc.double({min: 0.5, max: 1e5, noNaN: true}), (degreesOfFreedom) => {
				// The second library is off in the eighth digit.
				const second = jStat.studentt.inv(0.975, degreesOfFreedom);
				expect(Math.abs(coverageFactor(degreesOfFreedom) / second - 1)).toBeLessThan(1e-6);
			}),
		);
	});

	it('meets the normal one where degrees of freedom are taken as infinite', () => {
		// The step at a million must stay below the sixth digit.
		expect(Math.abs(coverageFactor(1e6) - coverageFactor(Number.POSITIVE_INFINITY))).toBeLessThan(5e-6);
	});
});

describe('the coverage factor for 99 %', () => {
	// JCGM 100:2008 table G.2, printed to two decimals, and to three at 100.
	it.each([
		[1, 63.66, 0.005],
		[2, 9.92, 0.005],
		[3, 5.84, 0.005],
		[4, 4.6, 0.005],
		[5, 4.03, 0.005],
		[10, 3.17, 0.005],
		[16, 2.92, 0.005],
		[100, 2.626, 0.0005],
	])('is the printed one at %d degrees of freedom', (degreesOfFreedom, t99, halfDigit) => {
		expect(Math.abs(coverageFactor99(degreesOfFreedom) - t99)).toBeLessThanOrEqual(halfDigit);
	});
});

describe('the effective degrees of freedom', () => {
	it.each(examples.welchSatterthwaite)('are those of JCGM 100:2008 $clause', (example) => {
		const parts = example.parts.map(([uncertainty = 0, degreesOfFreedom = 0]) => ({uncertainty, degreesOfFreedom}));
		const combined = rootSumSquares(...parts.map(({uncertainty}) => uncertainty));
		expect(Math.abs(combined - example.combined)).toBeLessThanOrEqual(example.combinedTolerance);
		const effective = effectiveDegreesOfFreedom(parts);
		expect(Math.abs(effective - example.effective)).toBeLessThanOrEqual(example.effectiveTolerance);
	});

	it('give the U95 of 2.2 % of JCGM 100:2008 G.4.1', () => {
		// Printed to one decimal: half a digit.
		expect(Math.abs(1.03 * coverageFactor(19) - 2.2)).toBeLessThanOrEqual(0.05);
	});

	it('are infinite where nothing was repeated, and above a million', () => {
		expect(effectiveDegreesOfFreedom([{uncertainty: 1, degreesOfFreedom: 1e6}])).toBeCloseTo(1e6, 3);
		const steady = {uncertainty: 1, degreesOfFreedom: Number.POSITIVE_INFINITY};
		expect(effectiveDegreesOfFreedom([{uncertainty: 0, degreesOfFreedom: 4}, steady])).toBe(Number.POSITIVE_INFINITY);
		expect(effectiveDegreesOfFreedom([{uncertainty: 0.01, degreesOfFreedom: 4}, steady])).toBe(
			Number.POSITIVE_INFINITY,
		);
	});
});
