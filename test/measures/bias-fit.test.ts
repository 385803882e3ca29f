import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {type BiasProblem, biasFit, leftoverAt, ownPullAt, recordRadiiMm} from '../../source/measures/bias-fit.js';
import {radiusAtSwingMm, swingAngleDeg} from '../../source/measures/geometry.js';
import {wantedReadingPct} from '../../source/measures/skating.js';

const arm = {effectiveLengthMm: 229, pivotDistanceMm: 211.3};
const drag = 0.3;
const problem = (more: Partial<BiasProblem>): BiasProblem => ({
	arm,
	drag,
	own: [{radiusMm: 100, pct: 0}],
	bias: [],
	...more,
});

/** A bias of the very shape of skating, so many times too weak. */
const shapedBias = (weaker: number) =>
	recordRadiiMm(arm).map((radiusMm) => ({radiusMm, pct: wantedReadingPct(arm, drag, radiusMm) / weaker}));

const worstOf = (one: BiasProblem, factor: number): number =>
	Math.max(...recordRadiiMm(one.arm).map((radiusMm) => Math.abs(leftoverAt(one, radiusMm, factor))));

describe('the best setting of a bias device', () => {
	it('is the factor by which a bias of the right shape is too weak, and leaves nothing', () => {
		const fit = biasFit(problem({bias: shapedBias(1.7)}));
		expect(fit?.factor).toBeCloseTo(1.7, 6);
		expect(fit?.worstAfterPct).toBeCloseTo(0, 6);
		expect(fit?.worstBeforePct).toBeCloseTo(wantedReadingPct(arm, drag, 146) * (1 - 1 / 1.7), 9);
	});

	it('is 5 at most and 0 at least', () => {
		expect(biasFit(problem({bias: shapedBias(9)}))?.factor).toBeCloseTo(5, 6);
		expect(biasFit(problem({bias: shapedBias(-2)}))?.factor).toBeCloseTo(0, 6);
	});

	it('leaves less than any other factor, on a grid of factors', () => {
		const force = fc.double({min: -6, max: 14, noNaN: true});
		fc.assert(
			fc.property(force, force, force, force, (ownInner, ownOuter, biasInner, biasOuter) => {
				const one = problem({
					own: [
						{radiusMm: 65, pct: ownInner},
						{radiusMm: 140, pct: ownOuter},
					],
					bias: [
						{radiusMm: 65, pct: biasInner},
						{radiusMm: 140, pct: biasOuter},
					],
				});
				const fit = biasFit(one);
				if (!fit) return;
				expect(worstOf(one, fit.factor)).toBeCloseTo(fit.worstAfterPct, 9);
				for (let factor = 0; factor <= 5; factor += 0.125)
					expect(fit.worstAfterPct).toBeLessThanOrEqual(worstOf(one, factor) + 1e-9);
				expect(fit.worstAfterPct).toBeLessThanOrEqual(fit.worstBeforePct + 1e-9);
				expect(fit.rmsAfterPct).toBeLessThanOrEqual(fit.worstAfterPct + 1e-9);
			}),
			{numRuns: 60},
		);
	});

	it('stays as near to the present one as it can where several are equally good', () => {
		// No bias at all inside 70 mm: there 12 % are left whatever the factor, and that is the worst.
		const bias = [
			{radiusMm: 70, pct: 0},
			{radiusMm: 71, pct: 12.5},
			{radiusMm: 146, pct: 12.5},
		];
		expect(biasFit(problem({bias}))?.factor).toBe(1);
		const weak = bias.map((one) => ({...one, pct: one.pct / 25}));
		const fit = biasFit(problem({bias: weak}));
		// Just so strong that the outside is no worse than the inside.
		expect(fit?.factor).toBeGreaterThan(1);
		expect(worstOf(problem({bias: weak}), fit?.factor ?? 0)).toBeCloseTo(fit?.worstAfterPct ?? 0, 9);
	});

	it('is not looked for with one radius, without bias, or off the record', () => {
		expect(biasFit(problem({bias: [{radiusMm: 100, pct: 12}]}))).toBeNull();
		const nothing = [
			{radiusMm: 65, pct: 0.0999},
			{radiusMm: 140, pct: -0.0999},
		];
		expect(biasFit(problem({bias: nothing}))).toBeNull();
		const far = {effectiveLengthMm: 100, pivotDistanceMm: 300};
		expect(biasFit(problem({arm: far, bias: shapedBias(1)}))).toBeNull();
	});

	it('takes the own pull straight in the swing of the arm, and level outside', () => {
		const own = [
			{radiusMm: 65, pct: 1},
			{radiusMm: 140, pct: 3},
		];
		const middle = radiusAtSwingMm(arm, (swingAngleDeg(arm, 65) + swingAngleDeg(arm, 140)) / 2);
		expect(ownPullAt(arm, own, middle)).toBeCloseTo(2, 9);
		expect([60, 146].map((radiusMm) => ownPullAt(arm, own, radiusMm))).toEqual([1, 3]);
	});

	it('judges only the part of the record that the arm reaches', () => {
		expect(recordRadiiMm(arm)).toHaveLength(173);
		const short = recordRadiiMm({effectiveLengthMm: 100, pivotDistanceMm: 190});
		expect([short[0], short.at(-1)]).toEqual([90, 146]);
	});
});
