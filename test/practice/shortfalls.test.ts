import * as fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {emptyTally} from '../../source/practice/coverage.js';
import type {ProbingWay, Proof} from '../../source/practice/proof.js';
import {bars, lessonTotal, shareInterval, shortfalls} from '../../source/practice/shortfalls.js';

/** 0.995 quantile of the normal distribution, as tables print it; its square is the 0.99 quantile of χ² with one degree. */
const quantile = 2.5758;
const chiSquare = 6.6349;

describe('the interval of a share', () => {
	it('ends where the counted share lies just so many standard deviations off', () => {
		// E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209: |share − p| = z·√(p·(1 − p)/n) at both ends p.
		const counts = fc
			.integer({min: 1, max: 5000})
			.chain((of) => fc.tuple(fc.integer({min: 0, max: of}), fc.constant(of)));
		fc.assert(
			fc.property(counts, ([counted, of]) => {
				const [low, high] = shareInterval(counted, of);
				const share = counted / of;
				for (const end of [low, high]) {
					const apart = quantile * Math.sqrt((Math.max(0, end) * Math.max(0, 1 - end)) / of);
					// The quantile is good to half a unit of its fourth digit, 2e-5 of itself.
					expect(Math.abs(Math.abs(share - end) - apart)).toBeLessThan(5e-5);
				}
				expect(low).toBeLessThanOrEqual(share + 1e-12);
				expect(high).toBeGreaterThanOrEqual(share - 1e-12);
			}),
			{seed: 1, numRuns: 200},
		);
	});

	it('of nothing in twenty, and of all twenty, is what the formula leaves there', () => {
		// At a share of 0 both ends are 0 and z²/(n + z²); at 1 the same from above.
		const end = chiSquare / (20 + chiSquare);
		const [[none, most], [least, all]] = [shareInterval(0, 20), shareInterval(20, 20)];
		for (const [found, wanted] of [
			[none, 0],
			[most, end],
			[least, 1 - end],
			[all, 1],
		] as const)
			expect(Math.abs(found - wanted)).toBeLessThan(1e-5);
	});

	it('of a half is even: z/(2·√(n + z²)) either way', () => {
		const half = quantile / (2 * Math.sqrt(100 + chiSquare));
		const [low, high] = shareInterval(50, 100);
		expect(Math.abs(low - (0.5 - half))).toBeLessThan(1e-5);
		expect(Math.abs(high - (0.5 + half))).toBeLessThan(1e-5);
	});

	it('of a share of none says nothing', () => {
		expect(shareInterval(0, 0)).toEqual([0, 1]);
	});
});

const way: ProbingWay = {rounds: 3, stepPct: 0.1, scatterPct: 0.15, setAnew: true};

const proofWith = (change: Partial<Proof>): Proof => ({ways: [], once: [], restless: [], lessons: [], ...change});

function tallyWith(figure: 'pull' | 'band', holding: number, intervals: number) {
	const tally = emptyTally();
	tally[figure] = {...tally[figure], intervals, holding};
	return tally;
}

const badTally = () => ({...tallyWith('pull', 900, 1000), beyond: 100, beyondCalledGood: 50});

describe('where a proof falls short', () => {
	it('is told of each, with the way of probing', () => {
		expect(shortfalls(proofWith({ways: [{way, tally: badTally()}]}))).toEqual([
			{id: 'interval-too-narrow', values: {way, figure: 'pull', holding: 0.9}},
			{id: 'called-good', values: {way, share: 0.5}},
		]);
		const once = {...way, rounds: 5, setAnew: false};
		expect(shortfalls(proofWith({ways: [{way: once, tally: tallyWith('band', 900, 1000)}]}))).toEqual([
			{id: 'interval-too-narrow', values: {way: once, figure: 'band', holding: 0.9}},
		]);
	});

	it('is not what chance explains', () => {
		// Of 100 intervals 91 hold: a true share of 94 % is 3 points off, not much above one standard deviation of 2.4 points.
		expect(shortfalls(proofWith({ways: [{way, tally: tallyWith('pull', 91, 100)}]}))).toEqual([]);
		// Of 100 intervals 85 hold: 9 points, nearly four standard deviations.
		expect(shortfalls(proofWith({ways: [{way, tally: tallyWith('pull', 85, 100)}]}))).toHaveLength(1);
	});

	it('is not asked of one round alone, nor of arms that wander', () => {
		const ways = [{way, tally: badTally()}];
		expect(shortfalls(proofWith({once: ways, restless: ways}))).toEqual([]);
	});

	it('is a lesson that is named too seldom, in all ways together', () => {
		const [arm] = lessonArms;
		if (!arm) throw new Error('There is no practice arm.');
		const lessons = [
			{way, arm, named: 60, of: 100},
			{way: {...way, rounds: 5}, arm, named: 80, of: 100},
		];
		expect(lessonTotal(proofWith({lessons}), arm.id)).toEqual({named: 140, of: 200});
		expect(shortfalls(proofWith({lessons}))).toEqual([
			{id: 'lesson-not-named', values: {arm: arm.id, finding: arm.finding, named: 140, of: 200}},
		]);
		expect(shortfalls(proofWith({lessons: lessons.map((one) => ({...one, named: bars.lesson * 100}))}))).toEqual([]);
	});
});
