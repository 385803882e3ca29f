import {describe, expect, it} from 'vitest';
import {type BiasProblem, biasFit} from '../../source/measures/bias-fit.js';
import {leverShare} from '../../source/measures/lever.js';
import {leverFit} from '../../source/measures/lever-fit.js';
import {wantedReadingPct} from '../../source/measures/skating.js';

const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
const drag = 0.3;
const radii = [136, 98, 68];

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
	it('costs nothing where it lies level all over the record', () => {
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

	it('says how much of the weight acts, and what is left as it stands', () => {
		const angles = [75, 50, 30];
		const fit = leverFit(deviceAt(angles), angles);
		// By a table of sines.
		expect(fit?.shares[0]).toBeCloseTo(0.5, 12);
		expect(fit?.shares[1]).toBeCloseTo(0.965926, 6);
		expect(fit?.nowPct).toBeCloseTo(biasFit(deviceAt(angles))?.worstAfterPct ?? Number.NaN, 9);
	});

	it.each([20, -20])('finds the turn after which the bias follows skating: %d°', (turn) => {
		// Measured at these angles, and of the shape of skating once they are turned: the share then over the share now.
		const angles = [70, 50, 40];
		const device = deviceAt([90, 90, 90]);
		const bias = device.bias.map((one, index) => {
			const deg = angles[index] ?? 0;
			return {...one, pct: (one.pct * leverShare(deg)) / leverShare(deg + turn)};
		});
		const fit = leverFit({...device, bias}, angles);
		expect(fit?.turned.byDeg).toBe(turn);
		expect(fit?.turned.worstPct).toBeCloseTo(leverFit(device, [90, 90, 90])?.nowPct ?? Number.NaN, 9);
	});

	it('says nothing of a device that does nothing, though with all of its weight it would', () => {
		// Half of the weight acts: 0.4 % at both radii is no bias, 0.8 % would be one.
		const bias = [
			{radiusMm: 136, pct: 0.4},
			{radiusMm: 68, pct: 0.4},
		];
		expect(leverFit({...deviceAt([]), bias}, [30, 30])).toBeUndefined();
		const twice = bias.map((one) => ({...one, pct: 2 * one.pct}));
		expect(leverFit({...deviceAt([]), bias: twice}, [30, 30])).toBeDefined();
		expect(leverFit({...deviceAt([]), bias: bias.map((one) => ({...one, pct: 0.01}))}, [30, 30])).toBeUndefined();
	});

	it('says nothing where hardly any of the weight acts, or without an angle for each radius', () => {
		expect(leverFit(deviceAt([90, 60, 5]), [90, 60, 5])).toBeUndefined();
		expect(leverFit(deviceAt([90, 60, 45]), [90, 60])).toBeUndefined();
	});
});
