import {describe, expect, it} from 'vitest';
import published from '../../shared/check-values/decisions.json' with {type: 'json'};
import {
	type Figure,
	gravest,
	guardedVerdict,
	type Judged,
	whatWouldDecide,
	zoneOf,
} from '../../source/measures/verdict.js';

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

describe('the gravest of several verdicts', () => {
	const inOrder: readonly Judged[] = [
		{verdict: 'good', atWorst: 'good'},
		{verdict: 'undecided', atWorst: 'usable'},
		{verdict: 'usable', atWorst: 'usable'},
		{verdict: 'undecided', atWorst: 'beyond'},
		{verdict: 'beyond', atWorst: 'beyond'},
		{verdict: 'off-scale', atWorst: 'off-scale'},
	];

	it('stands for all of them, in whatever order they come', () => {
		for (const [index, graver] of inOrder.entries())
			for (const milder of inOrder.slice(0, index)) {
				expect(gravest(milder, graver)).toBe(graver);
				expect(gravest(graver, milder)).toBe(graver);
				expect(gravest(milder, graver, milder)).toBe(graver);
			}
	});

	it('is the first of equals', () => {
		const [first, second] = [
			{verdict: 'usable', atWorst: 'usable'} as const,
			{verdict: 'usable', atWorst: 'usable'} as const,
		];
		expect(gravest(first, second)).toBe(first);
	});
});

/** A figure whose rounds scatter by a variance with 4 degrees of freedom, one more with each round more. */
const figureOf = ({
	used = 3,
	scatter = 0,
	reading = 0,
	rest = 0,
	...more
}: {value: number; used?: number; scatter?: number; reading?: number; rest?: number} & Partial<Figure>): Figure => ({
	used,
	isAssumed: false,
	budgetWith: (moreRounds, isFiner) => ({
		scatter: scatter / (used + moreRounds),
		common: rest + (isFiner ? 0 : reading),
		degreesOfFreedom: 4 + moreRounds,
	}),
	...more,
});

/** A figure that is known to ± u, whatever is done. */
const sure = (value: number, uncertainty: number): Figure => figureOf({value, rest: (uncertainty / normal) ** 2});

describe('what would decide', () => {
	it('is nothing where no limit lies inside the interval', () => {
		expect([9, -9, 1.5, 3, 2.41].map((value) => whatWouldDecide(sure(value, 0.4), limits))).toEqual(
			Array(5).fill(null),
		);
	});

	it('is nothing where a limit is the very end of the interval', () => {
		expect(whatWouldDecide(sure(2.5, 0.5), limits)).toBeNull();
		expect(whatWouldDecide(sure(1.5, 0.5), limits)).toBeNull();
		expect(whatWouldDecide(sure(2.5, 0.501), limits)).not.toBeNull();
		expect(whatWouldDecide(sure(-2.5, 0.501), limits)).not.toBeNull();
		expect(whatWouldDecide(sure(1.5, 0.501), limits)).not.toBeNull();
	});

	it('is three rounds while the scatter is assumed, or fewer than three were taken', () => {
		const close = {value: 2.1, rest: 1};
		expect(whatWouldDecide(figureOf({...close, used: 1, isAssumed: true}), limits)).toEqual({rounds: 3});
		expect(whatWouldDecide(figureOf({...close, used: 5, isAssumed: true}), limits)).toEqual({rounds: 3});
		expect(whatWouldDecide(figureOf({...close, used: 2}), limits)).toEqual({rounds: 3});
		expect(whatWouldDecide(figureOf({...close, used: 3}), limits)).toEqual({onLimit: true});
	});

	// By hand, t from JCGM 100:2008 table G.2 (2.12 for 16, 2.06 for 25), u² = 0.25/m + 0.05:
	// 3 rounds: u 0.365, ν = 4·(1.6)² = 10.2, t 2.2 and more, U above 0.80.
	// 4 rounds: u 0.3354, ν = 5·(1.8)² = 16.2, U 0.709 to 0.713; 5 rounds: u 0.3162, ν = 6·2² = 24, U 0.650 to 0.670.
	it.each([
		[2.72, 4],
		[2.68, 5],
		[-2.68, 5],
		[4.68, 5],
		[3.32, 5],
	])('is for %d the fewest rounds with which the uncertainty fits: %d', (value, rounds) => {
		expect(whatWouldDecide(figureOf({value, scatter: 0.25, rest: 0.05}), limits)).toEqual({rounds});
	});

	it('is rounds only as far as twelve', () => {
		// u² = 1/m: at 11 rounds ν is 12 and t 2.18, U 0.657; at 12 rounds ν is 13 and t 2.16, U 0.624; at 13 ν 14, U 0.595.
		const at = (value: number) => whatWouldDecide(figureOf({value, scatter: 1}), limits);
		expect(at(2.64)).toEqual({rounds: 12});
		expect(at(2.61)).toEqual({onLimit: true});
	});

	it('goes by the nearest limit where both lie inside', () => {
		// 2.5 ± 1.8 reaches both; 0.5 % is asked for, which 1.96·√0.05 = 0.44 fits and the scatter must go for.
		const at = (rest: number) => whatWouldDecide(figureOf({value: 2.5, used: 11, rest, reading: 0.8}), limits);
		expect(at(0.05)).toEqual({finerStep: true});
		expect(at(0.1)).toEqual({onLimit: true});
	});

	it('is a finer step where step and nudge stand in the way', () => {
		// 1.96·√0.1 = 0.62 as it is; 1.96·√0.01 = 0.196 with a finer step.
		const at = (value: number, used = 3) => whatWouldDecide(figureOf({value, used, reading: 0.09, rest: 0.01}), limits);
		expect(at(2.3)).toEqual({finerStep: true});
		expect(at(2.3, 11)).toEqual({finerStep: true});
		// As it is at twelve rounds, where nobody is sent on.
		expect(at(2.3, 12)).toEqual({onLimit: true});
		expect(at(2.1)).toEqual({onLimit: true});
	});

	it('is a finer step at twelve rounds, with the scatter of twelve', () => {
		// u² = 0.4/12 at twelve rounds, ν 13, t 2.16: U 0.394; at eleven 0.4/11, ν 12, t 2.18: 0.416.
		const at = (value: number) => whatWouldDecide(figureOf({value, scatter: 0.4, reading: 1}), limits);
		expect(at(2.4)).toEqual({finerStep: true});
		expect(at(2.39)).toEqual({onLimit: true});
	});

	it('fits where uncertainty and distance are equal', () => {
		const rest = (0.3 / normal) ** 2;
		expect(whatWouldDecide(figureOf({value: 2.3, reading: 1, rest}), limits)).toEqual({finerStep: true});
		expect(whatWouldDecide(figureOf({value: 2.2999, reading: 1, rest}), limits)).toEqual({onLimit: true});
	});
});
