import * as fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {advance, isMoving, readingShown} from '../../source/practice/advance.js';
import type {ArmSpec} from '../../source/practice/arm-spec.js';
import {newPracticeArm, type PracticeArm, placeGauge} from '../../source/practice/practice-arm.js';
import {truthOf} from '../../source/practice/truth.js';
import {bareArm, pctMicroNm} from './bare-arm.js';

const radiusMm = 100;

const armWith = (frictionPct: number, pullPct: number, change: Partial<ArmSpec> = {}): ArmSpec => ({
	...bareArm,
	friction: {staticMicroNm: frictionPct * pctMicroNm, kineticShare: 0.8},
	wire: {...bareArm.wire, twistMicroNm: pullPct * pctMicroNm},
	...change,
});

/** The arm at rest where the gauge pushes it back with so many percent. */
function pushedTo(spec: ArmSpec, pct: number): PracticeArm {
	const arm = placeGauge(newPracticeArm(spec, 1), radiusMm);
	const mm = pct / spec.gauge.restoringPctPerMm;
	return {...arm, swingRad: arm.swingRad + mm / spec.geometry.effectiveLengthMm};
}

describe('an arm with friction f and an internal pull B', () => {
	// Coulomb's law (OpenStax University Physics vol. 1, 6.2): a hand starts it outward at F = f − B, inward at F = −f − B. The
	// gauge shows the force of the arm on it, −F, so the limits are B − f inside and B + f outside.
	it.each([
		['outer', 1],
		['inner', -1],
	])('holds just inside its %s limit and leaves just outside', (_limit, side) => {
		fc.assert(
			fc.property(fc.double({min: 0.3, max: 5, noNaN: true}), fc.double({min: -6, max: 6, noNaN: true}), (f, pull) => {
				const spec = armWith(f, pull);
				const limit = pull + side * f;
				const [inside, outside] = [limit - side * 0.01, limit + side * 0.01].map((pct) => pushedTo(spec, pct));
				expect(inside && isMoving(inside)).toBe(false);
				expect(inside && advance(inside, 5000).swingRad).toBe(inside?.swingRad);
				expect(outside && isMoving(outside)).toBe(true);
				const moved = ((outside && advance(outside, 5000).swingRad) ?? 0) - (outside?.swingRad ?? 0);
				expect(moved * side).toBeLessThan(0);
			}),
			{seed: 1, numRuns: 50},
		);
	});

	it('is told as the worked pair of forces: +0.35 and −0.15 are friction 0.25 and a pull of −0.10', () => {
		// From the same two equations; the trap is the sign of the pull.
		const {pullPct, bandPct} = truthOf(armWith(0.25, -0.1), radiusMm);
		expect([bandPct / 2 - pullPct, -bandPct / 2 - pullPct]).toEqual([
			expect.closeTo(0.35, 9),
			expect.closeTo(-0.15, 9),
		]);
	});

	it('keeps still at the end of the scale, which then shows its top', () => {
		const arm = advance(placeGauge(newPracticeArm(armWith(1, 25), 1), radiusMm), 5000);
		expect(isMoving(arm)).toBe(false);
		expect(readingShown(arm)).toBe(20);
	});
});

describe('the hidden truth', () => {
	it('of a deck 1° low on the side that the arm swings to is 1.7455 % of the force carried', () => {
		// tan 1°, the ratio to the force square to the slope (OpenStax University Physics vol. 1, 5.6); half a unit of the last digit.
		const tilt = {leftRightDeg: -1, frontBackDeg: 0};
		// With the pivot straight behind the spindle and the stylus straight under the line, the arm swings to the right.
		const spec = armWith(1, 0, {tilt, pivotDirectionDeg: 90, geometry: {effectiveLengthMm: 200, pivotDistanceMm: 200}});
		const acrossMm = 1e-3;
		expect(Math.abs(truthOf(spec, acrossMm).pullPct - 1.7455)).toBeLessThan(5e-5);
	});

	it('of a spring-loaded arm without a guard knows no tilt', () => {
		const spec = armWith(1, 0, {tilt: {leftRightDeg: -1, frontBackDeg: 1}, loading: 'spring'});
		expect(truthOf(spec, radiusMm).tiltPct).toBeCloseTo(0, 12);
	});

	it('counts the mass of the guard, which leans too', () => {
		const tilted = armWith(1, 0, {tilt: {leftRightDeg: -1, frontBackDeg: 0}});
		const guarded = truthOf({...tilted, guardMassG: 1}, radiusMm).tiltPct;
		// 1 g weighs 9.80665 mN (3rd CGPM 1901), beside 20 mN of tracking force.
		expect(guarded / truthOf(tilted, radiusMm).tiltPct).toBeCloseTo(29.80665 / 20, 9);
	});

	it('of a worn race is the worn friction inside and the plain one outside', () => {
		const spec = armWith(1, 0, {friction: {staticMicroNm: 40, kineticShare: 0.8, worn: {withinMm: 95, times: 2.5}}});
		expect(truthOf(spec, 68).bandPct).toBeCloseTo(5, 4);
		expect(truthOf(spec, 136).bandPct).toBeCloseTo(2, 4);
	});

	it('of a paddle left in has the yield of the fluid in its band', () => {
		const damping = {isIn: true, viscousMicroNmS: 1000, yieldMicroNm: 40};
		expect(truthOf(armWith(1, 0, {damping}), radiusMm).bandPct).toBeCloseTo(4, 9);
		expect(truthOf(armWith(1, 0, {damping: {...damping, isIn: false}}), radiusMm).bandPct).toBeCloseTo(2, 9);
	});

	it('has a bias in its pull only while it is on', () => {
		const device = {kind: 'spring' as const, atRestMicroNm: 80, slackeningMicroNmPerDeg: 0};
		expect(truthOf(armWith(1, 0.5, {bias: {isOn: true, device}}), radiusMm).pullPct).toBeCloseTo(2.5, 9);
		expect(truthOf(armWith(1, 0.5, {bias: {isOn: false, device}}), radiusMm).pullPct).toBeCloseTo(0.5, 9);
	});
});
