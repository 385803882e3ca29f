import {describe, expect, it} from 'vitest';
import {closingRound} from '../../source/measures/closing-round.js';

const step = {reading: 0, settingUp: 0};

/** Rounds that all read 5 but for a scatter of 0.3: two groups of two with ±0.3/√2 about their mean. */
const scattered = (sd: number) => [
	[5 - sd / Math.SQRT2, 5 + sd / Math.SQRT2],
	[2 - sd / Math.SQRT2, 2 + sd / Math.SQRT2],
];

describe('the closing round', () => {
	it('of the worked example lies 0.375 % below the others, where 0.890 % is no change', () => {
		// Middles 5.75 and 5.5, then 5.25; elsewhere 3.5, 3.25 and 3.75, one turned. s² = (0.03125 + 0.125)/3 = 0.0520833 is
		// more than r² = 0.5/24 of step and nudge; t for 3 is 3.18 (JCGM 100:2008 table G.2): 3.18·√(0.0520833·(1 + 1/2)).
		const closing = closingRound({
			centrePct: 5.25,
			othersPct: [5.75, 5.5],
			groupsPct: [[5.75, 5.5], [-5.25], [3.5, 3.25, 3.75], []],
			reading: 0.5 / 24,
			settingUp: 0,
		});
		expect(closing.movedPct).toBeCloseTo(-0.375, 12);
		expect(Math.abs(closing.allowedPct - 3.18 * 0.2795085)).toBeLessThan(0.005 * 0.2795085);
		expect(closing.moved).toBe(false);
	});

	it('may lie as far off as one more value of the scatter of the others may', () => {
		// s = 0.3 with 2 degrees of freedom, t = 4.3027: 4.3027·0.3·√(1 + 1/3) = 1.49050.
		const at = (centrePct: number) =>
			closingRound({centrePct, othersPct: [5, 5, 5], groupsPct: scattered(0.3), ...step});
		expect(at(5).allowedPct).toBeCloseTo(1.4905, 4);
		expect([at(6.4904).moved, at(6.4906).moved, at(3.5096).moved, at(3.5094).moved]).toEqual([
			false,
			true,
			false,
			true,
		]);
		expect(at(3).movedPct).toBeCloseTo(-2, 12);
	});

	it('gains by more of the others', () => {
		const with1 = closingRound({centrePct: 5, othersPct: [5], groupsPct: scattered(0.3), ...step});
		// 4.3027·0.3·√2 = 1.82549.
		expect(with1.allowedPct).toBeCloseTo(1.82549, 4);
	});

	it('takes step and nudge where they are more than the scatter, never both', () => {
		// √(0.16·(4/3))·4.3027 = 1.98733; with a scatter of 0.3 beside it the same.
		const coarse = {centrePct: 5, othersPct: [5, 5, 5], reading: 0.16, settingUp: 0};
		expect(closingRound({...coarse, groupsPct: scattered(0.1)}).allowedPct).toBeCloseTo(1.98733, 4);
		expect(closingRound({...coarse, groupsPct: scattered(0.3)}).allowedPct).toBeCloseTo(1.98733, 4);
	});

	it('is set up apart from the others where the gauge is not set anew', () => {
		// 4.3027·√(0.09·4/3 + 2·0.09) = 2.35669.
		const closing = closingRound({
			centrePct: 5,
			othersPct: [5, 5, 5],
			groupsPct: scattered(0.3),
			reading: 0,
			settingUp: 0.09,
		});
		expect(closing.allowedPct).toBeCloseTo(2.35669, 4);
	});

	it('assumes 0.3 % beside step and nudge where no two rounds are alike, with the normal factor', () => {
		// 1.959964·√((0.09 + 0.02)·2 + 2·0.09) = 1.23958.
		const closing = closingRound({
			centrePct: 5.9,
			othersPct: [5],
			groupsPct: [[5], [-4.9], [3]],
			reading: 0.02,
			settingUp: 0.09,
		});
		expect(closing.allowedPct).toBeCloseTo(1.239594, 5);
		expect(closing.movedPct).toBeCloseTo(0.9, 12);
		expect(closing.moved).toBe(false);
	});

	it('has moved by more than half a percent, however well the others agree', () => {
		const exact = (centrePct: number) => closingRound({centrePct, othersPct: [5, 5], groupsPct: [[5, 5]], ...step});
		expect(exact(5).allowedPct).toBe(0.5);
		expect([5.5, 5.51, 4.5, 4.49].map((centrePct) => exact(centrePct).moved)).toEqual([false, true, false, true]);
	});
});
