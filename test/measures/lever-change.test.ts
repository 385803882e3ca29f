import {describe, expect, it} from 'vitest';
import {leastExplained, unexplainedPct} from '../../source/measures/lever-fit.js';

const biasOf = (...pcts: readonly number[]) => pcts.map((pct, index) => ({radiusMm: [136, 98, 68][index] ?? 0, pct}));
const unexplained = (pcts: readonly number[], anglesDeg: readonly number[]) => {
	const change = leastExplained(biasOf(...pcts), anglesDeg);
	return change && unexplainedPct(change);
};

// All at 3 and 9 o'clock, half at 1 (sine of 30°; OpenStax University Physics vol. 1, 15.4: torque −L·m·g·sin θ).
// Sums of a few doubles: twelve digits.
describe('The bias that a lever explains', () => {
	it('is all of it where the bias goes with the sine of its angle', () => {
		expect(unexplained([10, 5], [90, 30])).toBeCloseTo(0, 12);
		expect(unexplained([10, 5], [270, 330])).toBeCloseTo(0, 12);
		expect(unexplained([10, 10 * Math.SQRT1_2, 5], [90, 45, 30])).toBeCloseTo(0, 12);
	});

	it('is not the whole where the bias stays and the lever does not', () => {
		// Scale (6 + 3)/1.25 = 7.2: the lever would take 3.6 off, the readings take nothing.
		const change = leastExplained(biasOf(6, 6), [90, 30]);
		expect(change).toMatchObject({fromMm: 136, toMm: 98, measuredPct: 0});
		expect(change?.expectedPct).toBeCloseTo(-3.6, 12);
	});

	it('is looked at between the two radii where it fits least', () => {
		expect(leastExplained(biasOf(10, 10, 5), [90, 90, 90])).toMatchObject({measuredPct: -5});
		expect(leastExplained(biasOf(10, 2, 5), [90, 90, 90])).toMatchObject({fromMm: 136, toMm: 98});
	});

	it('is left open by reading the angle, most where the lever stands steep, not at all at 3 o’clock', () => {
		expect(leastExplained(biasOf(10, 10), [90, 90])?.openPct).toBeCloseTo(0, 12);
		// sin 35° − sin 30° is 0.0736 by the tables, cos 30° × 5° in radians 0.0756: of 10 %, a fiftieth of a percent apart.
		expect(leastExplained(biasOf(10, 5), [90, 30])?.openPct).toBeCloseTo(0.75, 1);
	});

	it('cannot be told of one radius, without an angle for each, or where nothing of the weight acts', () => {
		expect(leastExplained(biasOf(10), [90])).toBeUndefined();
		expect(leastExplained(biasOf(10, 5), [90])).toBeUndefined();
		expect(leastExplained(biasOf(10, 5), [0, 180])).toBeUndefined();
	});
});
