import {describe, expect, it} from 'vitest';
import type {BiasProblem} from '../../source/measures/bias-fit.js';
import {leverShare} from '../../source/measures/lever.js';
import {leverFit} from '../../source/measures/lever-fit.js';
import {wantedReadingPct} from '../../source/measures/skating.js';

const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211.3};
const drag = 0.3;
const radii = [140, 100, 65];

/** An invented device that would follow skating to the letter if all of its weight acted, and stands at these angles. */
const deviceAt = (anglesDeg: readonly number[]): BiasProblem => ({
	arm,
	drag,
	own: [{radiusMm: 100, pct: 0}],
	bias: radii.map((radiusMm, index) => ({
		radiusMm,
		pct: wantedReadingPct(arm, drag, radiusMm) * leverShare(anglesDeg[index] ?? 0),
	})),
});

describe('the place of a lever', () => {
	it("costs nothing at 3 o'clock all over the record", () => {
		const fit = leverFit(deviceAt([90, 90, 90]), [90, 90, 90]);
		expect(fit?.shares).toEqual([1, 1]);
		expect(fit?.turned.byDeg).toBe(0);
		expect(fit?.heldPct).toBeCloseTo(fit?.nowPct ?? 0, 9);
	});

	it('gains by being held where all of its weight acts', () => {
		const angles = [90, 65, 45];
		const fit = leverFit(deviceAt(angles), angles);
		// Straight lines between three radii cannot follow the curve closer than this.
		const straight = leverFit(deviceAt([90, 90, 90]), [90, 90, 90])?.nowPct ?? 0;
		expect(fit?.heldPct).toBeCloseTo(straight, 9);
		expect(fit?.nowPct).toBeGreaterThan(1);
	});

	it('gains by a turn toward the horizontal where it stands above it', () => {
		const angles = [75, 50, 30];
		const fit = leverFit(deviceAt(angles), angles);
		expect(fit?.turned.byDeg).toBeGreaterThan(0);
		expect(fit?.turned.worstPct).toBeLessThan(fit?.nowPct ?? 0);
		// The same on the other half of the face, the other way.
		const mirrored = angles.map((deg) => 360 - deg);
		expect(leverFit(deviceAt(angles), mirrored)?.turned.byDeg).toBe(-(fit?.turned.byDeg ?? 0));
	});

	it('says nothing where hardly any of the weight acts, or without an angle for each radius', () => {
		expect(leverFit(deviceAt([90, 60, 5]), [90, 60, 5])).toBeUndefined();
		expect(leverFit(deviceAt([90, 60, 45]), [90, 60])).toBeUndefined();
	});
});
