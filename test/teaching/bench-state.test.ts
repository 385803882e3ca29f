import {describe, expect, it} from 'vitest';
import {positionOf} from '../../source/check/dialogue.js';
import {lessonArms} from '../../source/practice/arms.js';
import {stylusRadiusMm} from '../../source/practice/practice-arm.js';
import {BenchAtWork} from '../../source/teaching/bench-at-work.js';
import {benchNow, later, pushed} from '../../source/teaching/bench-state.js';
import {instruments} from '../../source/teaching/instruments.js';
import {readingWanted} from '../../source/teaching/reading-wanted.js';
import {gaugeOf, settle} from '../helpers/hand-at-bench.js';
import {type AtPractice, answered, begun, goneOn, goneToReading, type Habits, wordsOf} from '../helpers/practised.js';
import {isGoneBack, words} from '../helpers/said.js';
import {choose, goTo, text} from '../helpers/script.js';

const toProbe = (arm = 'well-behaved', seed = 1) => begun({arm, seed, isPrepared: true});
const whole = (arm: string, until: string, habits: Habits = {}) =>
	goneOn(begun({arm, seed: 1, isPrepared: false}), habits, until);
const gaugeAt = ({bench, dialogue}: AtPractice) => gaugeOf(bench, dialogue);
const said = ({bench, dialogue}: AtPractice) => wordsOf(bench.shown(dialogue));
const notes = ({bench}: AtPractice) => bench.notes.readings;

describe('the gauge', () => {
	it('goes to the radius that the question asks, and the arm lies on it', () => {
		const inner = toProbe();
		expect(gaugeAt(inner)).toMatchObject({gaugeRadiusMm: 68, isTurned: false});
		const outer = goneOn(inner, {}, 'probe-outer');
		expect(gaugeAt(outer)).toMatchObject({gaugeRadiusMm: 136, isTurned: false});
		expect(stylusRadiusMm(outer.bench.state.probing.arm)).toBeCloseTo(136, 0);
		expect(gaugeAt(goneOn(outer, {}, 'probe-closing')).gaugeRadiusMm).toBe(68);
	});

	it('stands end for end for the second round at the inner radius, and as used for every other', () => {
		let here = toProbe();
		const round = (step: string, index: number) => {
			here = goneToReading(here, step, {index, which: 'outerLimit'});
			return gaugeAt(here);
		};
		expect(round('probe-inner', 0)).toMatchObject({gaugeRadiusMm: 68, isTurned: false});
		const turned = round('probe-inner', 1);
		expect(turned).toMatchObject({gaugeRadiusMm: 68, isTurned: true});
		expect(turned.caption).toBe(words.practice.bench.gauge(turned));
		expect(turned.isTurned).toBe(true);
		for (const [step, index] of [
			['probe-inner', 2],
			['probe-outer', 1],
			['probe-closing', 0],
		] as const)
			expect(round(step, index).isTurned).toBe(false);
	});

	it.each([
		['in', 'in'],
		['out', 'out'],
	] as const)('names the key for finer nudges once large ones %s let go twice, and not after a fine one', (_, way) => {
		// Its hold band is narrow: 1.6 %.
		const here = toProbe('well-behaved');
		const finer = words.practice.motion.nudgeFiner({way});
		const nudge = (size: 'large' | 'fine') => {
			here.bench.nudge({way, size});
			settle(here.bench);
			return gaugeAt(here).state;
		};
		gaugeAt(here);
		settle(here.bench);
		const told: string[] = [];
		for (let nudges = 0; nudges < 6 && told.at(-1) !== finer; nudges++) told.push(nudge('large'));
		expect(told.at(-1)).toBe(finer);
		expect(told.slice(0, -1)).not.toContain(finer);
		expect(told.filter(isGoneBack)).toHaveLength(2);
		expect(nudge('fine')).not.toBe(finer);
	});

	it('leaves the arm where it is while only another limit is asked for', () => {
		const start = toProbe();
		gaugeAt(start);
		start.bench.nudge({way: 'in', size: 'large'});
		settle(start.bench);
		const before = start.bench.state.probing.arm;
		const next = answered(start, text('-0.5'));
		expect(gaugeAt(next).caption).toBeTruthy();
		expect(readingWanted(next.dialogue)).toMatchObject({index: 0, which: 'outerLimit'});
		const {swingRad, settingUpMicroNm, timeMs, gauge} = before;
		const {probing} = next.bench.state;
		expect(probing).toMatchObject({arm: {swingRad, settingUpMicroNm, timeMs, gauge}, nudges: 0, rests: []});
		// Each limit lets go a little earlier or later.
		expect(probing.arm.scatterMicroNm).not.toBe(before.scatterMicroNm);
	});

	const settingsUp = (start: AtPractice): readonly number[] => {
		let here = start;
		return [0, 1, 2].map((index) => {
			here = goneToReading(here, 'probe-outer', {index, which: 'outerLimit'});
			gaugeAt(here);
			return here.bench.state.probing.arm.settingUpMicroNm;
		});
	};

	it('is set anew for each round', () => {
		expect(new Set(settingsUp(toProbe())).size).toBe(3);
	});

	it('is set once a radius where the check does not set it anew', () => {
		const {bench, dialogue, now} = toProbe();
		const once = {...dialogue, check: {...dialogue.check, setAnew: false}};
		expect(new Set(settingsUp({bench, dialogue: once, now})).size).toBe(1);
	});

	it('is put under the arm anew after hands were at the deck', () => {
		const seen = goneOn(toProbe('tilted-deck'), {}, 'verdict');
		const relevel = [choose('other-way'), choose('try:level')].reduce(answered, seen);
		const levelled = goneOn(relevel, {deeds: ['levelled']}, 'probe-inner');
		const {probing} = levelled.bench.state;
		expect(probing.arm.gauge).toBeNull();
		expect(gaugeAt(levelled).gaugeRadiusMm).toBe(68);
	});

	it('is not under the arm where no reading is asked for: time and nudges do nothing', () => {
		const {bench, dialogue} = whole('well-behaved', 'guard-gap');
		bench.shown(dialogue);
		const {state} = bench;
		expect(later(state, 5000)).toBe(state);
		expect(pushed(state, {way: 'out', size: 'large'})).toBe(state);
		expect(bench.isProbing(dialogue)).toBe(false);
	});
});

it('one round alone at each radius is taken as used, and none closes', () => {
	const once = begun({arm: 'sticky-bearing', seed: 1, isPrepared: true, roundsEach: 1});
	const read = notes(goneOn(once, {}, 'verdict')).map(({step, which, isTurned}) => [step, which, isTurned]);
	expect(read).toEqual([
		['probe-inner', 'innerLimit', false],
		['probe-inner', 'outerLimit', false],
		['probe-outer', 'innerLimit', false],
		['probe-outer', 'outerLimit', false],
	]);
});

describe('a reading', () => {
	it('is noted once, with the deck, the nudges and the rest that it had', () => {
		const start = toProbe('sticky-bearing');
		gaugeAt(start);
		for (let nudges = 0; nudges < 2; nudges++) {
			start.bench.nudge({way: 'in', size: 'fine'});
			settle(start.bench);
		}
		const shown = gaugeAt(start).readingPct;
		const next = answered(start, text(String(shown)));
		expect(notes(next)).toHaveLength(1);
		expect(notes(next)[0]).toMatchObject({
			step: 'probe-inner',
			which: 'innerLimit',
			index: 0,
			radiusMm: 68,
			isTurned: false,
			readingPct: shown,
			deck: {done: []},
			nudges: 2,
			hurried: 0,
		});
		expect(notes(next)[0]?.restMs).toBeGreaterThan(5000);
		const elsewhere = [{kind: 'steps'} as const, {kind: 'back'} as const].reduce(answered, next);
		expect(notes(elsewhere)).toHaveLength(1);
	});

	it('of a side that is chosen by a key is noted with that side', () => {
		const start = toProbe();
		const asked = answered(start, text('0.5'));
		expect(asked.dialogue.mode.kind).toBe('side');
		expect(notes(asked)).toEqual([]);
		expect(notes(answered(asked, choose('in')))).toMatchObject([{readingPct: -0.5}]);
	});

	it('with the gauge turned is noted in the sign of the gauge', () => {
		const turned = goneToReading(toProbe('bias-left-on'), 'probe-inner', {index: 1, which: 'outerLimit'});
		expect(notes(turned).map(({step, index, isTurned}) => [step, index, isTurned])).toEqual([
			['probe-inner', 0, false],
			['probe-inner', 0, false],
			['probe-inner', 1, true],
		]);
		// The bias that was left on pushes outward: turned end for end, the gauge shows that with the other sign.
		const [first, , turnedInner] = notes(turned).map(({readingPct}) => readingPct);
		expect(first).toBeGreaterThan(2);
		expect(turnedInner).toBeLessThan(-2);
	});

	it('that was never on the gauge at rest is noted without one', () => {
		expect(notes(answered(toProbe(), text('-7')))).toMatchObject([{readingPct: -7, nudges: 0, restMs: null}]);
	});

	it('counts only once it is saved', () => {
		const {bench, dialogue} = toProbe();
		bench.shown(dialogue);
		const next = answered(
			{bench: new BenchAtWork(bench.notes), dialogue, now: () => dialogue.check.startedAt},
			text('-1'),
		);
		expect(bench.noted(next.dialogue).notes.readings).toHaveLength(1);
		expect(bench.notes.readings).toEqual([]);
	});
});

it('a bench goes on from its notes as it was left: deck, readings and what was looked at', () => {
	const seen = goneOn(toProbe('tilted-deck', 3), {}, 'verdict');
	const relevel = [choose('other-way'), choose('try:level')].reduce(answered, seen);
	const {bench, dialogue} = goneOn(relevel, {deeds: ['levelled']}, 'probe-inner');
	const again = new BenchAtWork(bench.notes);
	expect(again.notes).toEqual(bench.notes);
	expect(again.state.probing.arm.spec).toEqual(bench.state.probing.arm.spec);
	expect(gaugeOf(again, dialogue)).toMatchObject({gaugeRadiusMm: 68});
});

it('a bench has something to show for every question of every arm, and asks nothing of one without it', () => {
	for (const {id} of lessonArms) {
		const here = whole(id, 'probe-inner');
		const steps = [...goTo('level', 'level-lr-1')].reduce(answered, here);
		const seen = instruments['level-lr-1']?.see(benchNow(steps.bench.state, positionOf(steps.dialogue).progress.facts));
		expect(seen).toBeDefined();
		expect(said(steps)).toContain(words.practice.bench.seen({seen: seen ?? ''}));
		expect(said(answered(here, {kind: 'steps'}))).toBe('');
	}
});
