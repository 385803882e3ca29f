import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/decisions.json' with {type: 'json'};
import {bandBudget, expandedUncertainty, pullBudget} from '../../source/measures/uncertainty.js';
import {guardedVerdict, whatWouldDecide, zoneOf} from '../../source/measures/verdict.js';

const normal = 1.959963984540054;
const limits = {good: 2, usable: 4};

describe('a guarded verdict', () => {
	it.each(published.decisions)('decides as JCGM 106:2012 $clause', (row) => {
		const {value, standardUncertainty, good, usable, verdict, atWorst} = row;
		expect(guardedVerdict(value, normal * standardUncertainty, {good, usable})).toEqual({verdict, atWorst});
	});

	it.each([
		[2, 'good'],
		[2 + 1e-10, 'good'],
		[2.001, 'usable'],
		[4, 'usable'],
		[4.001, 'beyond'],
	] as const)('puts a size of %f in the zone %s: a limit belongs to the better side', (size, zone) => {
		expect(zoneOf(size, limits)).toBe(zone);
	});

	it('looks at the size alone, and never below zero', () => {
		expect(guardedVerdict(-3, 0.5, limits)).toEqual(guardedVerdict(3, 0.5, limits));
		expect(guardedVerdict(0.1, 1, limits)).toEqual({verdict: 'good', atWorst: 'good'});
	});
});

describe('what would decide', () => {
	const budget = {rounds: 2, repeatability: {sd: 0.5, degreesOfFreedom: 2}, reading: 0.05, rest: 0.05};

	it('is nothing where all is decided', () => {
		expect(whatWouldDecide(9, budget, limits)).toBeNull();
	});

	it('is three rounds while repeatability is unknown', () => {
		const once = {rounds: 1, repeatability: null, reading: 0.3, rest: 0};
		expect(whatWouldDecide(2.1, once, limits)).toEqual({rounds: 3});
	});

	it('is the fewest rounds with which the uncertainty fits', () => {
		// By hand, with t from JCGM 100:2008 table G.2: at 4 rounds u² = 0.0625 + 0.005, ν = 4·(0.0675/0.0625)² = 4.67,
		// t between 2.57 and 2.78, U between 0.67 and 0.72; at 3 rounds u² = 0.0883, ν = 3.4, t > 2.78, U > 0.82.
		expect(whatWouldDecide(2.75, budget, limits)).toEqual({rounds: 4});
	});

	it('is a finer step where step and nudge stand in the way', () => {
		const coarse = {rounds: 12, repeatability: {sd: 0.01, degreesOfFreedom: 22}, reading: 0.3, rest: 0.01};
		expect(whatWouldDecide(2.2, coarse, limits)).toEqual({finerStep: true});
	});

	it('is nothing more where the figure stands on the limit', () => {
		const coarse = {rounds: 3, repeatability: {sd: 0, degreesOfFreedom: 4}, reading: 0.3, rest: 0.2};
		expect(whatWouldDecide(2.01, coarse, limits)).toEqual({onLimit: true});
	});
});

describe('the uncertainty budget', () => {
	const gauge = {factor: 2, step: 0.5, nudge: 0.25, zeroUncertainty: 0.1, relativePct: 3};

	it('halves the limits for the pull: two rectangular parts of step/√12 (JCGM 100:2008 F.2.2.1)', () => {
		const {reading, rest} = pullBudget(-4, 3, null, gauge);
		const step = (2 * 0.5) / Math.sqrt(12);
		const nudge = (2 * 0.25) / Math.sqrt(12);
		expect(reading).toBeCloseTo(Math.hypot(step, step, nudge, nudge) / 2, 12);
		expect(rest).toBeCloseTo(Math.hypot(0.12, 0.2), 12);
	});

	it('takes their difference for the band, where the zero drops out', () => {
		const {reading, rest} = bandBudget(5, 3, null, gauge);
		const step = (2 * 0.5) / Math.sqrt(12);
		const nudge = (2 * 0.25) / Math.sqrt(12);
		expect(reading).toBeCloseTo(Math.hypot(step, step, nudge, nudge), 12);
		expect(rest).toBeCloseTo(0.15, 12);
	});

	it('covers with the normal factor while repeatability is unknown', () => {
		const {uncertaintyPct, degreesOfFreedom} = expandedUncertainty({
			rounds: 1,
			repeatability: null,
			reading: 3,
			rest: 4,
		});
		expect(uncertaintyPct).toBeCloseTo(5 * normal, 12);
		expect(degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
	});
});
