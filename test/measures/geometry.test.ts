import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/arm-geometry.json' with {type: 'json'};
import {
	nullRadiiMm,
	overhangMm,
	radiusAtSwingMm,
	reaches,
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
		const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211.3};
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
});
