import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {emptyTally, type FigureTally} from '../../source/practice/coverage.js';
import {manyWays, onceWays, prove} from '../../source/practice/proof.js';
import {bars, holdingShare} from '../../source/practice/shortfalls.js';
import {compute} from '../../source/results/compute.js';

/** Each arm is probed in one of three ways: as many for every way. */
const armsEach = 6;
const proof = prove({arms: 3 * armsEach, seed: 1, compute});

const figures = ['pull', 'band'] as const;

function together(figure: (typeof figures)[number]): FigureTally {
	const sum = emptyTally()[figure];
	for (const {tally} of proof.ways) {
		sum.intervals += tally[figure].intervals;
		sum.holding += tally[figure].holding;
	}
	return sum;
}

describe('the ways of probing', () => {
	it('are three and five rounds, four steps and four scatters, set anew or not, and each of them once', () => {
		expect(manyWays).toHaveLength(2 * 4 * 4 * 2);
		expect(new Set(manyWays.map((way) => JSON.stringify(way))).size).toBe(manyWays.length);
		expect(new Set(manyWays.map(({rounds}) => rounds))).toEqual(new Set([3, 5]));
	});

	it('with one round alone stand by themselves', () => {
		expect(new Set(onceWays.map(({rounds}) => rounds))).toEqual(new Set([1]));
		expect(proof.once.map(({way}) => way)).toEqual(onceWays);
		expect(proof.ways.map(({way}) => way)).toEqual(manyWays);
	});
});

describe('the whole chain on invented arms', () => {
	it.each(figures)('states intervals of the %s that hold the truth', (figure) => {
		expect(holdingShare(together(figure))).toBeGreaterThanOrEqual(bars.holding);
	});

	it.each(manyWays.map((way, index) => [way, proof.ways[index]?.tally] as const))('does so with %o', (_way, tally) => {
		expect(tally?.arms).toBe(armsEach);
		for (const figure of figures) {
			const {intervals = 0, holding = 0} = tally?.[figure] ?? {};
			expect(intervals).toBeGreaterThan(1.8 * armsEach);
			// So few arms can miss the bar by chance: three standard deviations of a binomial count are allowed for. The command
			// with 500 arms allows far less.
			const chance = 3 * Math.sqrt(bars.holding * (1 - bars.holding) * intervals);
			expect(holding).toBeGreaterThanOrEqual(bars.holding * intervals - chance);
		}
	});

	it('calls no arm good that is beyond the limits', () => {
		const sum = (count: (tally: (typeof proof.ways)[number]['tally']) => number) =>
			proof.ways.reduce((all, {tally}) => all + count(tally), 0);
		expect(sum(({beyond}) => beyond)).toBeGreaterThan((manyWays.length * armsEach) / 4);
		expect(sum(({beyondCalledGood}) => beyondCalledGood)).toBe(0);
	});

	it('names every lesson, but for one that asks two intervals at once', () => {
		const missed = proof.lessons.filter(({named, of}) => named < of).map(({arm}) => arm.finding);
		expect(missed.filter((finding) => finding !== 'tilt-explains')).toEqual([]);
		expect(missed.length).toBeLessThan(proof.lessons.length / lessonArms.length / 2);
	});

	it('is the same from the same seed, and otherwise from another', () => {
		const few = (seed: number) => prove({arms: 1, seed, compute}).ways;
		expect(few(3)).toEqual(few(3));
		expect(few(4)).not.toEqual(few(3));
	});
});
