import {describe, expect, it} from 'vitest';
import {compute} from '../../source/findings/compute.js';
import {chanceFrom} from '../../source/practice/chance.js';
import {emptyTally, type FigureTally} from '../../source/practice/coverage.js';
import {probed} from '../../source/practice/operator.js';
import {prove, radiiMm, ways} from '../../source/practice/proof.js';
import {randomArm} from '../../source/practice/random-arm.js';
import {bars, holdingShare, shortfalls} from '../../source/practice/shortfalls.js';

const arms = 40;
const proof = prove({arms, seed: 1, compute});

const figures = ['pull', 'band'] as const;

function together(figure: (typeof figures)[number]): FigureTally {
	const sum = emptyTally()[figure];
	for (const {tally} of proof.ways) {
		sum.intervals += tally[figure].intervals;
		sum.holding += tally[figure].holding;
	}
	return sum;
}

describe('the whole chain on invented arms', () => {
	it.each(figures)('states intervals of the %s that hold the truth', (figure) => {
		expect(holdingShare(together(figure))).toBeGreaterThanOrEqual(bars.holding);
	});

	it.each(ways.map((way, index) => [way, proof.ways[index]?.tally] as const))('does so with %o', (_way, tally) => {
		for (const figure of figures) {
			const {intervals = 0, holding = 0} = tally?.[figure] ?? {};
			expect(intervals).toBeGreaterThan(1.8 * arms);
			// So few arms can miss the bar by chance: three standard deviations of a binomial count are allowed for. The command
			// with 500 arms allows nothing.
			const chance = 3 * Math.sqrt(bars.holding * (1 - bars.holding) * intervals);
			expect(holding).toBeGreaterThanOrEqual(bars.holding * intervals - chance);
		}
	});

	it('calls no arm good that is beyond the limits', () => {
		for (const {tally} of proof.ways) {
			expect(tally.beyond).toBeGreaterThan(arms / 4);
			expect(tally.beyondCalledGood).toBe(0);
		}
	});

	it('names every lesson, but for one that asks two intervals at once', () => {
		const missed = proof.lessons.filter(({named, of}) => named < of).map(({arm}) => arm.finding);
		expect(missed.filter((finding) => finding !== 'tilt-explains')).toEqual([]);
		expect(missed.length).toBeLessThan(ways.length / 2);
	});

	it('reads the same from the same seed, and otherwise from another', () => {
		const task = {...randomArm(chanceFrom(3)), radiiMm, rounds: 3, nudgeSteps: 1, readsBias: false};
		expect(probed(task, 9)).toEqual(probed(task, 9));
		expect(probed(task, 10).probe).not.toEqual(probed(task, 9).probe);
	});

	it('says in a sentence where it falls short', () => {
		const tally = {...emptyTally(), arms: 1, beyond: 1, beyondCalledGood: 1};
		tally.pull = {...tally.pull, intervals: 10, holding: 9};
		const [first, second, ...more] = shortfalls({
			ways: [{way: {rounds: 3, stepPct: 0.1, nudgeSteps: 2}, tally}],
			restless: [],
			lessons: [],
		});
		expect(first).toBe('3 rounds, step 0.1 %, nudge 0.2 %: the interval of the pull holds in 90.0 %');
		expect(second).toBe('3 rounds, step 0.1 %, nudge 0.2 %: 100.0 % of the arms beyond the limits are called good');
		expect(more).toEqual([]);
	});
});
