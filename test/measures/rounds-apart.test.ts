import {describe, expect, it} from 'vitest';
import {roundsApart} from '../../source/measures/hold-band.js';

/** Rounds of any width about these middles. */
const about = (...middles: readonly number[]) =>
	middles.map((middle, index) => ({innerLimit: middle - 1 - index, outerLimit: middle + 1 + index}));

describe('rounds at one radius', () => {
	it('agree within twice step and nudge together (default of this program)', () => {
		expect(roundsApart(about(5, 7), 0.5, 0.5)).toBeUndefined();
		expect(roundsApart(about(5, 7 + 1e-10), 0.5, 0.5)).toBeUndefined();
		expect(roundsApart(about(-5, -5.5, -6), 0.5, 0)).toBeUndefined();
	});

	it('do not agree farther apart, wherever the two stand that are', () => {
		expect(roundsApart(about(5, 7.01), 0.5, 0.5)?.apart).toBeCloseTo(2.01, 12);
		expect(roundsApart(about(7.01, 6, 5), 0.5, 0.5)).toEqual({apart: expect.closeTo(2.01, 12), usual: 2});
		expect(roundsApart(about(-5, -5.5, -6.25), 0.5, 0)).toEqual({apart: 1.25, usual: 1});
	});

	it('agree by their middles, whatever their widths', () => {
		const rounds = [
			{innerLimit: 0, outerLimit: 10},
			{innerLimit: 4, outerLimit: 6},
		];
		expect(roundsApart(rounds, 0.1, 0)).toBeUndefined();
	});
});
