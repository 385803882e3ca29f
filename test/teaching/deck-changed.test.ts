import {describe, expect, it} from 'vitest';
import type {Check} from '../../source/check/check.js';
import {isDeckChanged, withDeed} from '../../source/teaching/deck.js';
import {begun, checkOf, goneOn} from '../helpers/practised.js';

const probed = (arm: string): Check => checkOf(goneOn(begun({arm, seed: 1, isPrepared: true}), {}, 'verdict'));

/** The same check once hands were at its deck. */
const withHands = (check: Check, ...deeds: readonly Parameters<typeof withDeed>[1][]): Check =>
	check.practice ? {...check, practice: {...check.practice, deck: deeds.reduce(withDeed, check.practice.deck)}} : check;

describe('rounds that were taken on another deck', () => {
	it.each([
		['bias-left-on', 'bias-off'],
		['tilted-deck', 'levelled'],
		['paddle-left-in', 'damping-out'],
		['stiff-wire', 'leads-dressed'],
	] as const)('are told on %s, once hands have put it right: %s', (arm, deed) => {
		const check = probed(arm);
		expect(isDeckChanged(check)).toBe(false);
		expect(isDeckChanged(withHands(check, deed))).toBe(true);
	});

	it('are none where the bias was switched on for its own readings, nor where it is off again', () => {
		const check = probed('lever-badly-set');
		expect(isDeckChanged(withHands(check, 'bias-on'))).toBe(false);
		expect(isDeckChanged(withHands(check, 'bias-on', 'bias-off'))).toBe(false);
	});

	it('are told too where the bias was switched on after something else was put right', () => {
		expect(isDeckChanged(withHands(probed('lever-badly-set'), 'leads-dressed', 'bias-on'))).toBe(true);
	});

	it('are none while nothing was read, and none in a real check', () => {
		const fresh = checkOf(begun({arm: 'bias-left-on', seed: 1, isPrepared: true}));
		expect(isDeckChanged(withHands(fresh, 'bias-off'))).toBe(false);
		const {practice: _none, ...real} = probed('bias-left-on');
		expect(isDeckChanged(real)).toBe(false);
	});
});
