import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/decisions.json' with {type: 'json'};
import {type CheckedForce, changeBetween} from '../../source/measures/change.js';

const force = (valueMn: number, uncertaintyMn: number, playingMn = 10): CheckedForce => ({
	valueMn,
	uncertaintyMn,
	playingMn,
});

/** As if set up anew without any spread, so that uncertainties stay as given. */
const steady = {ownSpreadMn: 0};

describe('a change between two checks', () => {
	it.each(published.en)('has E_n $en', ({values: [one = 0, other = 0], uncertainties: [u = 0, v = 0], en}) => {
		const change = changeBetween(force(one, u), force(other, v), steady);
		// Four printed decimals.
		expect(Math.abs(change.en - en)).toBeLessThanOrEqual(0.00005);
		expect(change.differenceMn).toBeCloseTo(0.3, 12);
		// Satisfactory at 1 and below; 0.3 of 10 mN is well above half a percent.
		expect(change.verdict).toBe(en > 1 ? 'changed' : 'not changed');
	});

	it('is now less then: above zero when it went toward the rim', () => {
		expect(changeBetween(force(-0.5, 0.1), force(0.25, 0.1)).differenceMn).toBe(0.75);
		expect(changeBetween(force(0.25, 0.1), force(-0.5, 0.1)).differenceMn).toBe(-0.75);
	});

	it('gains re-seating in both checks, each by its own playing force', () => {
		// By hand, k = 1.960 of JCGM 100:2008 table G.2: 0.3 % of 10 mN is 0.0588, of 20 mN 0.1176; √(0.0588² + 0.1176²)
		// = 0.13148. The fourth decimal of k leaves 3e-5.
		expect(Math.abs(changeBetween(force(0, 0, 10), force(1, 0, 20)).uncertaintyMn - 0.13148)).toBeLessThan(5e-5);
	});

	it("takes the arm's own spread in place of the default", () => {
		// By hand: 1.960 × 0.1 mN twice, √2 × 0.196 = 0.27719 (2.7719 is the factor of ISO 5725-6 for repeatability limits).
		const change = changeBetween(force(0, 0), force(1, 0), {ownSpreadMn: 0.1});
		expect(Math.abs(change.uncertaintyMn - 0.27719)).toBeLessThan(5e-5);
		expect(changeBetween(force(0, 0.1), force(1, 0.1), {ownSpreadMn: undefined})).toEqual(
			changeBetween(force(0, 0.1), force(1, 0.1)),
		);
	});

	it('gains what the level leaves open in either check', () => {
		// By hand, sides of a box: √(2² + 3² + 6²) = 7.
		const then = {...force(0, 2), levelUncertaintyMn: 3};
		expect(changeBetween(then, force(1, 6), steady).uncertaintyMn).toBeCloseTo(7, 12);
		expect(changeBetween(force(0, 2), {...force(1, 6), levelUncertaintyMn: 3}, steady).uncertaintyMn).toBeCloseTo(
			7,
			12,
		);
	});

	// By hand: uncertainties 0.03 and 0.04 make 0.05 together; half a percent is 0.05 of 10 mN, 0.09 of 18, 0.11 of 22.
	it.each([
		['not changed', 'E_n is 1 to the last digit', 0.05, 8],
		['not changed', 'the difference is within its uncertainty', -0.049, 8],
		['changed', 'the difference is above both', 0.06, 10],
		['changed', 'it is above both the other way', -0.06, 10],
		['perhaps', 'it is sure but small', 0.06, 18],
		['perhaps', 'it is half a percent to the last digit', 0.11, 22],
	] as const)('is %s when %s', (verdict, _when, differenceMn, playingMn) => {
		const change = changeBetween(force(0.1, 0.03, 1), force(0.1 + differenceMn, 0.04, playingMn), steady);
		expect(change.verdict).toBe(verdict);
	});

	it('is none between equal figures, and sure without any uncertainty', () => {
		expect(changeBetween(force(1, 0), force(1, 0), steady)).toMatchObject({en: 0, verdict: 'not changed'});
		expect(changeBetween(force(1, 0), force(2, 0), steady)).toMatchObject({
			en: Number.POSITIVE_INFINITY,
			verdict: 'changed',
		});
	});
});

const value = fc.double({min: -5, max: 5, noNaN: true});
const uncertainty = fc.double({min: 0.01, max: 1, noNaN: true});
const check = fc.record({
	valueMn: value,
	uncertaintyMn: uncertainty,
	playingMn: fc.constant(18),
	levelUncertaintyMn: fc.option(uncertainty, {nil: undefined}),
});

describe('any change', () => {
	it('turns its sign, and nothing else, when the checks are swapped', () => {
		fc.assert(
			fc.property(check, check, (one, other) => {
				const there = changeBetween(one, other);
				const back = changeBetween(other, one);
				expect(back.differenceMn).toBeCloseTo(-there.differenceMn, 12);
				expect(back.uncertaintyMn).toBeCloseTo(there.uncertaintyMn, 12);
				expect(back.verdict).toBe(there.verdict);
			}),
		);
	});

	it('is the same when both figures are shifted alike', () => {
		fc.assert(
			fc.property(check, check, value, (one, other, byMn) => {
				const before = changeBetween(one, other);
				const after = changeBetween({...one, valueMn: one.valueMn + byMn}, {...other, valueMn: other.valueMn + byMn});
				expect(after.differenceMn).toBeCloseTo(before.differenceMn, 12);
				expect(after.uncertaintyMn).toBe(before.uncertaintyMn);
			}),
		);
	});

	it('keeps E_n when every force is scaled alike', () => {
		fc.assert(
			fc.property(check, check, fc.double({min: 0.5, max: 20, noNaN: true}), (one, other, by) => {
				const scaled = ({valueMn, uncertaintyMn, playingMn, levelUncertaintyMn = 0}: CheckedForce) => ({
					valueMn: valueMn * by,
					uncertaintyMn: uncertaintyMn * by,
					playingMn: playingMn * by,
					levelUncertaintyMn: levelUncertaintyMn * by,
				});
				const before = changeBetween(one, other);
				const after = changeBetween(scaled(one), scaled(other));
				expect(after.uncertaintyMn).toBeCloseTo(before.uncertaintyMn * by, 9);
				expect(after.en).toBeCloseTo(before.en, 9);
			}),
		);
	});

	it('is never surer with more uncertainty', () => {
		fc.assert(
			fc.property(check, check, uncertainty, (one, other, moreMn) => {
				const before = changeBetween(one, other).en;
				const wider = {...one, uncertaintyMn: one.uncertaintyMn + moreMn};
				expect(changeBetween(wider, other).en).toBeLessThanOrEqual(before);
				const tilted = {...other, levelUncertaintyMn: (other.levelUncertaintyMn ?? 0) + moreMn};
				expect(changeBetween(one, tilted).en).toBeLessThanOrEqual(before);
			}),
		);
	});
});
