import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/arm-geometry.json' with {type: 'json'};
import {
	canBeProbed,
	nullRadiiMm,
	overhangMm,
	radiusAtSwingMm,
	reaches,
	reachMm,
	spindleAngle,
	swingAngleDeg,
} from '../../source/measures/geometry.js';

describe('arm geometry', () => {
	it.each(published.arms)('has the nulls of $rule at $lengthMm mm', (row) => {
		const arm = {effectiveLengthMm: row.lengthMm, pivotDistanceMm: row.pivotMm};
		const nulls = nullRadiiMm(arm, row.offsetDeg);
		const [inner = 0, outer = 0] = row.nullsMm;
		// Offset to 0.00005° and pivot distance to 0.00005 mm, carried into the nulls.
		expect(Math.abs((nulls?.[0] ?? 0) - inner)).toBeLessThanOrEqual(0.005);
		expect(Math.abs((nulls?.[1] ?? 0) - outer)).toBeLessThanOrEqual(0.005);
		expect(Math.abs(overhangMm(arm) - row.overhangMm)).toBeLessThanOrEqual(0.001);
	});

	it('has no nulls where the offset is too small for the overhang', () => {
		expect(nullRadiiMm({effectiveLengthMm: 228.6, pivotDistanceMm: 210.4}, 10)).toBeNull();
		expect(nullRadiiMm({effectiveLengthMm: 228.6, pivotDistanceMm: 240}, 20)).toBeNull();
	});

	it('puts the stylus where two circles cross', () => {
		const {lengthMm, pivotMm, radiusMm, crossing} = published.circles;
		const angle = spindleAngle({effectiveLengthMm: lengthMm, pivotDistanceMm: pivotMm}, radiusMm);
		// Both lengths are rounded in the table: half a digit of each moves the crossing by 0.0002 mm.
		expect(Math.abs(radiusMm * Math.cos(angle) - (crossing[0] ?? 0))).toBeLessThanOrEqual(0.0002);
		expect(Math.abs(radiusMm * Math.sin(angle) - (crossing[1] ?? 0))).toBeLessThanOrEqual(0.0002);
	});

	it('swings a right angle where the triangle is 3-4-5', () => {
		expect(swingAngleDeg({effectiveLengthMm: 3, pivotDistanceMm: 4}, 5)).toBeCloseTo(90, 12);
	});

	it('finds the radius again from the swing angle', () => {
		const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
		fc.assert(
			fc.property(fc.double({min: 18, max: 440, noNaN: true}), (radiusMm) => {
				expect(radiusAtSwingMm(arm, swingAngleDeg(arm, radiusMm))).toBeCloseTo(radiusMm, 6);
			}),
		);
	});

	it('reaches from the difference of both lengths to their sum, ends included', () => {
		const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211};
		expect([17.9, 18, 440, 440.1].map((radiusMm) => reaches(arm, radiusMm))).toEqual([false, true, true, false]);
	});

	it('reaches alike whichever of both lengths is the longer', () => {
		expect(reachMm({effectiveLengthMm: 229, pivotDistanceMm: 211})).toEqual([18, 440]);
		expect(reachMm({effectiveLengthMm: 211, pivotDistanceMm: 229})).toEqual([18, 440]);
	});

	it('can be probed inside its reach by more than a hundredth of a millimetre', () => {
		const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211};
		const probed = (...radii: readonly number[]) => radii.map((radiusMm) => canBeProbed(arm, radiusMm));
		expect(probed(17, 18, 18.01, 18.011, 100)).toEqual([false, false, false, true, true]);
		expect(probed(439.989, 439.99, 440, 441)).toEqual([true, false, false, false]);
	});

	it('has angles at the ends of its reach and past them, where rounding may carry a radius', () => {
		const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211};
		expect([17.9, 18].map((radiusMm) => swingAngleDeg(arm, radiusMm))).toEqual([0, 0]);
		expect([440, 440.1].map((radiusMm) => swingAngleDeg(arm, radiusMm))).toEqual([180, 180]);
		expect(spindleAngle(arm, 17.9)).toBeCloseTo(Math.PI, 12);
		expect(spindleAngle(arm, 440.1)).toBe(0);
		expect(radiusAtSwingMm({effectiveLengthMm: 229, pivotDistanceMm: 229}, 0)).toBe(0);
	});

	it('has one null where the offset is just large enough, and none without offset or overhang', () => {
		// L 5, D 4: the product of both nulls is 9, so both are 3 where 5·sin(offset) is 3 (a 3-4-5 triangle).
		const arm = {effectiveLengthMm: 5, pivotDistanceMm: 4};
		const offsetDeg = (Math.asin(3 / 5) * 180) / Math.PI;
		const [one = 0, other = 0] = nullRadiiMm(arm, offsetDeg) ?? [];
		expect(one).toBeCloseTo(3, 6);
		expect(other).toBeCloseTo(3, 6);
		expect(nullRadiiMm(arm, offsetDeg - 0.01)).toBeNull();
		expect(nullRadiiMm(arm, -offsetDeg)).toBeNull();
		expect(nullRadiiMm(arm, -60)).toBeNull();
		expect(nullRadiiMm(arm, 0)).toBeNull();
		expect(nullRadiiMm({effectiveLengthMm: 5, pivotDistanceMm: 5}, 20)).toBeNull();
	});
});
