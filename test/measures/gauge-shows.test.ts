import {describe, expect, it} from 'vitest';
import {gaugeShows, halfSpanRead, toStep} from '../../source/measures/hold-band.js';

describe('what a gauge shows', () => {
	it('is the force over what a unit stands for, with its zero: 15.39/1.14 = 13.5, and 0.3 more', () => {
		expect(gaugeShows(15.39, {factor: 1.14, zero: 0.3})).toBeCloseTo(13.8, 12);
		expect(gaugeShows(-3.42, {factor: 1.14, zero: 0.3})).toBeCloseTo(-2.7, 12);
	});

	it('of the worked example is 13.4324 where 13.3074 % are aimed at', () => {
		expect(gaugeShows(13.3074, {factor: 1, zero: 0.125})).toBeCloseTo(13.4324, 12);
	});

	it('spans half of what the rounds read to either side: 4 and 3.6 make 1.9', () => {
		expect(
			halfSpanRead([
				{innerLimit: 7, outerLimit: 11},
				{innerLimit: 7.2, outerLimit: 10.8},
			]),
		).toBeCloseTo(1.9, 12);
	});

	it('is the nearest reading that its step has, without dust', () => {
		expect([13.8, 13.7, -13.8, 13.24].map((reading) => toStep(reading, 0.5))).toEqual([14, 13.5, -14, 13]);
		expect([toStep(0.31, 0.1), toStep(13.79, 0.1)]).toEqual([0.3, 13.8]);
		expect(toStep(2.218, 0.05)).toBe(2.2);
	});
});
