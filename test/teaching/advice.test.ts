import {describe, expect, it} from 'vitest';
import {lessonArms} from '../../source/practice/arms.js';
import {adviceLines} from '../../source/teaching/advice.js';
import {titleOf} from '../../source/words/step-text.js';
import {adviceOf, praise, prepared, whole} from '../helpers/advised.js';
import {answered, begun, checkOf, goneOn, type Habits} from '../helpers/practised.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, goTo} from '../helpers/script.js';

const said = words.practice.advice;

const toProbe = (arm: string) => begun({arm, seed: 1, isPrepared: true});
const deeds = ['levelled', 'bias-off', 'damping-out', 'bias-on'] as const;

describe('a careful hand', () => {
	it.each(lessonArms.map(({id}) => id))('that prepares the deck of %s and probes it gets praise only', (arm) => {
		expect(adviceOf(whole(arm, {deeds}))).toEqual([praise]);
	});

	it('gets praise only for a deck that was rightly prepared by somebody else', () => {
		expect(adviceOf(prepared('sticky-bearing'))).toEqual([praise]);
	});

	it('gets neither before there is a reading', () => {
		expect(adviceOf(begun({arm: 'well-behaved', seed: 1, isPrepared: true}))).toEqual([said.noReading]);
	});
});

type By = 'you' | 'another';

describe('what the deck left in the readings', () => {
	it.each([
		// A tilt of 1.5° is 2.62 % across the record (sin 1.5°), and a little less at 136 mm.
		['tilted-deck', (by: By) => said.tilted({by, tiltPct: 2.6, isOverridden: true})],
		['bias-left-on', (by: By) => said.biased({by, biasPct: 5.5})],
		['paddle-left-in', (by: By) => said.damped({by})],
	])('is said of %s: by whom, how much, and what to press', (arm, sentence) => {
		expect(adviceOf(prepared(arm))).toEqual([sentence('another')]);
		const [own] = adviceOf(whole(arm));
		expect(own).toBe(sentence('you'));
		expect(sentence('you')).not.toBe(sentence('another'));
	});

	it('is that nothing hung on the device, where the bias was confirmed on without looking', () => {
		const read = (habits: Habits) =>
			adviceOf(goneOn(answered(prepared('lever-badly-set'), choose('bias')), habits, 'bias-result'));
		expect(read({deeds: ['bias-on']})).toEqual([praise]);
		expect(read({})).toEqual([said.unhung]);
	});
});

describe('an instrument that was typed otherwise than it showed', () => {
	it.each([
		// Set with the guard on: 18 mN / 9.80665 mN/g = 1.8355 g.
		['force-reading', '1.95 g', '1.95 g', '1.835 g'],
		['level-lr-1', '0.35 left', '0.35° left', '0.15 right'],
		['mat-thickness', '3.5', '3.5 mm', '3'],
		['guard-gap', '3.9', '3.9 mm', '4.3'],
	] as const)('is named: %s', (id, answer, typed, shown) => {
		const advice = adviceOf(whole('well-behaved', {answers: {[id]: answer}}));
		expect(advice).toEqual([said.misread({step: titleOf(id), typed, shown})]);
	});

	it('is not, where the difference is none that a hand could see', () => {
		const answers = {
			'force-reading': '1.85 g',
			'level-lr-1': '0.2 right',
			'guard-gap': '4.2',
			'room-temperature': '25',
		};
		expect(adviceOf(whole('well-behaved', {answers}))).toEqual([praise]);
	});

	it('is named too where the level was not read anew after the feet were turned', () => {
		const before = {'level-lr-1': '1.4 left'};
		const step = titleOf('level-lr-1');
		expect(adviceOf(whole('tilted-deck', {deeds, answers: before}))).toContain(
			said.misread({step, typed: '1.4° left', shown: '0.15 right'}),
		);
	});
});

it('a gauge that is not turned, and whose zero is not read free, is no matter of hands', () => {
	const start = [...goTo('tools', 'gauge-turns'), choose('no')].reduce(answered, toProbe('well-behaved'));
	const probed = goneOn(start, {answers: {'zero-free-before': '-', 'zero-free-after': '-'}}, 'verdict');
	const {answers} = checkOf(probed);
	expect(answers['gauge-turns']?.value).toBe('no');
	// Left out, it is kept as nothing typed.
	expect([answers['zero-free-before']?.typed, answers['zero-free-after']?.typed]).toEqual(['', '']);
	expect(checkOf(probed).practice?.readings.some(({isTurned}) => isTurned)).toBe(false);
	expect(adviceOf(probed)).toEqual([praise]);
});

it('a real check gets no advice on hands', () => {
	const {check} = follow(freshDialogue(), northDeck, {until: 'verdict'});
	expect(adviceLines(check, [])).toEqual([]);
});
