import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {pullByTurningPct, uncheckedZeroPct, zeroByTurningPct} from '../../source/measures/hold-band.js';

const middles = fc.array(fc.double({min: -15, max: 15, noNaN: true}), {minLength: 1, maxLength: 6});

describe('a gauge turned end for end', () => {
	it('shows its zero in half the sum and the pull in half the difference, as a level by reversal', () => {
		// Pull 3, zero 0.25: 3.25 one way, −2.75 the other.
		expect(zeroByTurningPct([3.25], [-2.75])).toBeCloseTo(0.25, 12);
		expect(pullByTurningPct([3.25], [-2.75])).toBeCloseTo(3, 12);
	});

	it('of the worked example has a zero of 0.125 % and finds a pull of 5.375 %', () => {
		// Middles 5.75, 5.5 and 5.25 as used, −5.25 turned.
		expect(zeroByTurningPct([5.75, 5.5, 5.25], [-5.25])).toBeCloseTo(0.125, 12);
		expect(pullByTurningPct([5.75, 5.5, 5.25], [-5.25])).toBeCloseTo(5.375, 12);
	});

	it('is told from the pull, whatever both are', () => {
		fc.assert(
			fc.property(middles, middles, fc.double({min: -5, max: 5, noNaN: true}), (used, turned, by) => {
				const shifted = (some: readonly number[], offset: number) => some.map((one) => one + offset);
				const [zero, pull] = [zeroByTurningPct(used, turned), pullByTurningPct(used, turned)];
				// A zero that moves shows alike both ways; a pull that moves shows with the other sign when turned.
				expect(zeroByTurningPct(shifted(used, by), shifted(turned, by))).toBeCloseTo(zero + by, 9);
				expect(pullByTurningPct(shifted(used, by), shifted(turned, by))).toBeCloseTo(pull, 9);
				expect(zeroByTurningPct(shifted(used, by), shifted(turned, -by))).toBeCloseTo(zero, 9);
				expect(pullByTurningPct(shifted(used, by), shifted(turned, -by))).toBeCloseTo(pull + by, 9);
			}),
		);
	});
});

describe('a zero that nobody looked at', () => {
	it('may be a step off either way, all alike likely (JCGM 100:2008 4.3.7: a/√3)', () => {
		// Example 2 of 4.3.7: 15 µV make 8.7 µV, printed to one decimal.
		expect(Math.abs(uncheckedZeroPct(15) - 8.7)).toBeLessThanOrEqual(0.05);
	});

	it('is half a percent off at least', () => {
		expect(uncheckedZeroPct(0.1)).toBeCloseTo(0.5 / Math.sqrt(3), 12);
		expect(uncheckedZeroPct(0.5)).toBeCloseTo(0.5 / Math.sqrt(3), 12);
		expect(uncheckedZeroPct(0.6)).toBeCloseTo(0.6 / Math.sqrt(3), 12);
	});
});
