import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {outwardDirection} from '../../source/measures/tilt-share.js';
import {pivotPlace, stylusPlace} from '../../source/pages/arm-in-plan.js';

/** Invented arms that reach the whole record: the stylus passes the spindle by 10 to 25 mm. */
const anyArm = fc
	.tuple(fc.double({min: 190, max: 320, noNaN: true}), fc.double({min: 10, max: 25, noNaN: true}))
	.map(([pivotDistanceMm, overhangMm]) => ({pivotDistanceMm, effectiveLengthMm: pivotDistanceMm + overhangMm}));
const anyDirection = fc.double({min: 0, max: 360, noNaN: true});
const anyRadius = fc.double({min: 50, max: 150, noNaN: true});

describe('The arm in plan', () => {
	it('stands as long as it is from the pivot, and at its radius from the spindle', () => {
		fc.assert(
			fc.property(anyArm, anyDirection, anyRadius, (arm, directionDeg, radiusMm) => {
				const [pivot, stylus] = [pivotPlace(arm, directionDeg), stylusPlace(arm, directionDeg, radiusMm)];
				// The triangle of plane geometry; the tolerance is that of rounding.
				expect(Math.hypot(pivot.x, pivot.y)).toBeCloseTo(arm.pivotDistanceMm, 6);
				expect(Math.hypot(stylus.x, stylus.y)).toBeCloseTo(radiusMm, 6);
				expect(Math.hypot(pivot.x - stylus.x, pivot.y - stylus.y)).toBeCloseTo(arm.effectiveLengthMm, 6);
			}),
		);
	});

	it('swings outward the way the tilt of a deck is reckoned', () => {
		fc.assert(
			fc.property(anyArm, anyDirection, anyRadius, (arm, directionDeg, radiusMm) => {
				const [here, further] = [radiusMm, radiusMm + 0.1].map((radius) => stylusPlace(arm, directionDeg, radius));
				const outward = outwardDirection(arm, directionDeg, radiusMm);
				const moved = {x: (further?.x ?? 0) - (here?.x ?? 0), y: (further?.y ?? 0) - (here?.y ?? 0)};
				const length = Math.hypot(moved.x, moved.y);
				// A chord of some 0.1 mm on a circle of 200 mm and more leaves its tangent by less than 0.0005.
				expect((moved.x * outward.x + moved.y * outward.y) / length).toBeGreaterThan(0.999);
			}),
		);
	});

	it('lies over the right side of the record where the pivot stands at the right rear (common practice, no source)', () => {
		const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
		for (const radiusMm of [68, 98, 136]) {
			const {x, y} = stylusPlace(arm, 45, radiusMm);
			expect(x).toBeGreaterThan(0);
			expect(y).toBeLessThan(0);
		}
	});
});
