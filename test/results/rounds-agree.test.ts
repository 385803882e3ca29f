import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {roundsApart} from '../../source/measures/hold-band.js';
import {viewOf} from '../../source/pages/view.js';
import {compute} from '../../source/results/compute.js';
import {inOrder, withAnyNumbers, words} from '../helpers/said.js';
import {northDeckWith} from '../helpers/sample-check.js';
import {follow, freshDialogue, type Script, say, text} from '../helpers/script.js';
import {example} from './example.js';

// Invented readings. That two careful rounds differ by about a step: common practice, no source.

const seen = (dialogue: Dialogue): string =>
	viewOf(dialogue)
		.shown.map((one) => (one.kind === 'line' ? one.text : one.caption))
		.join('\n');
/** A gauge that cannot be turned, and was not read free: every round is one as used. */
const notTurned = {'gauge-turns': 'no', 'zero-free-before': '-', 'zero-free-after': '-'};
const asUsed: Script['rounds'] = {
	inner: [
		['3 out', '8.5 out'],
		['3 out', '8 out'],
		['2.5 out', '8 out'],
	],
};

/** After these rounds at a place, on a gauge with steps of 0.5 % and nudges of 0.5 %. */
const shownAfter = (
	place: 'inner' | 'outer' | 'closing',
	limits: readonly string[],
	rounds: Script['rounds'] = asUsed,
) => seen(say(follow(freshDialogue(), northDeckWith(notTurned, rounds), {until: `probe-${place}`}), limits.map(text)));

/** Middles 6 and −3: 9 apart, where 2 × (0.5 + 0.5) = 2 is usual. */
const apart = {radiusMm: 68, apart: 9, usual: 2, step: 0.5, unit: 'percent'} as const;
/** A sentence up to its first figure. */
const beginningOf = (sentence: string): string => sentence.split(/\d/)[0] ?? sentence;
const oneMore = words.results.oneMoreRound({pullUncertaintyPct: 1, bandUncertaintyPct: 1});
const {wouldDecideIt} = words.figures;
/** What is said of more rounds, as far as it has no figures in it. */
const ofMore = [
	beginningOf(oneMore),
	words.results.oneMoreIsIdle,
	wouldDecideIt({finerStep: true}, 'usable'),
	wouldDecideIt({onLimit: true}, 'usable'),
	wouldDecideIt({rounds: 5}, 'usable').split(/\d/)[1] ?? '',
];

describe('Rounds at one radius', () => {
	it('agree as long as their middles lie within twice step and nudge', () => {
		// Middles 6 and 8: 2 apart, and 2 × (0.5 + 0.5) = 2 is usual. With 8.25 they are 2.25 apart.
		const first = {innerLimit: 3.5, outerLimit: 8.5};
		expect(roundsApart([first, {innerLimit: 5.5, outerLimit: 10.5}], 0.5, 0.5)).toBeUndefined();
		expect(roundsApart([first, {innerLimit: 5.5, outerLimit: 11}], 0.5, 0.5)).toEqual({apart: 2.25, usual: 2});
		expect(roundsApart([first], 0.5, 0.5)).toBeUndefined();
		expect(roundsApart([first, {innerLimit: 5, outerLimit: 9.5}], 0.5, 0)).toEqual({apart: 1.25, usual: 1});
	});

	it('that do not agree are told of, with what to do', () => {
		// Middles 6 and −3: 9 apart.
		for (const printed of [' 9.0 %', ' 2 %']) expect(words.results.roundsApart(apart)).toContain(printed);
		expect(shownAfter('inner', ['4 out', '8 out', '5 in', '1 in'])).toContain(words.results.roundsApart(apart));
	});

	it('that do not agree are not said to stand on a limit, nor that more of them would help', () => {
		const said = shownAfter('inner', ['4 out', '8 out', '5 in', '1 in']);
		for (const one of ofMore) expect(said).not.toContain(one);
	});

	it('that agree are told nothing of the kind', () => {
		expect(shownAfter('inner', ['4 out', '10 out', '4.5 out', '10 out'])).not.toContain(
			beginningOf(words.results.roundsApart(apart)),
		);
	});

	it('count at the other radius too where they do not agree, and that is said there', () => {
		const inner = {
			inner: [
				['4 out', '8 out'],
				['5 in', '1 in'],
			],
		} as const;
		expect(shownAfter('outer', ['3 out', '7 out'], inner)).toContain(words.results.roundsApartElsewhere(apart));
	});

	it('that do not agree are to be taken again, says the finding, not that more will not help', () => {
		const document = example();
		const [inner] = document.probe;
		const wantedFor = (rounds: readonly {innerLimit: number; outerLimit: number}[]) => {
			const probe = document.probe.map((one) => (one === inner ? {...one, rounds: [...rounds]} : one));
			return compute({...document, probe}).findings.flatMap((one) =>
				one.code === 'undecided' ? one.values.open.map(({wanted}) => wanted) : [],
			);
		};
		const agreed = wantedFor(inner?.rounds ?? []);
		expect(agreed).not.toHaveLength(0);
		expect(agreed).not.toContain('agreement');
		const apart = wantedFor([
			{innerLimit: 4, outerLimit: 8},
			{innerLimit: -5, outerLimit: -1},
		]);
		expect(apart).toContain('agreement');
		for (const wanted of apart) expect(['agreement', 'three-rounds']).toContain(wanted);
	});
});

describe('The closing round', () => {
	const {rounds} = words.pages;

	it('after rounds that scatter more than a good pull says that it cannot be told, not that nothing moved', () => {
		// Inner middles 6, −3 and 6: their mean 3, squares about it 54. Outer middles 3.5, 3.25 and 3.75: squares 0.125.
		// Pooled s = √(54.125 / 4) = 3.678 with four degrees of freedom (t = 2.776), and t·s·√(1 + 1/3) = 11.79. The closing round lies 3 − 1.75 = 1.25 off.
		const scattered = {
			inner: [
				['4 out', '8 out'],
				['5 in', '1 in'],
				['4 out', '8 out'],
			],
		} as const;
		const said = shownAfter('closing', ['0.5 in', '4 out'], scattered);
		const closing = {movedPct: -1.25, allowedPct: 11.79};
		expect(said).toContain(rounds.cannotTell({...closing, pullGoodPct: 2}));
		expect(rounds.cannotTell({...closing, pullGoodPct: 2})).toMatch(inOrder('1.25 %', '11.79 %', ' 2 %'));
		expect(said).not.toContain(rounds.nothingMoved(closing));
	});

	it('still says so where something moved all the same', () => {
		expect(shownAfter('closing', ['10 out', '14 out'])).toMatch(
			withAnyNumbers(rounds.somethingMoved({movedPct: 1, allowedPct: 1})),
		);
	});
});

describe('One round more', () => {
	it('is told by what it would bring', () => {
		expect(shownAfter('inner', ['4 out', '10 out', '4.5 out', '10 out', '4 out', '10 out'])).toMatch(
			new RegExp(`${beginningOf(oneMore)}\\d`),
		);
	});

	it('is not spoken of before there are three', () => {
		for (const limits of [
			['4 out', '10 out'],
			['4 out', '10 out', '4.5 out', '10 out'],
		])
			for (const one of ofMore) expect(shownAfter('inner', limits)).not.toContain(one);
	});

	it('is said to bring hardly anything where it takes less than a twentieth off either uncertainty', () => {
		// Rounds that are all alike have no spread, so that more of them change nothing.
		expect(shownAfter('inner', ['4 out', '10 out', '4 out', '10 out', '4 out', '10 out'])).toContain(
			words.results.oneMoreIsIdle,
		);
	});
});
