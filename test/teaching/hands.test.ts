import {describe, expect, it} from 'vitest';
import {positionOf} from '../../source/check/dialogue.js';
import {handsAt} from '../../source/teaching/bench-state.js';
import {type Deed, lessonOf} from '../../source/teaching/deck.js';
import {type AtPractice, answered, begun, goneOn, type Habits, wordsOf} from '../helpers/practised.js';
import {words} from '../helpers/said.js';
import {choose, text} from '../helpers/script.js';

const toProbe = (arm = 'well-behaved', seed = 1) => begun({arm, seed, isPrepared: true});
const whole = (arm: string, until: string, habits: Habits = {}) =>
	goneOn(begun({arm, seed: 1, isPrepared: false}), habits, until);
const said = ({bench, dialogue}: AtPractice) => wordsOf(bench.shown(dialogue));

describe('hands', () => {
	const offered = (arm: string, until: string, habits: Habits = {}): Deed | undefined => {
		const {bench, dialogue} = whole(arm, until, habits);
		return handsAt(bench.state, dialogue)?.deed;
	};

	it.each([
		['tilted-deck', 'level-lr-1', 'levelled'],
		['well-behaved', 'level-fb-2', 'levelled'],
		['paddle-left-in', 'damping-off', 'damping-out'],
		['bias-left-on', 'bias-off', 'bias-off'],
	] as const)('can do at %s, at the question %s, what it is called for: %s', (arm, until, deed) => {
		expect(offered(arm, until)).toBe(deed);
	});

	it.each([
		['well-behaved', 'mat', 'nothing is out of order there'],
		['lever-badly-set', 'bias-off', 'its bias is off'],
		['stiff-wire', 'wires', 'leads are probed as they are used'],
	])('have nothing to do at %s, at the question %s: %s', (arm, until) => {
		expect(offered(arm, until)).toBeUndefined();
		const {bench, dialogue} = whole(arm, until);
		expect(bench.doByHand(dialogue)).toBe(false);
		expect(bench.notes.deck.done).toEqual([]);
	});

	it('do a deed once, say that it is done, and offer it no more', () => {
		const here = whole('bias-left-on', 'bias-off');
		const {offer, did} = words.practice.hands['bias-off'];
		expect(said(here)).toContain(offer);
		expect(here.bench.doByHand(here.dialogue)).toBe(true);
		expect(said(here)).toContain(did());
		for (const hands of Object.values(words.practice.hands)) expect(said(here)).not.toContain(hands.offer);
		expect(here.bench.doByHand(here.dialogue)).toBe(false);
		expect(here.bench.notes.deck.done).toEqual(['bias-off']);
	});

	it('dress the leads only as a remedy, and once', () => {
		const seen = goneOn(toProbe('stiff-wire'), {}, 'verdict');
		const redress = [choose('other-way'), choose('try:leads')].reduce(answered, seen);
		expect(positionOf(redress.dialogue).step?.id).toBe('wires');
		expect(redress.bench.doByHand(redress.dialogue)).toBe(true);
		expect(redress.bench.doByHand(redress.dialogue)).toBe(false);
		expect(said(redress)).toContain(words.practice.looks.wires.dressed);
	});

	it('hang the weight on where the bias is wanted on, and move the pulley once readings ask for it', () => {
		const seen = answered(goneOn(toProbe('lever-badly-set'), {}, 'verdict'), choose('bias'));
		const at = (here: AtPractice) => {
			here.bench.shown(here.dialogue);
			return handsAt(here.bench.state, here.dialogue)?.deed;
		};
		const set = goneOn(seen, {}, 'bias-set');
		expect(at(set)).toBeUndefined();
		const on = goneOn(set, {}, 'bias-on');
		expect(at(on)).toBe('bias-on');
		const read = goneOn(on, {deeds: ['bias-on']}, 'bias-result');
		expect(at(goneOn(answered(read, choose('adjust')), {}, 'bias-set'))).toBe('pulley-moved');
	});

	it('hang another weight on where one is named', () => {
		const seen = answered(goneOn(toProbe('lever-badly-set'), {}, 'verdict'), choose('bias'));
		const named = answered(goneOn(seen, {}, 'bias-weight'), text('1.2 g'));
		named.bench.shown(named.dialogue);
		expect(named.bench.notes.deck.biasWeightG).toBe(1.2);
		const device = named.bench.state.probing.arm.spec.bias?.device;
		const {bias} = lessonOf({arm: 'lever-badly-set'}).spec;
		if (!device || !bias || !('fullMicroNm' in device) || !('fullMicroNm' in bias.device)) throw new Error('no lever');
		expect(device.fullMicroNm).toBeCloseTo(bias.device.fullMicroNm / 2, 9);
	});
});
