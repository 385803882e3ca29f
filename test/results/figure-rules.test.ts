import {describe, expect, it} from 'vitest';
import type {Document} from '../../source/results/document.js';
import {figuresOf} from '../../source/results/figures.js';
import {documentWith} from './example.js';

describe('the level', () => {
	const passes = (leftRight: number, limits: Document['limits'] = {}) => {
		const level = {stepDeg: 0.05, leftRightDeg: [leftRight, -leftRight], frontBackDeg: [0, 0]};
		return figuresOf(documentWith({pull: 1, band: 2}, {pull: 1, band: 2}, {level, limits})).level?.passes;
	};

	it('passes on its share of the pull: a quarter of the good limit, edited or not', () => {
		// 0.2° across is 0.35 % at most, 0.4° is 0.70 % at most; at 45° to the arm about seven tenths of that.
		expect(passes(0.2)).toBe(true);
		expect(passes(0.2, {pullGoodPct: 0.5})).toBe(false);
	});

	it('never passes a whole tilt above half a degree, even for an arm that does not lean', () => {
		const level = (leftRight: number) =>
			figuresOf(
				documentWith(
					{pull: 1, band: 2},
					{pull: 1, band: 2},
					{
						arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'spring'},
						level: {stepDeg: 0.05, leftRightDeg: [leftRight, -leftRight], frontBackDeg: [0, 0]},
					},
				),
			).level?.passes;
		expect([0.5, 0.51].map(level)).toEqual([true, false]);
	});
});

describe('the overall verdict', () => {
	const sizes = [
		['good', 1, 1, 'good', 'good'],
		['undecided with usable at worst, over good', 2, 1, 'undecided', 'usable'],
		['usable, over undecided with usable at worst', 2, 3, 'usable', 'usable'],
		['undecided with beyond at worst, over usable', 4, 3, 'undecided', 'beyond'],
		['beyond', 4, 6, 'beyond', 'beyond'],
	] as const;
	it.each(sizes)('is %s', (_case, inner, outer, verdict, atWorst) => {
		const figures = figuresOf(documentWith({pull: inner, band: 1}, {pull: outer, band: 1}));
		expect({verdict: figures.verdict, atWorst: figures.atWorst}).toEqual({verdict, atWorst});
	});

	it('counts other radii too', () => {
		const document = documentWith({pull: 1, band: 1}, {pull: 1, band: 1});
		const rounds = [{innerLimit: 8, outerLimit: 9}];
		expect(figuresOf({...document, probe: [...document.probe, {place: 'other', radiusMm: 100, rounds}]}).verdict).toBe(
			'beyond',
		);
	});
});

describe('the force carried', () => {
	it.each([
		['included', undefined, 18],
		['none', 0.5, 18],
		['left-out', 0.5, 18 + 4.903325],
	] as const)('takes a guard that was %s as the scale saw it', (guard, guardMassG, carriedMn) => {
		const trackingForce = {playingMn: 18, scaleReadingMn: 18, guard, ...(guardMassG !== undefined && {guardMassG})};
		const figures = figuresOf(documentWith({pull: 1, band: 2}, {pull: 1, band: 2}, {trackingForce}));
		expect(figures.carriedMn).toBeCloseTo(carriedMn, 9);
		expect(figures.scaleFactor).toBeCloseTo(carriedMn / 18, 9);
	});

	it('leans a spring-loaded arm with the weight of its guard alone', () => {
		const share = (loading: 'gravity' | 'spring', guardMassG: number) =>
			figuresOf(
				documentWith(
					{pull: 1, band: 2},
					{pull: 1, band: 2},
					{
						arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading},
						trackingForce: {playingMn: 9.80665, scaleReadingMn: 9.80665, guard: 'included', guardMassG},
						level: {stepDeg: 0, leftRightDeg: [1, -1], frontBackDeg: [0, 0]},
					},
				),
			).probe[0]?.tiltSharePct ?? 0;
		expect(share('spring', 0.5)).toBeCloseTo(share('gravity', 0.5) / 2, 9);
		expect(Math.abs(share('spring', 0))).toBe(0);
	});
});
