import {describe, expect, it} from 'vitest';
import {isAbove, isAtLeast, isAtMost, isBelow, isWithin} from '../../source/measures/compare.js';

// Nearer than 1e-9 counts as equal: well below, a hair below, at it, a hair above, well above.
const around = [0.3 - 1e-8, 0.3 - 1e-10, 0.3, 0.1 + 0.2, 0.3 + 1e-10, 0.3 + 1e-8];

describe('a limit', () => {
	it.each([
		['above', isAbove, [false, false, false, false, false, true]],
		['below', isBelow, [true, false, false, false, false, false]],
		['at or below', isAtMost, [true, true, true, true, true, false]],
		['at or above', isAtLeast, [false, true, true, true, true, true]],
	] as const)('has values %s it, binary fractions aside', (_what, holds, expected) => {
		expect(around.map((value) => holds(value, 0.3))).toEqual(expected);
	});

	it('is part of the window that it ends', () => {
		expect(around.map((value) => isWithin(value, [0.3, 1]))).toEqual([false, true, true, true, true, true]);
		expect(around.map((value) => isWithin(value, [0, 0.3]))).toEqual([true, true, true, true, true, false]);
	});

	it('has values at 1e-9 from it on it still', () => {
		expect([isAbove(1e-9, 0), isBelow(-1e-9, 0), isAtMost(1e-9, 0), isAtLeast(-1e-9, 0)]).toEqual([
			false,
			false,
			true,
			true,
		]);
	});
});
