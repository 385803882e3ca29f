import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/decisions.json' with {type: 'json'};
import {
	differenceEn,
	neutralRadiusMm,
	torqueMicroNm,
	torqueSlopeMicroNmPerDeg,
} from '../../source/measures/between-radii.js';
import {swingAngleDeg} from '../../source/measures/geometry.js';
import {wallShares} from '../../source/measures/groove-walls.js';
import {leanDegrees, leanMicrometres} from '../../source/measures/stylus-lean.js';

const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211.3};
const at = (radiusMm: number, valuePct: number, uncertaintyPct = 0.1) => ({radiusMm, valuePct, uncertaintyPct});

describe('the difference between two radii', () => {
	it.each(published.en)('has E_n $en', ({values: [one = 0, other = 0], uncertainties: [u = 0, v = 0], en}) => {
		// Four printed decimals.
		expect(Math.abs(differenceEn(at(65, one, u), at(140, other, v)) - en)).toBeLessThanOrEqual(0.00005);
	});

	it('has a slope below zero when it pushes back to a neutral place', () => {
		// In at the rim, out at the spindle.
		expect(torqueSlopeMicroNmPerDeg(arm, 18, at(65, 3), at(140, -3))).toBeLessThan(0);
		expect(torqueSlopeMicroNmPerDeg(arm, 18, at(65, -3), at(140, 3))).toBeGreaterThan(0);
	});

	it('has its neutral place where the swing is half-way between equal and opposite pulls', () => {
		const neutral = neutralRadiusMm(arm, at(65, 3), at(140, -3)) ?? 0;
		const halfWay = (swingAngleDeg(arm, 65) + swingAngleDeg(arm, 140)) / 2;
		expect(swingAngleDeg(arm, neutral)).toBeCloseTo(halfWay, 9);
	});

	it.each([
		['where nothing changes', at(65, 3), at(140, 3)],
		['beyond the record', at(65, 3), at(140, 2)],
		['before the arm is over the spindle', at(65, 6), at(140, 9)],
	] as const)('has no neutral place %s', (_where, inner, outer) => {
		expect(neutralRadiusMm(arm, inner, outer)).toBeNull();
	});
});

describe('what a pull does', () => {
	it('is a torque of force times arm (OpenStax University Physics 1, 10.6: 0.5 m × 30 N makes 15.0 N·m)', () => {
		expect(torqueMicroNm(100, 30, 500)).toBeCloseTo(15000, 9);
	});

	it('loads walls at 45° as (V ± H)/√2 (IEC 60098:2020 6.1): 0.77782 and 0.63640 for a tenth', () => {
		const {inner, outer} = wallShares(10);
		// Five printed digits of each.
		expect(Math.abs(outer - 0.77782 / (0.77782 + 0.6364))).toBeLessThanOrEqual(1e-5);
		expect(Math.abs(inner - 0.6364 / (0.77782 + 0.6364))).toBeLessThanOrEqual(1e-5);
	});

	it('loads the inner wall, the left channel, when it is toward the spindle (IEC 60098:2020 6.2.1)', () => {
		const {inner, outer} = wallShares(-5);
		expect(inner).toBeGreaterThan(outer);
		expect(inner + outer).toBeCloseTo(1, 12);
	});

	it('leans a stylus of 15 µm/mN by 15 µm for each mN, either way', () => {
		expect(leanMicrometres(-5, 20, 15)).toBeCloseTo(15, 12);
		// The tangent of 45° is 1: a lean as long as the cantilever.
		expect(leanDegrees(6000, 6)).toBeCloseTo(45, 12);
	});
});
