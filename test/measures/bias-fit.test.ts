import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {type BiasProblem, biasFit, leftoverAt, ownPullAt, recordRadiiMm} from '../../source/measures/bias-fit.js';
import {radiusAtSwingMm, swingAngleDeg} from '../../source/measures/geometry.js';
import {wantedReadingPct} from '../../source/measures/skating.js';

const arm = {effectiveLengthMm: 233, pivotDistanceMm: 215.4};
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
						{radiusMm: 68, pct: ownInner},
						{radiusMm: 136, pct: ownOuter},
					],
					bias: [
						{radiusMm: 68, pct: biasInner},
						{radiusMm: 136, pct: biasOuter},
					],
				});
				const fit = biasFit(one);
				// A bias below half a percent at both radii is none.
				if (Math.max(Math.abs(biasInner), Math.abs(biasOuter)) < 0.4999) expect(fit).toBeNull();
				if (!fit) return;
				expect(worstOf(one, fit.factor)).toBeCloseTo(fit.worstAfterPct, 9);
				// Of all within 1e-9 of the least it takes the one nearest 1, so it may leave just that much more, and the rounding.
				for (let factor = 0; factor <= 5; factor += 0.125)
					expect(fit.worstAfterPct).toBeLessThanOrEqual(worstOf(one, factor) + 1e-9 + 1e-12);
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
		// Just so strong that 146 mm, where half a percent of bias acts, is no worse than 60 mm, where none does: skating
		// there is 30·(L² + r² − D²)/(2·L·r), and L² − D² is 7891.84.
		const skatingAt = (radiusMm: number) => (30 * (7891.84 + radiusMm ** 2)) / (2 * 233 * radiusMm);
		expect(fit?.factor).toBeCloseTo((skatingAt(146) - skatingAt(60)) / 0.5, 6);
		expect(fit?.factor).toBeGreaterThan(1);
		expect(worstOf(problem({bias: weak}), fit?.factor ?? 0)).toBeCloseTo(fit?.worstAfterPct ?? 0, 9);
	});

	it('stays as near as it can from above too', () => {
		// The same, four times as strong: a quarter of the factor just found is enough, so 1 is as good as any.
		const strong = [
			{radiusMm: 70, pct: 0},
			{radiusMm: 71, pct: 2},
			{radiusMm: 146, pct: 2},
		];
		expect(biasFit(problem({bias: strong}))?.factor).toBe(1);
		// So strong that 1 is too much: at 89 mm, where skating is least, it leaves more than 60 mm does.
		const tooStrong = strong.map((one) => ({...one, pct: 15 * one.pct}));
		const skatingAt = (radiusMm: number) => (30 * (7891.84 + radiusMm ** 2)) / (2 * 233 * radiusMm);
		expect(biasFit(problem({bias: tooStrong}))?.factor).toBeCloseTo((skatingAt(60) + skatingAt(89)) / 30, 6);
	});

	it('of the worked example is 1.72737 times the present one', () => {
		// Printed to six digits: pulls of 5.375 and 3.375 %, and a bias of 3.5 and 5.75 %.
		const fit = biasFit({
			arm,
			drag,
			own: [
				{radiusMm: 68, pct: 5.375},
				{radiusMm: 136, pct: 3.375},
			],
			bias: [
				{radiusMm: 136, pct: 5.75},
				{radiusMm: 68, pct: 3.5},
			],
		});
		expect(fit).toEqual({
			factor: expect.closeTo(1.72737, 5),
			worstBeforePct: expect.closeTo(3.75399, 5),
			worstAfterPct: expect.closeTo(0.909509, 6),
			worstAfterDragPct: expect.closeTo(2.96456, 5),
			rmsBeforePct: expect.closeTo(2.90665, 5),
			rmsAfterPct: expect.closeTo(0.704211, 6),
		});
	});

	it('says what is left were the drag 0.05 less or more, whichever is worse', () => {
		// Too weak a bias of the right shape at five times: 5/9 of skating, which at 146 mm were 0.35 in place of 0.3.
		const fraction = (radiusMm: number) => (7891.84 + radiusMm ** 2) / (2 * 233 * radiusMm);
		const weak = biasFit(problem({bias: shapedBias(9)}));
		expect(weak?.worstAfterDragPct).toBeCloseTo(100 * fraction(146) * (0.35 - (0.3 * 5) / 9), 6);
		// A pull of 30 % out, which no bias can take back: most is left where skating is least, with a drag of 0.25.
		const pulled = biasFit(problem({own: [{radiusMm: 100, pct: 30}], bias: shapedBias(1)}));
		expect(pulled?.worstAfterDragPct).toBeCloseTo(30 - 25 * fraction(89), 6);
	});

	it('is looked for with two radii', () => {
		const steady = [
			{radiusMm: 68, pct: 12},
			{radiusMm: 136, pct: 12},
		];
		expect(biasFit(problem({bias: steady}))).not.toBeNull();
	});

	it('is not looked for with one radius, without bias, or off the record', () => {
		expect(biasFit(problem({bias: [{radiusMm: 100, pct: 12}]}))).toBeNull();
		const nothing = [
			{radiusMm: 68, pct: 0.4999},
			{radiusMm: 136, pct: -0.4999},
		];
		expect(biasFit(problem({bias: nothing}))).toBeNull();
		const far = {effectiveLengthMm: 100, pivotDistanceMm: 300};
		expect(biasFit(problem({arm: far, bias: shapedBias(1)}))).toBeNull();
	});

	it('takes the own pull straight in the swing of the arm, and level outside', () => {
		const own = [
			{radiusMm: 68, pct: 1},
			{radiusMm: 136, pct: 3},
		];
		const middle = radiusAtSwingMm(arm, (swingAngleDeg(arm, 68) + swingAngleDeg(arm, 136)) / 2);
		expect(ownPullAt(arm, own, middle)).toBeCloseTo(2, 9);
		expect([60, 146].map((radiusMm) => ownPullAt(arm, own, radiusMm))).toEqual([1, 3]);
	});

	it('judges only the part of the record that the arm reaches', () => {
		expect(recordRadiiMm(arm)).toHaveLength(173);
		const short = recordRadiiMm({effectiveLengthMm: 100, pivotDistanceMm: 190});
		expect([short[0], short.at(-1)]).toEqual([90, 146]);
	});
});
