import {describe, expect, it} from 'vitest';
import {type BiasMechanism, biasTorqueMicroNm, turnedAngleDeg} from '../../source/practice/bias-torque.js';

const at = (kind: 'weighted-lever' | 'weight-on-thread', deg: number): BiasMechanism => ({
	kind,
	fullMicroNm: 400,
	angle: {atSwingDeg: 30, deg, degPerDeg: 2},
});

describe('a bias device', () => {
	it.each([
		["9 o'clock", 270, 1],
		["7 o'clock", 210, 0.5],
		["5 o'clock", 150, 0.5],
		['half past eight', 255, 0.965926],
		['a quarter past seven', 217.5, 0.608761],
		["12 o'clock", 0, 0],
		["6 o'clock", 180, 0],
	])('with a weighted lever at %s lets its share of the weight act', (_clock, deg, share) => {
		// Moment of a hanging weight by the sine of its lever from the vertical: OpenStax University Physics vol. 1, 15.4. The
		// sines of 75° and 37.5° are (√6 + √2)/4 and √((1 − cos 75°)/2); half a unit of their last digit.
		expect(Math.abs(biasTorqueMicroNm(at('weighted-lever', deg), 30) / 400 - share)).toBeLessThan(5e-7);
	});

	it('with a weight on a thread acts by the angle between thread and stub', () => {
		// 20 N at 0.5 m and 150° are 5.0 N·m: OpenStax University Physics vol. 1, 10.6, Example 10.15.
		const {angle} = at('weight-on-thread', 150) as Extract<BiasMechanism, {kind: 'weight-on-thread'}>;
		expect(biasTorqueMicroNm({kind: 'weight-on-thread', fullMicroNm: 10, angle}, 30)).toBeCloseTo(5, 9);
	});

	it('turns its lever with the arm', () => {
		expect(turnedAngleDeg({atSwingDeg: 30, deg: 90, degPerDeg: 2}, 15)).toBe(60);
	});

	it('with a spring slackens in proportion, and never pulls backward', () => {
		const spring: BiasMechanism = {kind: 'spring', atRestMicroNm: 100, slackeningMicroNmPerDeg: 4};
		expect([0, 10, 20, 40].map((swing) => biasTorqueMicroNm(spring, swing))).toEqual([100, 60, 20, 0]);
	});

	it('with magnets has half its force at the swing that is named, and a quarter where the gap is twice as wide', () => {
		const magnet: BiasMechanism = {kind: 'magnet', atRestMicroNm: 100, halfwayDeg: 20};
		expect(biasTorqueMicroNm(magnet, 20)).toBeCloseTo(50, 9);
		// By the square of the gap, as it is defined here: (1 + x)² = 4 at x = 1, which is 20/(√2 − 1) degrees.
		expect(biasTorqueMicroNm(magnet, 20 / (Math.SQRT2 - 1))).toBeCloseTo(25, 9);
	});
});
