import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {somethingMoved} from '../../source/measures/closing-round.js';
import {gaugeZero, gaugeZeroUncertainty} from '../../source/measures/gauge-zero.js';
import {bandPct, pullPct, reachesTop} from '../../source/measures/hold-band.js';
import {carriedForceMn, forceScaleFactor, mnPerGram, percentScaleFactor} from '../../source/measures/tracking-force.js';

const plain = {factor: 1, zero: 0, nudge: 0};
const reading = fc.double({min: -15, max: 15, noNaN: true});
const round = fc.tuple(reading, reading).map(([a, b]) => ({innerLimit: Math.min(a, b), outerLimit: Math.max(a, b)}));
const rounds = fc.array(round, {minLength: 1, maxLength: 6});

describe('pull and hold band', () => {
	it('tell friction from pull as Coulomb does (OpenStax University Physics 1, 6.2)', () => {
		// A hand starts the arm outward at +0.35 and inward at −0.15: friction 0.25, own pull −0.10. Turned into what
		// the arm exerts on the gauge, the limits are −0.35 and +0.15.
		const limits = [{innerLimit: -0.35, outerLimit: 0.15}];
		expect(pullPct(limits, plain)).toBeCloseTo(-0.1, 12);
		expect(bandPct(limits, plain) / 2).toBeCloseTo(0.25, 12);
	});

	it('mirror with the sides swapped', () => {
		fc.assert(
			fc.property(rounds, reading, (some, zero) => {
				const mirrored = some.map(({innerLimit, outerLimit}) => ({innerLimit: -outerLimit, outerLimit: -innerLimit}));
				const scale = {factor: 1.1, zero, nudge: 0.5};
				const turned = {...scale, zero: -zero};
				expect(pullPct(mirrored, turned)).toBeCloseTo(-pullPct(some, scale), 9);
				expect(bandPct(mirrored, turned)).toBeCloseTo(bandPct(some, scale), 9);
			}),
		);
	});

	it('shift in the pull alone when both limits shift', () => {
		fc.assert(
			fc.property(rounds, reading, (some, shift) => {
				const moved = some.map(({innerLimit, outerLimit}) => ({
					innerLimit: innerLimit + shift,
					outerLimit: outerLimit + shift,
				}));
				expect(pullPct(moved, plain)).toBeCloseTo(pullPct(some, plain) + shift, 9);
				expect(bandPct(moved, plain)).toBeCloseTo(bandPct(some, plain), 9);
			}),
		);
	});

	it('add a nudge to the band, since each limit stops half a nudge short', () => {
		expect(bandPct([{innerLimit: 1, outerLimit: 3}], {factor: 2, zero: 5, nudge: 0.5})).toBe(5);
	});

	it('reach the top of the scale on either side, at it or past it', () => {
		expect([15.9, 16, -16, 16 - 1e-10].map((value) => reachesTop(value, 16))).toEqual([false, true, true, true]);
	});
});

describe('the force carried', () => {
	it('gains the weight of a guard left out: 1 gf is 9.80665 mN (NIST SP 811 B.8, standard gravity)', () => {
		expect(mnPerGram).toBe(9.80665);
		expect(carriedForceMn(10, 2)).toBeCloseTo(29.6133, 10);
	});

	it('makes percent of the playing force from percent carried, mN and gf', () => {
		expect(percentScaleFactor(19, 20)).toBeCloseTo(0.95, 12);
		expect(forceScaleFactor(1, 20)).toBeCloseTo(5, 12);
		// 2 gf are 19.6133 mN: a gauge of gf that shows 2 under 19.6133 mN shows all of it.
		expect(2 * forceScaleFactor(9.80665, 19.6133)).toBeCloseTo(100, 10);
	});
});

describe("the gauge's zero", () => {
	it('is what stays when the gauge is turned end for end, as a level by reversal', () => {
		// Pull 3, zero 0.25: 3.25 one way, −2.75 the other.
		expect(gaugeZero(3.25, -2.75)).toBeCloseTo(0.25, 12);
	});

	it('is as sure as half the sum of two centres (JCGM 100:2008 5.1.2, each centre to step/√24)', () => {
		const centre = Math.sqrt(0.5 ** 2 / 24 + 0.25 ** 2 / 24 + 0.1 ** 2);
		expect(gaugeZeroUncertainty({step: 0.5, nudge: 0.25, centreSd: 0.1})).toBeCloseTo(
			Math.sqrt(centre ** 2 + centre ** 2) / 2,
			12,
		);
		expect(gaugeZeroUncertainty({step: 0.5, nudge: 0})).toBeCloseTo(0.5 / Math.sqrt(48), 12);
	});
});

describe('the closing round', () => {
	it('speaks up only past both twice its spread and half a percent', () => {
		// 2·0.3·√(1 + 1/3) = 0.6928 by hand.
		expect(somethingMoved(5.69, 5, 3, 0.3)).toBe(false);
		expect(somethingMoved(5.7, 5, 3, 0.3)).toBe(true);
		expect(somethingMoved(5.5, 5, 3, 0.01)).toBe(false);
		expect(somethingMoved(4.49, 5, 3, 0.01)).toBe(true);
	});

	it('holds to half a percent while the spread is unknown', () => {
		expect([5.5, 5.51].map((closing) => somethingMoved(closing, 5, 1, null))).toEqual([false, true]);
	});
});
