import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/decisions.json' with {type: 'json'};
import {type CheckedForce, changeBetween} from '../../source/measures/change.js';

const force = (valueMn: number, uncertaintyMn: number): CheckedForce => ({valueMn, uncertaintyMn});

describe('a change between two checks', () => {
	it.each(published.en)('has E_n $en', ({values: [one = 0, other = 0], uncertainties: [u = 0, v = 0], en}) => {
		const change = changeBetween(force(one, u), force(other, v), 10);
		// Four printed decimals.
		expect(Math.abs(change.en - en)).toBeLessThanOrEqual(0.00005);
		expect(change.differenceMn).toBeCloseTo(0.3, 12);
		// Satisfactory at 1 and below; 0.3 of 10 mN is well above half a percent.
		expect(change.verdict).toBe(en > 1 ? 'perhaps' : 'unchanged');
	});

	it('is now less then: above zero when it went toward the rim', () => {
		expect(changeBetween(force(-0.5, 0.1), force(0.25, 0.1), 21).differenceMn).toBe(0.75);
		expect(changeBetween(force(0.25, 0.1), force(-0.5, 0.1), 21).differenceMn).toBe(-0.75);
	});

	it('has the uncertainties of both checks, and nothing else', () => {
		expect(changeBetween(force(0, 3), force(1, 4), 21).uncertaintyMn).toBe(5);
		expect(changeBetween(force(0, 0), force(1, 0), 21).uncertaintyMn).toBe(0);
	});

	// By hand: uncertainties 0.03 and 0.04 make 0.05 together, so E_n is 1 at 0.05 and 1.31 at 0.0655; half a percent is
	// 0.04 of 8 mN, 0.05 of 10, 0.065 of 13, 0.07 of 14, 0.1 of 20.
	it.each([
		['unchanged', 'E_n is 1 to the last digit', 0.05, 8],
		['unchanged', 'the difference is within its uncertainty', -0.049, 8],
		['perhaps', 'E_n is above 1', 0.051, 8],
		['perhaps', 'E_n is above 1 the other way', -0.051, 8],
		['perhaps', 'E_n is 1.31 to the last digit', 0.0655, 8],
		['changed', 'E_n is above 1.31', 0.066, 8],
		['changed', 'E_n is above 1.31 the other way', -0.066, 8],
		['perhaps', 'it is just above half a percent', 0.0651, 13],
		['unchanged', 'it is sure but half a percent to the last digit', 0.07, 14],
		['changed', 'it is sure and just above half a percent', 0.0701, 14],
		['unchanged', 'it is sure but small', -0.09, 20],
	] as const)('is %s when %s', (verdict, _when, differenceMn, playingMn) => {
		expect(changeBetween(force(0.1, 0.03), force(0.1 + differenceMn, 0.04), playingMn).verdict).toBe(verdict);
	});

	it('is none between equal figures, and sure without any uncertainty', () => {
		expect(changeBetween(force(1, 0), force(1, 0), 21)).toMatchObject({en: 0, verdict: 'unchanged'});
		expect(changeBetween(force(1, 0), force(2, 0), 21)).toMatchObject({
			en: Number.POSITIVE_INFINITY,
			verdict: 'changed',
		});
	});
});

const value = fc.double({min: -5, max: 5, noNaN: true});
const uncertainty = fc.double({min: 0.01, max: 1, noNaN: true});
const check = fc.record({valueMn: value, uncertaintyMn: uncertainty});

describe('any change', () => {
	it('turns its sign, and nothing else, when the checks are swapped', () => {
		fc.assert(
			fc.property(check, check, (one, other) => {
				const there = changeBetween(one, other, 21);
				const back = changeBetween(other, one, 21);
				expect(back.differenceMn).toBeCloseTo(-there.differenceMn, 12);
				expect(back.uncertaintyMn).toBeCloseTo(there.uncertaintyMn, 12);
				expect(back.verdict).toBe(there.verdict);
			}),
		);
	});

	it('is the same when both figures are shifted alike', () => {
		fc.assert(
			fc.property(check, check, value, (one, other, byMn) => {
				const before = changeBetween(one, other, 21);
				const shifted = ({valueMn, uncertaintyMn}: CheckedForce) => force(valueMn + byMn, uncertaintyMn);
				const after = changeBetween(shifted(one), shifted(other), 21);
				expect(after.differenceMn).toBeCloseTo(before.differenceMn, 12);
				expect(after.uncertaintyMn).toBe(before.uncertaintyMn);
			}),
		);
	});

	it('keeps E_n when every force is scaled alike', () => {
		fc.assert(
			fc.property(check, check, fc.double({min: 0.5, max: 20, noNaN: true}), (one, other, by) => {
				const scaled = ({valueMn, uncertaintyMn}: CheckedForce) => force(valueMn * by, uncertaintyMn * by);
				const before = changeBetween(one, other, 21);
				const after = changeBetween(scaled(one), scaled(other), 21 * by);
				expect(after.uncertaintyMn).toBeCloseTo(before.uncertaintyMn * by, 9);
				expect(after.en).toBeCloseTo(before.en, 9);
			}),
		);
	});

	it('is never surer with more uncertainty', () => {
		fc.assert(
			fc.property(check, check, uncertainty, (one, other, moreMn) => {
				const before = changeBetween(one, other, 21).en;
				const wider = ({valueMn, uncertaintyMn}: CheckedForce) => force(valueMn, uncertaintyMn + moreMn);
				expect(changeBetween(wider(one), other, 21).en).toBeLessThanOrEqual(before);
				expect(changeBetween(one, wider(other), 21).en).toBeLessThanOrEqual(before);
			}),
		);
	});
});
