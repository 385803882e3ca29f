import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {
	bandPct,
	type LimitPair as Round,
	reachesTop,
	roundCentresPct,
	roundWidthsPct,
} from '../../source/measures/hold-band.js';
import {mean} from '../../source/measures/statistics.js';
import {carriedForceMn, forceScaleFactor, mnPerGram, percentScaleFactor} from '../../source/measures/tracking-force.js';

const reading = fc.double({min: -15, max: 15, noNaN: true});
const round = fc.tuple(reading, reading).map(([a, b]) => ({innerLimit: Math.min(a, b), outerLimit: Math.max(a, b)}));
const rounds = fc.array(round, {minLength: 1, maxLength: 6});

const middle = (some: readonly Round[], factor: number): number => mean(roundCentresPct(some, factor));
const span = (some: readonly Round[], factor: number): number => mean(roundWidthsPct(some, factor));

describe('pull and hold band', () => {
	it('tell friction from pull as Coulomb does (OpenStax University Physics 1, 6.2)', () => {
		// A hand starts the arm outward at +0.35 and inward at −0.15: friction 0.25, own pull −0.10. Turned into what
		// the arm exerts on the gauge, the limits are −0.35 and +0.15.
		const limits = [{innerLimit: -0.35, outerLimit: 0.15}];
		expect(middle(limits, 1)).toBeCloseTo(-0.1, 12);
		expect(span(limits, 1) / 2).toBeCloseTo(0.25, 12);
	});

	it('stand for each round apart, in percent of the playing force', () => {
		// Two percent for each unit: middles 5.75 and 5.5 of the gauge are 11.5 and 11 %, spans 5.5 and 5 are 11 and 10 %.
		const limits = [
			{innerLimit: 3, outerLimit: 8.5},
			{innerLimit: 3, outerLimit: 8},
		];
		expect(roundCentresPct(limits, 2)).toEqual([11.5, 11]);
		expect(roundWidthsPct(limits, 2)).toEqual([11, 10]);
	});

	it('come alike from a gauge turned end for end, the middle with the other sign', () => {
		const [used, turned] = [[{innerLimit: 3, outerLimit: 8}], [{innerLimit: -3, outerLimit: -8}]];
		expect(roundCentresPct(turned, 1)).toEqual([-5.5]);
		expect(roundWidthsPct(turned, 1)).toEqual(roundWidthsPct(used, 1));
	});

	it('mirror with the sides swapped', () => {
		fc.assert(
			fc.property(rounds, (some) => {
				const mirrored = some.map(({innerLimit, outerLimit}) => ({innerLimit: -outerLimit, outerLimit: -innerLimit}));
				expect(middle(mirrored, 1.1)).toBeCloseTo(-middle(some, 1.1), 9);
				expect(span(mirrored, 1.1)).toBeCloseTo(span(some, 1.1), 9);
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
				expect(middle(moved, 1)).toBeCloseTo(middle(some, 1) + shift, 9);
				expect(span(moved, 1)).toBeCloseTo(span(some, 1), 9);
			}),
		);
	});

	it('add a nudge to the band, since each limit stops half a nudge short', () => {
		// Spans of 4 and 6 % as read, and a nudge of 0.5 at two percent for each unit.
		expect(bandPct([4, 6], {factor: 2, nudge: 0.5})).toBe(6);
	});

	it('reach the top of the scale on either side, at it or past it', () => {
		expect([19.9, 20, -20, 20 - 1e-10].map((value) => reachesTop(value, 20))).toEqual([false, true, true, true]);
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
