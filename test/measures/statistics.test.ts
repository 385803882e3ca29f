import {describe, expect, it} from 'vitest';
import nist from '../../shared/check-values/nist-numacc.json' with {type: 'json'};
import examples from '../../shared/check-values/uncertainty-examples.json' with {type: 'json'};
import {mean, pooledSpread, rootSumSquares} from '../../source/measures/statistics.js';

describe('spread', () => {
	it('is the certified one of NIST NumAcc1', () => {
		expect(mean(nist.numAcc1.data)).toBe(nist.numAcc1.mean);
		expect(pooledSpread([nist.numAcc1.data])?.sd).toBeCloseTo(nist.numAcc1.sd, 12);
	});

	it.each(nist.pairs)('is the certified one of NIST $name, where a one-pass sum loses all digits', (set) => {
		const pairs = Array.from({length: 500}, () => [set.base + 0.1, set.base + 0.3]).flat();
		const sd = pooledSpread([[set.base + 0.2, ...pairs]])?.sd ?? 0;
		expect(Math.abs(sd / set.sd - 1)).toBeLessThan(set.tolerance);
	});

	it('is that of the twenty temperatures of JCGM 100:2008 4.4.3', () => {
		const {readings, sd, sdOfMean, mean: printedMean} = examples.thermometer;
		const spread = pooledSpread([readings]);
		expect(Math.abs(mean(readings) - printedMean)).toBeLessThanOrEqual(0.0005);
		expect(Math.abs((spread?.sd ?? 0) - sd)).toBeLessThanOrEqual(0.0005);
		expect(Math.abs((spread?.sd ?? 0) / Math.sqrt(20) - sdOfMean)).toBeLessThanOrEqual(0.0005);
		expect(spread?.degreesOfFreedom).toBe(19);
	});

	it('is, for the ten days of JCGM 100:2008 H.5, that of the daily means', () => {
		// Printed without decimals: half a digit.
		const {dailyMeans, sd} = examples.betweenDays;
		expect(Math.abs((pooledSpread([dailyMeans])?.sd ?? 0) - sd)).toBeLessThanOrEqual(0.5);
	});

	it('pools groups by their degrees of freedom', () => {
		// Arithmetic by hand: deviations ±1 and ±3 give (2 + 18)/2 = 10.
		expect(pooledSpread([[1, 3], [5, 11], [7]])).toEqual({sd: Math.sqrt(10), degreesOfFreedom: 2});
	});

	it('is unknown while no group has two values', () => {
		expect(pooledSpread([[1], [2], []])).toBeNull();
	});

	it('is zero where rounding alone makes it', () => {
		expect(pooledSpread([[0.1 + 0.2, 0.3]])).toEqual({sd: 0, degreesOfFreedom: 1});
		// Two values 1e-8 apart: 1e-8/√2 is more than the 1e-9 that counts as rounding.
		expect((pooledSpread([[0, 1e-8]])?.sd ?? 0) * 1e8).toBeCloseTo(Math.SQRT1_2, 9);
	});

	it('adds uncertainties as in JCGM 100:2008 4.3.7 example 2 and 5.1.5', () => {
		// 12 µV and 15/√3 µV give 15 µV, printed without decimals.
		expect(Math.abs(rootSumSquares(12, 15 / Math.sqrt(3)) - 15)).toBeLessThanOrEqual(0.5);
	});

	it('has no mean without values', () => {
		expect(() => mean([])).toThrow(RangeError);
	});
});
