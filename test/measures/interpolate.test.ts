import {describe, expect, it} from 'vitest';
import {interpolated} from '../../source/measures/bias-fit.js';

describe('a line from point to point', () => {
	// Out of order, as readings come: 10 at 1, 20 at 3, 0 at 4.
	const points = [
		{x: 3, y: 20},
		{x: 4, y: 0},
		{x: 1, y: 10},
	];

	it.each([
		[1, 10],
		[1.5, 12.5],
		[2, 15],
		[3, 20],
		[3.25, 15],
		[4, 0],
	])('is at %d as high as by plain proportion: %d', (x, y) => {
		expect(interpolated(points, x)).toBeCloseTo(y, 12);
	});

	it('is level outside them', () => {
		expect([interpolated(points, -7), interpolated(points, 99)]).toEqual([10, 0]);
		expect([0, 5, 9].map((x) => interpolated([{x: 5, y: 3}], x))).toEqual([3, 3, 3]);
	});

	it('is one of both where two stand at one place', () => {
		expect([6, 8]).toContain(
			interpolated(
				[
					{x: 2, y: 6},
					{x: 2, y: 8},
				],
				2,
			),
		);
	});

	it('is nowhere without points', () => {
		expect(interpolated([], 1)).toBeNaN();
	});
});
