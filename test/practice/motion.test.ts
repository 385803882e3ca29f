import {describe, expect, it} from 'vitest';
import {radians} from '../../source/measures/angles.js';
import {advance} from '../../source/practice/advance.js';
import type {ArmSpec} from '../../source/practice/arm-spec.js';
import {type PracticeArm, placeGauge} from '../../source/practice/practice-arm.js';
import {bareArm, freeAt, offDeg, pctMicroNm} from './bare-arm.js';

const restMm = 100;
const springMicroNmPerDeg = 30;
const swinging: ArmSpec = {...bareArm, wire: {springMicroNmPerDeg, restRadiusMm: restMm, twistMicroNm: 0}};

/** Mean time between upward passes through the middle, in s, over so many swings. */
function periodS(start: PracticeArm, placeOf: (arm: PracticeArm) => number, swings: number): number {
	const passes: number[] = [];
	let arm = start;
	while (passes.length <= swings) {
		const next = advance(arm, 1);
		const [before, after] = [placeOf(arm), placeOf(next)];
		if (before < 0 && after >= 0) passes.push(arm.timeMs + before / (before - after));
		arm = next;
	}
	return ((passes.at(-1) ?? 0) - (passes[0] ?? 0)) / swings / 1000;
}

/** Energy of an arm on a spring, in µJ: kinetic and of the spring (OpenStax University Physics vol. 1, 10.4 and 8.1). */
const energyMicroJ = (arm: PracticeArm): number =>
	(arm.spec.momentKgMm2 * arm.rateRadPerS ** 2) / 2 + (springMicroNmPerDeg * radians(1) * offDeg(arm, restMm) ** 2) / 2;

describe('the free arm', () => {
	it('swings like a torsion pendulum', () => {
		// T = 2π√(I/κ): OpenStax University Physics vol. 1, 15.4. The scheme is off by (ω·step)²/24, here 1e-7.
		const expected = 2 * Math.PI * Math.sqrt(swinging.momentKgMm2 / (springMicroNmPerDeg / radians(1)));
		const found = periodS(freeAt(swinging, restMm, 5), (arm) => offDeg(arm, restMm), 10);
		expect(Math.abs(found / expected - 1)).toBeLessThan(1e-5);
	});

	it('swings on a gauge as on a spring of its stiffness', () => {
		// The same formula; 4 % of 20 mN for each mm is 0.8 mN/mm, which at 200 mm is 32 000 µN·m/rad. Some (ω·step)²/24 = 2e-6.
		const start = placeGauge(freeAt(bareArm, restMm, 0), restMm);
		const found = periodS({...start, swingRad: start.swingRad + 0.005}, (arm) => offDeg(arm, restMm), 10);
		expect(Math.abs(found / (2 * Math.PI * Math.sqrt(600 / 32_000)) - 1)).toBeLessThan(1e-5);
	});

	it('keeps its energy without friction', () => {
		let arm = freeAt(swinging, restMm, 5);
		const first = energyMicroJ(arm);
		for (let second = 0; second < 120; second++) {
			arm = advance(arm, 1000);
			// Velocity Verlet keeps energy to about (ω·step)²/8 and lets it drift nowhere: here 4e-7.
			expect(Math.abs(energyMicroJ(arm) / first - 1)).toBeLessThan(1e-5);
		}
	});

	it.each([
		['dry friction', {friction: {staticMicroNm: 8, kineticShare: 0.8}}],
		['a fluid', {damping: {isIn: true, viscousMicroNmS: 300, yieldMicroNm: 0}}],
		['a fluid with a yield', {damping: {isIn: true, viscousMicroNmS: 300, yieldMicroNm: 8}}],
	])('never gains energy with %s', (_with, change: Partial<ArmSpec>) => {
		let arm = freeAt({...swinging, ...change}, restMm, 5);
		const first = energyMicroJ(arm);
		for (let taken = 0; taken < 2000; taken++) {
			const next = advance(arm, 10);
			expect(energyMicroJ(next)).toBeLessThanOrEqual(energyMicroJ(arm) + 1e-6 * first);
			arm = next;
		}
		expect(energyMicroJ(arm)).toBeLessThan(first / 2);
	});
});

describe('friction', () => {
	// OpenStax University Physics vol. 1, 6.2, Example 6.10: 20.0 kg, limit 137 N; pushes of 20, 30 and 120 N are met in
	// full; 180 N moves it, friction is then 118 N and the acceleration 3.10 m/s². Here as kg·mm² and µN·m.
	const crate = (pushMicroNm: number): ArmSpec => ({
		...bareArm,
		momentKgMm2: 20,
		friction: {staticMicroNm: 137, kineticShare: 118 / 137},
		wire: {...bareArm.wire, twistMicroNm: pushMicroNm},
	});

	it.each([20, 30, 120, -120, 136.99])('at rest meets a push of %s in full', (push) => {
		const start = freeAt(crate(push), restMm, 0);
		const after = advance(start, 60_000);
		expect([after.swingRad, after.rateRadPerS]).toEqual([start.swingRad, 0]);
	});

	it('gives way above its limit, and then is what it is on the move', () => {
		const after = advance(freeAt(crate(180), restMm, -5), 100);
		// Half of the last printed digit of 3.10.
		expect(Math.abs(after.rateRadPerS / 0.1 - 3.1)).toBeLessThan(0.005);
	});

	it('brings a slip to rest as far beyond the middle as it began before it', () => {
		// From beyond the limit f_s of rest the arm swings about the place where spring and kinetic friction f_k balance, and stops
		// at 2·f_k − f_s: half a swing of I·x″ = −K·x ± f (constant force shifts the middle: OpenStax University Physics vol. 1, 15.1).
		const [restPct, slidePct, begunPct] = [2, 1.6, 2.05];
		const spec: ArmSpec = {
			...bareArm,
			friction: {staticMicroNm: restPct * pctMicroNm, kineticShare: slidePct / restPct},
		};
		const start = placeGauge(freeAt(spec, restMm, 0), restMm);
		const perPct = 1 / 4 / 200;
		const after = advance({...start, swingRad: start.swingRad + begunPct * perPct}, 5000);
		expect(after.rateRadPerS).toBe(0);
		// The stop is found to a time step: half of acceleration times step squared, far below 0.001 %.
		expect((after.swingRad - start.swingRad) / perPct).toBeCloseTo(2 * slidePct - begunPct, 3);
	});

	it('gives nearly the same with half the time step', () => {
		const spec: ArmSpec = {
			...bareArm,
			friction: {staticMicroNm: 40, kineticShare: 0.7},
			wire: {springMicroNmPerDeg: 4, restRadiusMm: 80, twistMicroNm: 30},
			damping: {isIn: true, viscousMicroNmS: 500, yieldMicroNm: 5},
		};
		const start = placeGauge(freeAt(spec, restMm, 0), restMm);
		const from = {...start, swingRad: start.swingRad + 0.015};
		const [whole, half] = [advance(from, 3000, 1), advance(from, 3000, 0.5)];
		expect(whole.rateRadPerS).toBe(0);
		// 0.002 mm on the gauge, or 0.008 %: a twelfth of the finest reading step.
		expect(Math.abs(whole.swingRad - half.swingRad) * 200).toBeLessThan(0.002);
		expect(Math.abs(whole.swingRad - from.swingRad) * 200).toBeGreaterThan(0.5);
	});
});
