import {describe, expect, it} from 'vitest';
import {slantPct} from '../../source/measures/tilt-share.js';
import {
	type Budget,
	bandBudget,
	bandDifferenceBudget,
	centreReading,
	centreScatter,
	expandedUncertainty,
	isAssumed,
	pullBudget,
	pullDifferenceBudget,
	type Scatter,
	type SeriesKnown as Series,
	settingUpVariance,
	standardUncertaintyPct,
	unseenReading,
	widthReading,
	widthScatter,
	zeroBudget,
} from '../../source/measures/uncertainty.js';

const normal = 1.959963984540054;
const infinite = Number.POSITIVE_INFINITY;

/** Sums of a few doubles: twelve digits. */
const expectBudget = (budget: Budget, scatter: number, common: number, degreesOfFreedom: number): void => {
	expect(budget.scatter).toBeCloseTo(scatter, 12);
	expect(budget.common).toBeCloseTo(common, 12);
	expect(budget.degreesOfFreedom).toBe(degreesOfFreedom);
};

describe('the scatter of rounds', () => {
	it('is pooled over groups of rounds alike (JCGM 100:2008 4.2.4)', () => {
		// By hand: deviations ±1 and ±3 give (2 + 18)/2 = 10.
		const groups = [[1, 3], [5, 11], [7], []];
		expect(centreScatter(groups)).toEqual({sd: Math.sqrt(10), degreesOfFreedom: 2});
		expect(widthScatter(groups)).toEqual({sd: Math.sqrt(10), degreesOfFreedom: 2});
		expect(isAssumed(centreScatter(groups))).toBe(false);
	});

	it('is assumed where no two rounds are alike: 0.3 % for a middle, 0.6 % for a width', () => {
		expect(centreScatter([[5], [-5], [3]])).toEqual({sd: 0.3, degreesOfFreedom: infinite});
		expect(widthScatter([[5], [3]])).toEqual({sd: 0.6, degreesOfFreedom: infinite});
		expect(isAssumed(widthScatter([]))).toBe(true);
	});
});

describe('step and nudge', () => {
	// A limit is good to step/√12 (JCGM 100:2008 F.2.2.1), and to nudge/√12.
	const limit = Math.hypot(0.5, 0.25) / Math.sqrt(12);

	it('leave half the sum of two limits in a middle', () => {
		expect(Math.sqrt(centreReading({stepPct: 0.5, nudgePct: 0.25}))).toBeCloseTo(Math.hypot(limit, limit) / 2, 12);
	});

	it('leave the difference of two limits in a width', () => {
		expect(Math.sqrt(widthReading({stepPct: 0.5, nudgePct: 0.25}))).toBeCloseTo(Math.hypot(limit, limit), 12);
	});

	it('are seen in a scatter as far as it goes, and not at all in one that is assumed', () => {
		const known = (sd: number): Scatter => ({sd, degreesOfFreedom: 4});
		expect(unseenReading(0.02, known(0.1))).toBeCloseTo(0.01, 12);
		expect(unseenReading(0.02, known(0))).toBe(0.02);
		expect(unseenReading(0.02, known(0.2))).toBe(0);
		expect(unseenReading(0.02, {sd: 0.3, degreesOfFreedom: infinite})).toBe(0.02);
	});
});

describe('setting up', () => {
	it('costs 0.3 % unless the gauge is set anew for each round', () => {
		expect(settingUpVariance(false)).toBeCloseTo(0.3 ** 2, 12);
		expect(settingUpVariance(true)).toBe(0);
	});
});

describe('a budget', () => {
	// Variances: a middle 0.16 (4 degrees of freedom), a width 0.36 (5), and what is common to all rounds.
	const series: Series = {
		centres: {sd: 0.4, degreesOfFreedom: 4},
		widths: {sd: 0.6, degreesOfFreedom: 5},
		centreReading: 0.02,
		widthReading: 0.08,
		settingUp: 0.09,
		gainPct: 2,
	};
	// Two percent of 5 % is 0.1 %.
	const gain = 0.1 ** 2;

	it('of a pull with the gauge turned there is that of half a difference of two means (JCGM 100:2008 5.1.2)', () => {
		// 0.16·(1/3 + 1/1)/4 and (0.02 + 0.09)·(1² + 1²)/2².
		expectBudget(pullBudget(5, 3, {kind: 'turned-here', turned: 1}, series), 0.16 / 3, 0.055 + gain, 4);
	});

	it('of a pull with the gauge turned elsewhere holds three means: its own, and half of two', () => {
		// 0.16·(1/2 + (1/3 + 1/1)/4) = 0.16·5/6 and 0.11·(1 + 1/4 + 1/4).
		const budget = pullBudget(5, 2, {kind: 'turned-there', there: {used: 3, turned: 1}}, series);
		expectBudget(budget, (0.16 * 5) / 6, 0.165 + gain, 4);
	});

	it('of a pull with a zero of its own holds that zero', () => {
		expectBudget(pullBudget(-5, 2, {kind: 'apart', variance: 0.03}, series), 0.08, 0.11 + 0.03 + gain, 4);
	});

	it('of the zero is that of half a sum of two means, without any gain', () => {
		// 0.16·(1/2 + 1/3)/4 = 0.16·5/24.
		expectBudget(zeroBudget({used: 2, turned: 3}, series), (0.16 * 5) / 24, 0.055, 4);
	});

	it('of a hold band is free of the zero and of setting up', () => {
		expectBudget(bandBudget(5, 4, series), 0.09, 0.08 + gain, 5);
	});

	it('of the difference of two pulls holds each mean, what is common to each, and the tilt', () => {
		// 0.16·(1/3 + 1/2), 2·0.11, 0.1² of the tilt and (2 % of −5 %)².
		expectBudget(pullDifferenceBudget(-5, [3, 2], 0.1, series), (0.16 * 5) / 6, 0.22 + 0.01 + gain, 4);
	});

	it('of the difference of two bands holds each mean and what is common to each', () => {
		// 0.36·(1/4 + 1/3) = 0.21.
		expectBudget(bandDifferenceBudget(-5, [4, 3], series), 0.21, 0.16 + gain, 5);
	});
});

describe('the uncertainty for 95 %', () => {
	// Two decimals of JCGM 100:2008 table G.2: half a digit, times the standard uncertainty.
	it.each([
		[1, 3, 1, 16, 2.12],
		[1, 1, 2, 8, 2.31],
		[4, 0, 3, 3, 3.18],
		[0.25, 0.75, 1, 16, 2.12],
	])(
		'is that of table G.2 for a scatter of %d beside %d with %d degrees of freedom: %d',
		(a, b, known, effective, t) => {
			// ν = known·((A + B)/A)², for only the scatter is known from few rounds (JCGM 100:2008 G.4.1).
			const {uncertaintyPct, degreesOfFreedom} = expandedUncertainty({scatter: a, common: b, degreesOfFreedom: known});
			expect(degreesOfFreedom).toBeCloseTo(effective, 9);
			expect(Math.abs(uncertaintyPct / Math.sqrt(a + b) - t)).toBeLessThanOrEqual(0.005);
		},
	);

	it('has the normal factor where the scatter is assumed', () => {
		const budget = {scatter: 9, common: 16, degreesOfFreedom: infinite};
		expect(standardUncertaintyPct(budget)).toBe(5);
		expect(expandedUncertainty(budget)).toEqual({uncertaintyPct: 5 * normal, degreesOfFreedom: infinite});
	});

	it('has it where rounding is all the scatter there is, and where there is nothing at all', () => {
		expect(expandedUncertainty({scatter: 1e-19, common: 0, degreesOfFreedom: 4}).degreesOfFreedom).toBe(infinite);
		expect(expandedUncertainty({scatter: 1e-18, common: 0, degreesOfFreedom: 4}).degreesOfFreedom).toBeCloseTo(4, 9);
		const nothing = expandedUncertainty({scatter: 0, common: 0, degreesOfFreedom: 4});
		expect(nothing).toEqual({uncertaintyPct: 0, degreesOfFreedom: infinite});
	});

	it('has it above a million degrees of freedom', () => {
		// 4·500² is a million, 4·501² more.
		const effective = (whole: number) =>
			expandedUncertainty({scatter: 1, common: whole - 1, degreesOfFreedom: 4}).degreesOfFreedom;
		expect(effective(499)).toBeCloseTo(996_004, 3);
		expect(effective(501)).toBe(infinite);
	});
});

describe('the worked example: 3 rounds and one turned at 68 mm, 3 rounds at 136 mm, gauge and nudge 0.5 %', () => {
	const seriesOf = (): Series => {
		const centres = centreScatter([[5.75, 5.5, 5.25], [-5.25], [3.5, 3.25, 3.75]]);
		const widths = widthScatter([
			[5.5, 5.5, 5, 5.5],
			[4, 3.5, 3.5],
		]);
		const reading = {stepPct: 0.5, nudgePct: 0.5};
		return {
			centres,
			widths,
			centreReading: unseenReading(centreReading(reading), centres),
			widthReading: unseenReading(widthReading(reading), widths),
			settingUp: settingUpVariance(true),
			gainPct: 1,
		};
	};

	it('scatters by 0.25 % in its middles, by 0.266 % in its widths', () => {
		const series = seriesOf();
		const {centres, widths} = series;
		// Squares: (0.125 + 0.125)/4 = 0.0625, and (0.1875 + 1/6)/5 = 0.0708333.
		expect(centres).toEqual({sd: 0.25, degreesOfFreedom: 4});
		expect(widths.sd ** 2).toBeCloseTo(0.354166666667 / 5, 10);
		expect(widths.degreesOfFreedom).toBe(5);
		// The middles scatter by more than 0.5/24 already; of the widths 0.5/6 − 0.0708333 is not seen.
		expect(series.centreReading).toBe(0);
		expect(series.widthReading).toBeCloseTo(0.0125, 12);
	});

	// Figures as printed beside the example, to six digits, and the sums behind them.
	it('has a pull of 5.375 % ± 0.391683 % at 68 mm with 5.18632 degrees of freedom', () => {
		const budget = pullBudget(5.375, 3, {kind: 'turned-here', turned: 1}, seriesOf());
		expectBudget(budget, 0.0625 / 3, 0.05375 ** 2, 4);
		const {uncertaintyPct, degreesOfFreedom} = expandedUncertainty(budget);
		expect(uncertaintyPct).toBeCloseTo(0.391683, 6);
		expect(degreesOfFreedom).toBeCloseTo(5.18632, 5);
	});

	it('has a pull of 3.375 % ± 0.562731 % at 136 mm with 4.22169 degrees of freedom', () => {
		const budget = pullBudget(3.375, 3, {kind: 'turned-there', there: {used: 3, turned: 1}}, seriesOf());
		expectBudget(budget, (0.0625 * 2) / 3, 0.03375 ** 2, 4);
		const {uncertaintyPct, degreesOfFreedom} = expandedUncertainty(budget);
		expect(uncertaintyPct).toBeCloseTo(0.562731, 6);
		expect(degreesOfFreedom).toBeCloseTo(4.22169, 5);
	});

	it('has bands of 5.875 % ± 0.385349 % and 4.16667 % ± 0.420795 %', () => {
		expect(expandedUncertainty(bandBudget(5.875, 4, seriesOf())).uncertaintyPct).toBeCloseTo(0.385349, 6);
		expect(expandedUncertainty(bandBudget(25 / 6, 3, seriesOf())).uncertaintyPct).toBeCloseTo(0.420795, 6);
	});

	it('has a zero that is sure to 0.400745 %', () => {
		expect(expandedUncertainty(zeroBudget({used: 3, turned: 1}, seriesOf())).uncertaintyPct).toBeCloseTo(0.400745, 6);
	});

	it('has differences that are sure to 0.565113 % and 0.557597 %', () => {
		// The stylus turns about the pivot by the swing between both radii, which the law of cosines gives; a chord of a
		// circle of radius 1. The level reads to 0.05°, twice on each axis.
		const swing = (radiusMm: number) => Math.acos((233 ** 2 + 215.4 ** 2 - radiusMm ** 2) / (2 * 233 * 215.4));
		const chord = 2 * Math.sin((swing(136) - swing(68)) / 2);
		const slant = slantPct(1, 0.05 / Math.sqrt(24), [
			{x: 0, y: 0},
			{x: chord, y: 0},
		]);
		const pulls = expandedUncertainty(pullDifferenceBudget(3.375 - 5.375, [3, 3], slant, seriesOf()));
		expect(pulls.uncertaintyPct).toBeCloseTo(0.565113, 6);
		const bands = expandedUncertainty(bandDifferenceBudget(25 / 6 - 5.875, [4, 3], seriesOf()));
		expect(bands.uncertaintyPct).toBeCloseTo(0.557597, 6);
	});
});
