import {describe, expect, it} from 'vitest';
import {clearancePasses, guardIsClear, guardWindowMm, stylusWindowMm} from '../../source/measures/clearance.js';

// Common practice, no source: 2 to 3 mm between stylus and surface.
describe('clearance', () => {
	it('is 2 to 3 mm, and as much more as the mat that was taken off', () => {
		expect(stylusWindowMm(0)).toEqual([2, 3]);
		expect(stylusWindowMm(1.5)).toEqual([3.5, 4.5]);
	});

	it("is the same window less the guard's depth at its underside, even below the surface", () => {
		expect(guardWindowMm([2, 3], 2.5)).toEqual([-0.5, 0.5]);
	});

	it('keeps the guard more than half a millimetre off the surface', () => {
		expect(guardIsClear(2.5, 2)).toBe(false);
		expect(guardIsClear(2.51, 2)).toBe(true);
		// 1.3 − 0.8 is a hair above 0.5 in binary, and still counts as 0.5.
		expect(guardIsClear(1.3, 0.8)).toBe(false);
	});

	it('passes inside the window, its ends included, with a guard that is clear or not there', () => {
		const passes = (stylusMm: number, guardDepthMm?: number) => clearancePasses(stylusMm, [2, 3], guardDepthMm);
		expect([1.99, 2, 3, 3.01].map((stylusMm) => passes(stylusMm))).toEqual([false, true, true, false]);
		expect([passes(2.5, 2), passes(2.5, 1.9), passes(3.1, 1)]).toEqual([false, true, false]);
	});

	it('of the worked example passes: 5.6 mm with a mat of 3 mm off and a guard 1.3 mm deep', () => {
		expect(stylusWindowMm(3)).toEqual([5, 6]);
		const [low, high] = guardWindowMm([5, 6], 1.3);
		expect(low).toBeCloseTo(3.7, 12);
		expect(high).toBeCloseTo(4.7, 12);
		expect(clearancePasses(5.6, [5, 6], 1.3)).toBe(true);
	});
});
