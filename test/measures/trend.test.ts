import fc from 'fast-check';
import {jStat} from 'jstat';
import {describe, expect, it} from 'vitest';
import norris from '../../shared/check-values/nist-norris.json' with {type: 'json'};
import published from '../../shared/check-values/straight-lines.json' with {type: 'json'};
import {coverageFactor99} from '../../source/measures/student-t.js';
import {isTrend, type Trend, type TrendPoint, trendOf} from '../../source/measures/trend.js';

const through = (points: readonly TrendPoint[]): Trend => {
	const trend = trendOf(points);
	if (trend === null) throw new Error('No line goes through these points.');
	return trend;
};

/** As the sources print it: standard errors in place of 99 %. */
const withErrors = (points: readonly TrendPoint[]) => {
	const {slope, slopeUncertainty, intercept, interceptUncertainty, residualSd, n} = through(points);
	const k = coverageFactor99(n - 2);
	return {slope, slopeError: slopeUncertainty / k, intercept, interceptError: interceptUncertainty / k, residualSd};
};

const {thermometer, cadmium} = published;
const thermometerPoints = thermometer.temperatures.map((t, i) => ({
	x: t - 20,
	y: (thermometer.corrections[i] ?? 0) / 1000,
}));
const cadmiumPoints = cadmium.concentrations.flatMap((x, i) => (cadmium.absorbances[i] ?? []).map((y) => ({x, y})));
const norrisPoints = norris.pairs.map(([y = 0, x = 0]) => ({x, y}));

const names = ['intercept', 'interceptError', 'slope', 'slopeError', 'residualSd'] as const;

describe('the straight line', () => {
	it.each(names)('has the %s printed in JCGM 100:2008 H.3', (name) => {
		const [value = 0, halfDigit = 0] = thermometer.printed[name];
		expect(Math.abs(withErrors(thermometerPoints)[name] - value)).toBeLessThanOrEqual(halfDigit);
	});

	it('foretells the correction at 30 °C that JCGM 100:2008 H.3 prints', () => {
		const {intercept, slope} = through(thermometerPoints);
		const [value = 0, halfDigit = 0] = thermometer.printed.at30;
		expect(Math.abs(intercept + slope * 10 - value)).toBeLessThanOrEqual(halfDigit);
	});

	it.each(names)('has the %s of those data to the digits in which two libraries agree', (name) => {
		// Twelve digits are listed at the least; the means are taken in another order here.
		expect(Math.abs(withErrors(thermometerPoints)[name] / thermometer.unrounded[name] - 1)).toBeLessThan(1e-9);
	});

	it.each(names)('has the %s printed in EURACHEM/CITAC QUAM A5', (name) => {
		const [value = 0, halfDigit = 0] = cadmium.printed[name];
		expect(Math.abs(withErrors(cadmiumPoints)[name] - value)).toBeLessThanOrEqual(halfDigit);
	});

	it.each(names)('has the %s that NIST certifies for Norris', (name) => {
		// NIST StRD asks how many certified digits come back; doubles leave ten.
		expect(Math.abs(withErrors(norrisPoints)[name] / norris.certified[name] - 1)).toBeLessThan(1e-10);
	});

	it('keeps its digits far from x = 0, where sums about zero lose them', () => {
		// 2^20 is added without rounding to steps of 1/8, so the line must be the same to rounding.
		const near = [0, 0.5, 1.125, 1.5, 2.25].map((x, i) => ({x, y: [3, 3.5, 3.25, 4, 4.5][i] ?? 0}));
		const far = near.map(({x, y}) => ({x: x + 2 ** 20, y}));
		expect(through(far).slope).toBeCloseTo(through(near).slope, 9);
		expect(through(far).slopeUncertainty).toBeCloseTo(through(near).slopeUncertainty, 9);
	});

	it('has no spread where every check lies on it', () => {
		const line = through([1, 2, 3, 4, 5].map((x) => ({x, y: 2 * x - 1})));
		expect(line).toMatchObject({slope: 2, intercept: -1, residualSd: 0, slopeUncertainty: 0, n: 5});
	});

	it('is not drawn below five checks, nor where all were made at one x', () => {
		expect(trendOf([1, 2, 3, 4].map((x) => ({x, y: x})))).toBeNull();
		expect(trendOf([1, 2, 3, 4, 5].map((x) => ({x, y: x})))).not.toBeNull();
		expect(trendOf([])).toBeNull();
		expect(trendOf([1, 2, 3, 4, 5].map((y) => ({x: 0.1 + 0.2, y})))).toBeNull();
		expect(trendOf([1, 2, 3, 4, 5].map((y, i) => ({x: i === 0 ? 0.3 : 0.1 + 0.2, y})))).toBeNull();
		expect(trendOf([1, 2, 3, 4, 5].map((y, i) => ({x: i === 0 ? 0.3 : 0.300001, y})))).not.toBeNull();
	});
});

// Whole numbers, so that x values are either equal or well apart.
const whole = fc.integer({min: -50, max: 50});
const checks = fc
	.array(fc.record({x: whole, y: whole}), {minLength: 5, maxLength: 20})
	.filter((points) => new Set(points.map(({x}) => x)).size > 1);

const isClose = (one: number, other: number, size = 1): boolean =>
	Math.abs(one - other) <= 1e-9 * Math.max(size, Math.abs(other));

describe('any straight line', () => {
	it('agrees with a second library', () => {
		fc.assert(
			fc.property(checks, (points) => {
				const second = jStat.models.ols(
					points.map(({y}) => y),
					points.map(({x}) => [1, x]),
				);
				const [intercept = 0, slope = 0] = second.coef;
				const [interceptError = 0, slopeError = 0] = second.t.se;
				const own = withErrors(points);
				// The second library solves by inverting a matrix of sums about zero, which costs it digits.
				expect(own.intercept).toBeCloseTo(intercept, 6);
				expect(own.slope).toBeCloseTo(slope, 6);
				expect(own.interceptError).toBeCloseTo(interceptError, 6);
				expect(own.slopeError).toBeCloseTo(slopeError, 6);
				expect(own.residualSd).toBeCloseTo(second.t.sigmaHat, 6);
			}),
		);
	});

	it('keeps slope and interval when all x or all y are shifted', () => {
		fc.assert(
			fc.property(checks, whole, whole, (points, byX, byY) => {
				const before = through(points);
				const after = through(points.map(({x, y}) => ({x: x + byX, y: y + byY})));
				expect(isClose(after.slope, before.slope)).toBe(true);
				expect(isClose(after.slopeUncertainty, before.slopeUncertainty)).toBe(true);
				expect(isClose(after.residualSd, before.residualSd, 100)).toBe(true);
				expect(isClose(after.intercept, before.intercept + byY - before.slope * byX, 1e4)).toBe(true);
			}),
		);
	});

	it('turns its slope round, and nothing else, when every sign of y is turned', () => {
		fc.assert(
			fc.property(checks, (points) => {
				const before = through(points);
				const after = through(points.map(({x, y}) => ({x, y: -y})));
				expect(isClose(after.slope, -before.slope)).toBe(true);
				expect(isClose(after.slopeUncertainty, before.slopeUncertainty)).toBe(true);
				expect(isTrend(after)).toBe(isTrend(before));
			}),
		);
	});

	it('scales with y, and against x', () => {
		fc.assert(
			fc.property(checks, fc.integer({min: 1, max: 100}), (points, by) => {
				const before = through(points);
				const taller = through(points.map(({x, y}) => ({x, y: y * by})));
				const wider = through(points.map(({x, y}) => ({x: x * by, y})));
				expect(isClose(taller.slope, before.slope * by, 100)).toBe(true);
				expect(isClose(taller.slopeUncertainty, before.slopeUncertainty * by, 100)).toBe(true);
				expect(isClose(wider.slope, before.slope / by)).toBe(true);
				expect(isClose(wider.slopeUncertainty, before.slopeUncertainty / by)).toBe(true);
			}),
		);
	});
});

describe('a trend', () => {
	it('is seen in the thermometer of JCGM 100:2008 H.3: 0.00218 with 3.25 × 0.00067 (table G.2) leaves zero out', () => {
		expect(isTrend(through(thermometerPoints))).toBe(true);
	});

	it('is not seen where the interval holds zero', () => {
		// By hand: slope 0.05, residuals −0.8 1.15 0.6 −1.45 0.5, so a standard error of 0.39.
		expect(isTrend(through([1, 3, 2.5, 0.5, 2.5].map((y, x) => ({x, y}))))).toBe(false);
	});

	it('asks for 99 %: what 95 % would call a trend is none yet', () => {
		// By hand: residuals 0.4 −0.6 0.4 −0.6 0.4 make 1.2 squared and added, so a standard error of √(1.2/3/10) = 0.2;
		// 3 degrees of freedom ask for 3.18 of them at 95 % and 5.84 at 99 % (JCGM 100:2008 table G.2): 0.64 and 1.17.
		const wavy = (slope: number) => through([0.4, -0.6, 0.4, -0.6, 0.4].map((off, x) => ({x, y: slope * x + off})));
		expect(wavy(0.5).slopeUncertainty).toBeCloseTo(5.84 * 0.2, 2);
		expect(isTrend(wavy(0.7))).toBe(false);
		expect(isTrend(wavy(1.2))).toBe(true);
		expect(isTrend(wavy(-0.7))).toBe(false);
		expect(isTrend(wavy(-1.2))).toBe(true);
	});

	it('is not seen in figures that are all equal', () => {
		expect(isTrend(through([1, 2, 3, 4, 5].map((x) => ({x, y: 0.1}))))).toBe(false);
	});

	it('is not seen where zero is the very end of the interval', () => {
		const line = {slope: 0.1 + 0.2, slopeUncertainty: 0.3, intercept: 0, interceptUncertainty: 1, residualSd: 1, n: 5};
		expect(isTrend(line)).toBe(false);
		expect(isTrend({...line, slopeUncertainty: 0.29})).toBe(true);
		expect(isTrend({...line, slope: -0.3, slopeUncertainty: 0.29})).toBe(true);
	});

	it('is seen exactly where a second library finds less than 1 % for no slope', () => {
		fc.assert(
			fc.property(checks, (points) => {
				const line = through(points);
				// Without spread, or at the edge itself, rounding would decide.
				fc.pre(line.residualSd > 1e-6);
				const [, p = 1] = jStat.models.ols(
					points.map(({y}) => y),
					points.map(({x}) => [1, x]),
				).t.p;
				fc.pre(Math.abs(p - 0.01) > 1e-6);
				expect(isTrend(line)).toBe(p < 0.01);
			}),
		);
	});
});
