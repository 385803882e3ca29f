import {describe, expect, it} from 'vitest';
import type {Check} from '../../source/check/check.js';
import {positionOf} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {openSeries} from '../../source/check/series.js';
import {issuedOf} from '../../source/pages/issued.js';
import {viewOf} from '../../source/pages/view.js';
import {lessonArms} from '../../source/practice/arms.js';
import {lessonOf} from '../../source/teaching/deck.js';
import {newNotes} from '../../source/teaching/practice-check.js';
import {begun, checkOf, goneOn} from '../helpers/practised.js';
import {words} from '../helpers/said.js';

const everyArm = lessonArms.map(({id}) => id);
const seeds = [0, 1, 7, 4_294_967_295];
const begunAt = (arm: string, seed: number) => begun({arm, seed, isPrepared: true});
const all = new Map<string, Map<number, ReturnType<typeof begunAt>>>(
	everyArm.map((arm) => [arm, new Map(seeds.map((seed) => [seed, begunAt(arm, seed)]))]),
);
const prepared = (arm: string, seed: number) => all.get(arm)?.get(seed) ?? begunAt(arm, seed);

describe.each(everyArm)('the check of %s that somebody else has prepared', (arm) => {
	it.each(seeds)('stands at the inner probe, with nothing asked again, by the chance of seed %s', (seed) => {
		const {dialogue} = prepared(arm, seed);
		const {step, slot, progress, stuck} = positionOf(dialogue);
		expect([step?.id, slot]).toEqual(['probe-inner', {place: 'inner', index: 0, which: 'innerLimit'}]);
		expect(stuck).toBe(false);
		expect(promptOf(dialogue).kind).toBe('field');
		const before = progress.visible.slice(
			0,
			progress.visible.findIndex(({id}) => id === 'probe-inner'),
		);
		const states = new Set(before.map((one) => progress.stateOf(one)));
		expect(states).toEqual(new Set(arm === 'tilted-deck' ? ['done', 'overridden'] : ['done']));
		expect(dialogue.check.doubts).toEqual([]);
		expect(openSeries(dialogue.check).inner).toEqual([]);
	});

	it.each(seeds)('leaves the deck as it came, and notes no reading of whoever practises, by seed %s', (seed) => {
		const {practice} = checkOf(prepared(arm, seed));
		expect(practice).toMatchObject({arm, seed, isPrepared: true, deck: {done: []}, readings: [], isRevealed: false});
	});

	it('goes past what does not pass on the tilted deck only: the first reading of the level, and the whole of it', () => {
		const {overrides} = prepared(arm, 1).dialogue.check;
		expect(new Set(overrides.map(({step}) => step))).toEqual(
			new Set(arm === 'tilted-deck' ? ['level-lr-1', 'level-fb-2'] : []),
		);
	});

	it('is the same from the same seed', () => {
		expect(begunAt(arm, 7).dialogue).toEqual(prepared(arm, 7).dialogue);
	});

	it('says where the scale of its gauge ends, and that it is turned at the inner radius', () => {
		const {answers} = prepared(arm, 1).dialogue.check;
		expect([answers['gauge-top']?.value, answers['gauge-turns']?.value]).toEqual([20, 'inner']);
	});
});

describe('the round with the gauge turned', () => {
	const probed = (arm: string, seed: number) => checkOf(goneOn(begunAt(arm, seed), {}, 'verdict'));
	const zeroOf = (check: Check) => issuedOf(check)?.figures.zero.zero ?? Number.NaN;

	it.each(['well-behaved', 'bias-left-on', 'sticks-and-pulls'])('finds the zero of the gauge, at %s', (arm) => {
		const check = probed(arm, 1);
		expect(openSeries(check).inner.map(({gauge}) => gauge)).toEqual([undefined, 'turned', undefined]);
		// Half the sum of two centres: each is found short by a nudge at most and read to half a step, and setting up and the
		// scatter of its limits move it by 0.35 and 0.26 % at most (√3 standard deviations of 0.2 and 0.15 %).
		const {zeroPct} = lessonOf({arm}).spec.gauge;
		expect(Math.abs(zeroOf(check) - zeroPct)).toBeLessThanOrEqual(0.5 + 0.35 + 0.26);
	});

	it('finds it otherwise by another seed, as another day would', () => {
		const zeros = [0, 1, 2, 3].map((seed) => zeroOf(probed('well-behaved', seed)));
		expect(new Set(zeros).size).toBeGreaterThan(1);
	});
});

describe('the whole check of an invented arm', () => {
	it.each(everyArm)('begins at its first question, with what is known of %s filled in', (arm) => {
		const start = begun({arm, seed: 1, isPrepared: false});
		expect(positionOf(start.dialogue).step?.id).toBe('safe');
		expect(start.dialogue.check.answers['arm-name']?.typed).toBe(words.practice.arms[arm].name);
		const known = goneOn(start, {}, 'guard-on').dialogue.check.answers;
		// Nothing but the lines of the first question was asked on the way there.
		const {safe, ...others} = known;
		expect(safe?.value).toContain('amplifier=yes');
		expect(others).toEqual(start.dialogue.check.answers);
	});
});

describe('an arm that is not told', () => {
	it('is chosen by the seed, and every arm can be', () => {
		const chosen = Array.from({length: everyArm.length}, (_, seed) =>
			newNotes({arm: undefined, seed, isPrepared: false}),
		);
		expect(new Set(chosen.map(({arm}) => arm))).toEqual(new Set(everyArm));
		for (const notes of chosen) expect(notes.isHidden).toBe(true);
	});

	it('has a number for its name wherever that is shown', () => {
		const {dialogue} = begun({arm: undefined, seed: 12, isPrepared: true});
		const hidden = words.practice.bench.hiddenArm({seed: 12});
		expect(dialogue.check.answers['arm-name']?.typed).toBe(hidden);
		expect(viewOf(dialogue).arm).toContain(hidden);
		const {name} = words.practice.arms[lessonOf(newNotes({arm: undefined, seed: 12, isPrepared: true})).id];
		expect(JSON.stringify(dialogue.check.answers)).not.toContain(name);
	});
});
