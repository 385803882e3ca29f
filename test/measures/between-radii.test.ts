import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/decisions.json' with {type: 'json'};
import {
	differenceEn,
	neutralRadiusMm,
	torqueMicroNm,
	torqueSlopeMicroNmPerDeg,
} from '../../source/measures/between-radii.js';
import {leanDegrees, leanMicrometres, wallForce, wallShares} from '../../source/measures/skating.js';

const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
const at = (radiusMm: number, valuePct: number) => ({radiusMm, valuePct});

/** Swing in degrees by the law of cosines. */
const swing = (radiusMm: number): number =>
	(Math.acos((233 ** 2 + 215.4 ** 2 - radiusMm ** 2) / (2 * 233 * 215.4)) * 180) / Math.PI;
/** The radius again. */
const radiusAt = (swingDeg: number): number =>
	Math.sqrt(233 ** 2 + 215.4 ** 2 - 2 * 233 * 215.4 * Math.cos((swingDeg * Math.PI) / 180));

describe('the difference between two radii', () => {
	it.each(published.en)('has E_n $en', ({values: [one = 0, other = 0], uncertainties: [u = 0, v = 0], en}) => {
		// Four printed decimals.
		expect(Math.abs(differenceEn(other - one, Math.hypot(u, v)) - en)).toBeLessThanOrEqual(0.00005);
		expect(Math.abs(differenceEn(one - other, Math.hypot(u, v)) - en)).toBeLessThanOrEqual(0.00005);
	});

	it('of the worked example has E_n 3.53032 and a slope of −5.37129 µN·m for each degree', () => {
		// Own pulls of 5.54948 and 3.55445 % of 21 mN, printed to six digits; the slope is −1.99503/100·21·233 mN·mm over
		// the swing between 68 and 136 mm, 36.35° less 18.18° or so.
		expect(differenceEn(-1.99503, 0.565113)).toBeCloseTo(3.53032, 4);
		const slope = torqueSlopeMicroNmPerDeg(arm, 21, at(68, 5.54948), at(136, 3.55445));
		expect(slope).toBeCloseTo((-0.0199503 * 21 * 233) / (swing(136) - swing(68)), 9);
		expect(slope).toBeCloseTo(-5.37129, 4);
		// So slack a spring would be neutral only far outside the record.
		expect(neutralRadiusMm(arm, at(68, 5.54948), at(136, 3.55445))).toBeNull();
	});

	it('has a slope below zero when it pushes back to a neutral place', () => {
		// In at the rim, out at the spindle.
		expect(torqueSlopeMicroNmPerDeg(arm, 21, at(68, 3), at(136, -3))).toBeLessThan(0);
		expect(torqueSlopeMicroNmPerDeg(arm, 21, at(68, -3), at(136, 3))).toBeGreaterThan(0);
	});

	it.each([
		[3, -3, 0.5],
		[1, -3, 0.25],
		[-3, 1, 0.75],
	])('from %d to %d is neutral so far between both swings: %d', (inner, outer, share) => {
		// A straight line in the swing: three to each side meets nought half-way, one against three at a quarter.
		const swingDeg = swing(68) + share * (swing(136) - swing(68));
		expect(neutralRadiusMm(arm, at(68, inner), at(136, outer))).toBeCloseTo(radiusAt(swingDeg), 9);
	});

	it('is neutral on the record, or as far as 150 mm, and no farther', () => {
		// A line through nought at 149.9 and at 150.1 mm.
		const throughZeroAt = (radiusMm: number) =>
			neutralRadiusMm(arm, at(68, swing(radiusMm) - swing(68)), at(136, swing(radiusMm) - swing(136)));
		expect(throughZeroAt(149.9)).toBeCloseTo(149.9, 6);
		expect(throughZeroAt(150)).toBeCloseTo(150, 6);
		expect(throughZeroAt(150.1)).toBeNull();
		expect(throughZeroAt(40)).toBeCloseTo(40, 6);
		expect(throughZeroAt(18)).toBeCloseTo(18, 6);
	});

	it('is neutral at the line to the spindle, and not beyond it', () => {
		const throughZeroAtSwing = (swingDeg: number) =>
			neutralRadiusMm(arm, at(68, swingDeg - swing(68)), at(136, swingDeg - swing(136)));
		// There the stylus stands 233 − 215.4 mm from the spindle.
		expect(throughZeroAtSwing(0)).toBeCloseTo(17.6, 6);
		expect(throughZeroAtSwing(-0.001)).toBeNull();
		// The cosine knows no sign: so far on the other side the radius would be one of the record.
		expect(throughZeroAtSwing(-20)).toBeNull();
	});

	it('is neutral nowhere where nothing changes', () => {
		expect(neutralRadiusMm(arm, at(68, 3), at(136, 3))).toBeNull();
		expect(neutralRadiusMm(arm, at(68, 0), at(136, 0))).toBeNull();
	});
});

describe('what a pull does', () => {
	it('is a torque of force times arm (OpenStax University Physics 1, 10.6: 0.5 m × 30 N makes 15.0 N·m)', () => {
		expect(torqueMicroNm(100, 30, 500)).toBeCloseTo(15000, 9);
	});

	it('of the worked example is a torque of 262.999 µN·m: 5.375 % of 21 mN at 233 mm', () => {
		expect(torqueMicroNm(5.375, 21, 233)).toBeCloseTo(0.05375 * 21 * 233, 9);
		expect(torqueMicroNm(-5.375, 21, 233)).toBeCloseTo(-262.999, 3);
	});

	it('of the worked example loads the walls by 0.470747 and 0.529253, and leans the stylus by 14.7438 µm', () => {
		// The wall carries 5.375 % over the cosine of the angle between groove and arm, whose sine is 0.394971 at 68 mm;
		// 12 µm/mN on a cantilever of 5.5 mm.
		const walls = wallForce(5.375, (233 ** 2 + 68 ** 2 - 215.4 ** 2) / (2 * 233 * 68));
		expect(walls).toBeCloseTo(5.375 / Math.sqrt(1 - 0.394971 ** 2), 5);
		expect(wallShares(walls).inner).toBeCloseTo(0.470747, 6);
		expect(wallShares(walls).outer).toBeCloseTo(0.529253, 6);
		expect(leanMicrometres(walls, 21, 12)).toBeCloseTo(14.7438, 4);
		expect(leanDegrees(leanMicrometres(walls, 21, 12), 5.5)).toBeCloseTo(0.153592, 6);
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
