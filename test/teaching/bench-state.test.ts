import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {stylusRadiusMm} from '../../source/practice/practice-arm.js';
import {BenchAtWork} from '../../source/teaching/bench-at-work.js';
import {later, pushed} from '../../source/teaching/bench-state.js';
import {readingWanted} from '../../source/teaching/reading-wanted.js';
import {gaugeOf, settle} from '../helpers/hand-at-bench.js';
import {type AtPractice, answered, begun, goneOn, type Habits, wordsOf} from '../helpers/practised.js';
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
		expect(gaugeAt(inner)).toMatchObject({gaugeRadiusMm: 65, isTurned: false});
		const outer = goneOn(inner, {}, 'probe-outer');
		expect(gaugeAt(outer)).toMatchObject({gaugeRadiusMm: 140, isTurned: false});
		expect(stylusRadiusMm(outer.bench.state.probing.arm)).toBeCloseTo(140, 0);
		expect(gaugeAt(goneOn(outer, {}, 'probe-closing')).gaugeRadiusMm).toBe(65);
	});

	it('stands end for end for the second half of its zero, and as it was for the probe after it', () => {
		const turned = (until: string) => gaugeAt(whole('well-behaved', until));
		expect(turned('zero-first-inner')).toMatchObject({gaugeRadiusMm: 65, isTurned: false});
		expect(turned('zero-turned-inner')).toMatchObject({gaugeRadiusMm: 65, isTurned: true});
		expect(turned('zero-turned-inner').caption).toContain('turned end for end');
		expect(turned('probe-inner').isTurned).toBe(false);
	});

	it('leaves the arm where it is while only another limit or another round is asked for', () => {
		const start = toProbe();
		gaugeAt(start);
		start.bench.nudge({way: 'in', size: 'large'});
		settle(start.bench);
		const before = start.bench.state.probing.arm;
		const next = answered(start, text('-0.5'));
		expect(gaugeAt(next).caption).toBeTruthy();
		expect(next.bench.state.probing).toMatchObject({arm: before, nudges: 0, rests: []});
		const nextRound = answered(next, text('+1'));
		gaugeAt(nextRound);
		expect(readingWanted(nextRound.dialogue)).toMatchObject({index: 1, which: 'innerLimit'});
		expect(nextRound.bench.state.probing.arm).toBe(before);
	});

	it('is put under the arm anew after hands were at the deck', () => {
		const seen = goneOn(toProbe('tilted-deck'), {}, 'verdict');
		const relevel = [choose('remedy'), choose('level')].reduce(answered, seen);
		const levelled = goneOn(relevel, {deeds: ['levelled']}, 'probe-inner');
		const {probing} = levelled.bench.state;
		expect(probing.arm.gauge).toBeNull();
		expect(gaugeAt(levelled).gaugeRadiusMm).toBe(65);
	});

	it('is not under the arm where no reading is asked for: time and nudges do nothing', () => {
		const {bench, dialogue} = whole('well-behaved', 'clearance');
		bench.shown(dialogue);
		const {state} = bench;
		expect(later(state, 5000)).toBe(state);
		expect(pushed(state, {way: 'out', size: 'large'})).toBe(state);
		expect(bench.isProbing(dialogue)).toBe(false);
	});
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
			radiusMm: 65,
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

	it('of the zero is noted in the sign of the gauge', () => {
		const turned = whole('bias-left-on', 'zero-turned-outer');
		expect(notes(turned).map(({step, isTurned}) => [step, isTurned])).toEqual([
			['zero-first-inner', false],
			['zero-first-outer', false],
			['zero-turned-inner', true],
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
	const relevel = [choose('remedy'), choose('level')].reduce(answered, seen);
	const {bench, dialogue} = goneOn(relevel, {deeds: ['levelled']}, 'probe-inner');
	const again = new BenchAtWork(bench.notes);
	expect(again.notes).toEqual(bench.notes);
	expect(again.state.probing.arm.spec).toEqual(bench.state.probing.arm.spec);
	expect(gaugeOf(again, dialogue)).toMatchObject({gaugeRadiusMm: 65});
});

it('a bench has something to show for every question of every arm, and asks nothing of one without it', () => {
	for (const {id} of lessonArms) {
		const here = whole(id, 'probe-inner');
		const steps = [...goTo('level', 'level-lr-1')].reduce(answered, here);
		expect(said(steps)).toMatch(/On the bench: (The level shows|The bubble)/);
		expect(said(answered(here, {kind: 'steps'}))).toBe('');
	}
});
