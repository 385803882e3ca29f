import {describe, expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {limitShownPct} from '../../source/teaching/advice.js';
import type {BenchAtWork} from '../../source/teaching/bench-at-work.js';
import {readingWanted} from '../../source/teaching/reading-wanted.js';
import {adviceOf, praise, prepared, readingsAt} from '../helpers/advised.js';
import {gaugeOf, limitFound, settle, typed} from '../helpers/hand-at-bench.js';
import type {Habits} from '../helpers/practised.js';
import {numbersIn, words} from '../helpers/said.js';

const said = words.practice.advice;

/** A careful hand that does something else for some readings. */
const otherwise =
	(when: (wanted: NonNullable<ReturnType<typeof readingWanted>>) => boolean, hand: NonNullable<Habits['hand']>) =>
	(bench: BenchAtWork, dialogue: Dialogue): string => {
		const wanted = readingWanted(dialogue);
		return wanted && when(wanted) ? hand(bench, dialogue) : limitFound(bench, dialogue);
	};

const nudgeOn = (bench: BenchAtWork, {which}: NonNullable<ReturnType<typeof readingWanted>>): void =>
	bench.nudge({way: which === 'innerLimit' ? 'in' : 'out', size: 'fine'});

/** What the gauge would show at the limit that is asked for, without trembling, and so many percent beside it. */
const beside =
	(pct: number): NonNullable<Habits['hand']> =>
	(bench, dialogue) => {
		const wanted = readingWanted(dialogue);
		if (!wanted) throw new Error('No reading is wanted.');
		nudgeOn(bench, wanted);
		return typed(Number((limitShownPct(bench.state.probing.arm.spec, wanted) + pct).toFixed(1)));
	};

describe('a reading', () => {
	it('that the gauge never showed at rest is named with its place', () => {
		const hand = otherwise(
			({step, which, index}) => step === 'probe-outer' && which === 'outerLimit' && index === 1,
			beside(3),
		);
		const here = prepared('sticky-bearing', {hand});
		const readings = readingsAt(here, 'outer', ({which, index}) => which === 'outerLimit' && index === 1);
		expect(readings).toHaveLength(1);
		expect(adviceOf(here)).toEqual([said.neverShown({readings})]);
	});

	it('that was typed before the arm was looked at is not taken for one that was shown', () => {
		const hand = otherwise(({step}) => step === 'probe-closing', beside(0));
		const here = prepared('sticky-bearing', {hand});
		const readings = readingsAt(here, 'closing', ({restMs}) => restMs === null);
		expect(readings.map(({which}) => which)).toContain('outerLimit');
		expect(adviceOf(here)).toContain(said.neverShown({readings}));
	});

	it('with the gauge turned is named as that', () => {
		// Turned end for end, the inner limit is the larger one: 3 % beside it no arm holds.
		const hand = otherwise(({isTurned, which}) => isTurned && which === 'innerLimit', beside(3));
		const here = prepared('sticky-bearing', {hand});
		const readings = readingsAt(here, 'inner', ({which, isTurned}) => which === 'innerLimit' && isTurned);
		expect(readings.map(({index}) => index)).toEqual([1]);
		expect(adviceOf(here)).toContain(said.neverShown({readings}));
	});

	/** Types what stands there after one nudge. */
	const timid: NonNullable<Habits['hand']> = (bench, dialogue) => {
		settle(bench);
		const wanted = readingWanted(dialogue);
		if (wanted) nudgeOn(bench, wanted);
		settle(bench);
		return typed(gaugeOf(bench, dialogue).readingPct);
	};

	/** What is said to be missing at the readings: so many percent. */
	const missingAt = (readings: ReturnType<typeof readingsAt>, advice: string): readonly number[] =>
		numbersIn(advice, said.shortOfLimit({readings: readings.map((one) => ({...one, missingPct: 7777}))}), 7777);

	it('that stands short of its limit is named with what was missing', () => {
		const hand = otherwise(
			({step, which, index}) => step === 'probe-outer' && which === 'innerLimit' && index === 2,
			timid,
		);
		const here = prepared('sticky-bearing', {hand});
		const [advice = '', ...more] = adviceOf(here);
		const readings = readingsAt(here, 'outer', ({which, index}) => which === 'innerLimit' && index === 2);
		expect(readings).toHaveLength(1);
		// The arm lies inside the outer limit by as much as it slips back there: most of the band is missing.
		expect(missingAt(readings, advice)[0]).toBeGreaterThan(1.5);
		expect(more).toEqual([]);
	});

	it.each([
		['as used', 0, false],
		['turned', 1, true],
	] as const)('is short of its limit whichever way the gauge stands: %s', (_how, round, isTurned) => {
		const hand = otherwise(
			({step, which, index}) => step === 'probe-inner' && which === 'outerLimit' && index === round,
			timid,
		);
		const here = prepared('sticky-bearing', {hand});
		const [advice = '', ...more] = adviceOf(here);
		const readings = readingsAt(here, 'inner', ({which, index}) => which === 'outerLimit' && index === round);
		expect(readings.map((one) => one.isTurned)).toEqual([isTurned]);
		expect(missingAt(readings, advice)).toHaveLength(1);
		expect(more).toEqual([]);
	});

	it('that was typed without a nudge is named for that alone', () => {
		const hand = otherwise(
			({step, which, index}) => step === 'probe-outer' && which === 'innerLimit' && index === 1,
			(bench, dialogue) => {
				settle(bench);
				return typed(gaugeOf(bench, dialogue).readingPct);
			},
		);
		const here = prepared('sticky-bearing', {hand});
		const readings = readingsAt(here, 'outer', ({which, index}) => which === 'innerLimit' && index === 1);
		expect(adviceOf(here)).toEqual([said.withoutNudge({readings})]);
	});

	it('that was read before the arm had settled is named', () => {
		const hand = otherwise(
			({step, index}) => step === 'probe-inner' && index === 2,
			(bench, dialogue) => limitFound(bench, dialogue, 900),
		);
		const here = prepared('sticky-bearing', {hand});
		const readings = readingsAt(here, 'inner', ({index}) => index === 2);
		expect(readings.map(({which}) => which)).toEqual(['innerLimit', 'outerLimit']);
		expect(adviceOf(here)).toEqual([said.unsettled({readings, settledMs: 5000})]);
	});

	it('stands for its like where there are many: three by name, the others by number', () => {
		const here = prepared('sticky-bearing', {hand: (bench, dialogue) => limitFound(bench, dialogue, 900)});
		const readings = (['inner', 'outer', 'closing'] as const).flatMap((place) => readingsAt(here, place));
		expect(readings).toHaveLength(14);
		const adviceOn = (some: typeof readings) => said.unsettled({readings: some, settledMs: 5000});
		expect(adviceOf(here)).toContain(adviceOn(readings));
		// Each has a name of its own; the third still stands in the sentence, the fourth is only counted.
		expect(new Set(readings.map((one) => adviceOn([one]))).size).toBe(14);
		const four = adviceOn(readings.slice(0, 4));
		expect(adviceOn(readings.toSpliced(3, 1).slice(0, 4))).toBe(four);
		expect(adviceOn(readings.toSpliced(2, 1).slice(0, 4))).not.toBe(four);
		expect(adviceOn(readings)).toMatch(/\b11\b/);
		expect(adviceOn(readings).replace(/\b11\b/, '1')).toBe(four);
	});
});

it('nudges in haste are counted, and named where they are more than one in ten', () => {
	const hasty: NonNullable<Habits['hand']> = (bench, dialogue) => {
		const way = readingWanted(dialogue)?.which === 'innerLimit' ? 'in' : 'out';
		for (let nudges = 0; nudges < 4; nudges++) {
			bench.nudge({way, size: 'fine'});
			bench.pass(300);
		}
		return limitFound(bench, dialogue);
	};
	const all = adviceOf(prepared('sticky-bearing', {hand: hasty}));
	const sentence = said.hurried({hurried: 7777, nudges: 8888});
	const [hurried = 0, of = 0] = numbersIn(all.at(-1) ?? '', sentence, 7777, 8888);
	// Three of every four, at fourteen readings.
	expect(hurried).toBeGreaterThanOrEqual(3 * 14);
	expect(of).toBeGreaterThan(hurried);
	const once = otherwise(({step}) => step === 'probe-closing', hasty);
	expect(adviceOf(prepared('sticky-bearing', {hand: once}))).toEqual([praise]);
});
