import {describe, expect, it} from 'vitest';
import {factsOf, type HoldLimits} from '../../source/procedure/facts.js';
import {closingOf, probeRounds, statedZero} from '../../source/procedure/hold-limits.js';
import type {Place} from '../../source/procedure/places.js';
import type {AnswerValue} from '../../source/procedure/step-ids.js';
import {limitAsked} from '../../source/procedure/steps-probe.js';
import {factsWith} from '../helpers/facts.js';
import {words} from '../helpers/said.js';

const bench = {
	'arm-length': 233,
	'arm-pivot-distance': 215.4,
	'radius-inner': 68,
	'radius-outer': 136,
	'gauge-unit': 'percent',
	'gauge-step': 0.5,
	'gauge-nudge': 0.5,
	'gauge-top': 20,
	'playing-force': 21,
	'guard-on': 'on',
	weighed: 'with',
	'force-reading': 21,
} as const;

const used = (innerLimit: number, outerLimit: number): HoldLimits => ({innerLimit, outerLimit});
const turned = (innerLimit: number, outerLimit: number): HoldLimits => ({innerLimit, outerLimit, gauge: 'turned'});

const factsAt = (taken: Readonly<Partial<Record<Place, readonly HoldLimits[]>>>) =>
	factsOf({
		answers: Object.fromEntries(Object.entries(bench).map(([id, value]) => [id, {value}])),
		rounds: (place) => taken[place] ?? [],
		limits: {pullGoodPct: 2, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6},
	});
const innerRounds = (taken: Parameters<typeof factsAt>[0]) =>
	probeRounds(factsAt(taken)).find(({place}) => place === 'inner')?.rounds;

describe('The rounds of a probe radius', () => {
	it('are at the inner radius those of the closing place too, the last of them closing the probe', () => {
		const inner = [used(3, 8.5), turned(-2.5, -8), used(3, 8)];
		expect(innerRounds({inner, closing: [used(2.5, 8)]})).toEqual([...inner, {...used(2.5, 8), closing: true}]);
		expect(innerRounds({inner, closing: [used(2, 8), used(2.5, 8)]})).toEqual([
			...inner,
			used(2, 8),
			{...used(2.5, 8), closing: true},
		]);
	});

	it('have none that closes the probe where it stands alone as used', () => {
		expect(innerRounds({inner: [turned(-2.5, -8)], closing: [used(2.5, 8)]})).toEqual([turned(-2.5, -8), used(2.5, 8)]);
		expect(innerRounds({closing: [used(2.5, 8)]})).toEqual([used(2.5, 8)]);
	});

	it('are none where there is no round as used', () => {
		expect(innerRounds({inner: [turned(-2.5, -8)]})).toEqual([]);
		expect(innerRounds({})).toEqual([]);
	});

	it('take nothing from the closing place at the outer radius', () => {
		const outer = [used(1.5, 5.5)];
		const found = probeRounds(factsAt({inner: [used(3, 8.5)], outer, closing: [used(2.5, 8)]}));
		expect(found.find(({place}) => place === 'outer')?.rounds).toEqual(outer);
	});
});

describe('The closing round', () => {
	const inner = [used(3, 8.5), turned(-2.5, -8), used(3, 8)];
	const outer = [used(1.5, 5.5), used(1.5, 5), used(2, 5.5)];

	it('is held against the other inner rounds as used, never against the turned one', () => {
		// 5.25 less the mean of 5.75 and 5.5. Pooled spread on 1 + 2 degrees of freedom: √((2 × 0.125² + 2 × 0.25²) / 3);
		// Student's t for 3 is 3.182446, and √(1 + 1/2) is for one more value against a mean of two.
		const allowed = 3.182446 * Math.sqrt((2 * 0.125 ** 2 + 2 * 0.25 ** 2) / 3) * Math.sqrt(1.5);
		const found = closingOf(factsAt({inner, outer, closing: [used(2.5, 8)]}));
		expect(found).toMatchObject({
			movedPct: expect.closeTo(-0.375, 12),
			allowedPct: expect.closeTo(allowed, 6),
			moved: false,
			tells: true,
		});
	});

	it('moved where it is farther off than that', () => {
		expect(closingOf(factsAt({inner, outer, closing: [used(4, 9.5)]}))?.moved).toBe(true);
		expect(closingOf(factsAt({inner, outer, closing: [used(3.75, 9.25)]}))?.moved).toBe(false);
	});

	it('says nothing where it stands alone', () => {
		expect(closingOf(factsAt({inner: [turned(-2.5, -8)], outer, closing: [used(2.5, 8)]}))).toBeUndefined();
		expect(closingOf(factsAt({inner, outer}))).toBeUndefined();
	});
});

describe('The zero of a gauge that was read free of the arm', () => {
	const zeroOf = (values: Readonly<Record<string, AnswerValue>>) => statedZero(factsWith({...bench, ...values}));

	it('is the mean of what was read, good to its step and half its drift', () => {
		// √(δ²/24 + (drift/2)²/3), with δ = 0.5 and a drift of 1: √(0.25/24 + 0.25/3).
		expect(zeroOf({'zero-free-before': 1, 'zero-free-after': 0})).toEqual({
			zero: expect.closeTo(0.5, 12),
			zeroUncertainty: expect.closeTo(Math.sqrt(0.25 / 24 + 0.25 / 3), 12),
		});
	});

	it('is better known from two readings that agree than from one', () => {
		expect(zeroOf({'zero-free-before': 0.5, 'zero-free-after': 0.5})?.zeroUncertainty).toBeCloseTo(0.5 / Math.sqrt(24));
		expect(zeroOf({'zero-free-before': 0.5, 'zero-free-after': null})).toEqual({
			zero: 0.5,
			zeroUncertainty: expect.closeTo(0.5 / Math.sqrt(12), 12),
		});
	});

	it('is in the unit of the gauge', () => {
		// 1 gf is 9.80665 mN (NIST SP 811 app. B.8).
		const inGrams = {'gauge-unit': 'gf', 'gauge-step': 0.1 * 9.80665, 'zero-free-before': 0.2 * 9.80665};
		expect(zeroOf(inGrams)).toEqual({
			zero: expect.closeTo(0.2, 9),
			zeroUncertainty: expect.closeTo(0.1 / Math.sqrt(12), 9),
		});
	});

	it('is not known where nothing was read', () => {
		expect(zeroOf({})).toBeUndefined();
		expect(zeroOf({'zero-free-before': null, 'zero-free-after': null})).toBeUndefined();
	});
});

describe('The question for a limit', () => {
	const direction = new RegExp(`\\b${words.written.sides.out}\\b`, 'i');

	it.each(['arm-out', 'arm-in', 'hand-out', 'hand-in'])(
		'asks for the sign as it stands on a turned gauge of kind %s, and names no direction of the arm',
		(sign) => {
			const facts = factsWith({'gauge-sign': sign});
			const showsHand = sign.startsWith('hand');
			for (const which of ['innerLimit', 'outerLimit'] as const) {
				const asked = limitAsked(facts, {which, gauge: 'turned'});
				expect(asked).toEqual({which, isTurned: true, showsHand});
				expect(limitAsked(facts, {which})).toEqual({which, isTurned: false, showsHand});
				const [turned, used] = [asked, limitAsked(facts, {which})].map(words.rounds.limit);
				expect(turned).toMatch(/\+.*−.*[.?]$/);
				expect(turned).not.toMatch(direction);
				expect(used).not.toBe(turned);
				// Where it shows the force of a hand, a word for a direction could be taken for that of the hand.
				if (showsHand) expect(used).toMatch(direction);
			}
		},
	);
});
