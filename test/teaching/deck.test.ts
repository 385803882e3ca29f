import {describe, expect, it} from 'vitest';
import type {ArmSpec} from '../../source/practice/arm-spec.js';
import {lessonArms} from '../../source/practice/arms.js';
import {truthOf} from '../../source/practice/truth.js';
import {type Deed, lessonOf, specOn, withDeed} from '../../source/teaching/deck.js';

const radiiMm = [68, 100, 136];
const deckOf = (arm: string, ...done: readonly string[]): ArmSpec => specOn(lessonOf({arm}), {done: [...done]});
const truths = (spec: ArmSpec) => radiiMm.map((radiusMm) => truthOf(spec, radiusMm));
/** The truth of an arm before and after a deed, radius by radius. */
const pairs = (arm: string, deed: Deed) =>
	truths(deckOf(arm)).map((before, index) => {
		const now = truths(deckOf(arm, deed))[index];
		if (!now) throw new Error('As many radii before as after.');
		return {before, now};
	});

const everyArm = lessonArms.map(({id}) => id);

describe('a deck that was not touched', () => {
	it.each(everyArm)('is as %s came', (arm) => {
		expect(deckOf(arm)).toEqual(lessonOf({arm}).spec);
	});
});

describe('levelling', () => {
	it.each(everyArm)('leaves %s less than 0.2 % of pull from its tilt, and changes nothing else', (arm) => {
		for (const {before, now} of pairs(arm, 'levelled')) {
			expect(Math.abs(now.tiltPct)).toBeLessThan(0.2);
			expect(now.bandPct).toBe(before.bandPct);
			expect(now.pullPct - now.tiltPct).toBeCloseTo(before.pullPct - before.tiltPct, 9);
		}
	});

	it('takes percents off the tilted deck', () => {
		for (const {before} of pairs('tilted-deck', 'levelled')) expect(before.tiltPct).toBeGreaterThan(2);
	});
});

describe('taking the bias off', () => {
	it('takes the whole of it out of the pull', () => {
		for (const {before, now} of pairs('bias-left-on', 'bias-off')) {
			expect(before.biasPct).toBeGreaterThan(3);
			expect(now.biasPct).toBe(0);
			expect(now.pullPct).toBeCloseTo(before.pullPct - before.biasPct, 9);
		}
	});

	it('and hanging it on again brings the same pull back', () => {
		expect(truths(deckOf('bias-left-on', 'bias-off', 'bias-on'))).toEqual(truths(deckOf('bias-left-on')));
	});
});

it('hanging the bias on adds it, toward the rim', () => {
	for (const {before, now} of pairs('lever-badly-set', 'bias-on')) {
		expect(before.biasPct).toBe(0);
		expect(now.biasPct).toBeGreaterThan(3);
		expect(now.pullPct).toBeCloseTo(before.pullPct + now.biasPct, 9);
	}
});

it('lifting the paddle leaves the friction of the bearing alone', () => {
	const sound = truths(deckOf('well-behaved'));
	const lifted = truths(deckOf('paddle-left-in', 'damping-out'));
	expect(lifted.map(({bandPct}) => bandPct)).toEqual(sound.map(({bandPct}) => bandPct));
	for (const {before, now} of pairs('paddle-left-in', 'damping-out'))
		expect(before.bandPct - now.bandPct).toBeCloseTo(6.8, 6);
});

describe('dressing the leads', () => {
	it('halves the spring: half as much difference between the radii', () => {
		const differences = ['stiff-wire', 'sticks-and-pulls'].map((arm) => {
			const [inner, , outer] = pairs(arm, 'leads-dressed');
			if (!inner || !outer) throw new Error('There are three radii.');
			return (inner.now.wirePct - outer.now.wirePct) / (inner.before.wirePct - outer.before.wirePct);
		});
		for (const ratio of differences) expect(ratio).toBeCloseTo(0.5, 9);
	});

	it('takes four fifths of the twist out, seen where the spring is at rest', () => {
		const atRest = (...done: readonly string[]) => truthOf(deckOf('sticks-and-pulls', ...done), 100).wirePct;
		expect(atRest('leads-dressed') / atRest()).toBeCloseTo(0.2, 9);
	});
});

describe('moving the pulley', () => {
	it('evens the lever out: nearly as much of its weight acts inside as outside', () => {
		// Moment of a hanging weight by the sine of its lever from the vertical: OpenStax University Physics vol. 1, 15.4. Half past
		// eight is 75° from it and a quarter past seven 37.5°: sin 37.5°/sin 75° = 0.608761/0.965926. Moved, the lever travels a
		// quarter of those 37.5°, to 65.625°: 0.910864/0.965926.
		const shares = (...done: readonly string[]) => {
			const [inner = 0, , outer = 1] = truths(deckOf('lever-badly-set', ...done, 'bias-on')).map(
				({biasPct}) => biasPct,
			);
			return inner / outer;
		};
		expect(shares()).toBeCloseTo(0.608761 / 0.965926, 5);
		expect(shares('pulley-moved')).toBeCloseTo(0.910864 / 0.965926, 5);
	});

	it.each(everyArm.filter((arm) => arm !== 'lever-badly-set'))('changes nothing at %s', (arm) => {
		expect(deckOf(arm, 'pulley-moved')).toEqual(deckOf(arm));
	});
});

describe('another weight', () => {
	it.each([
		['bias-left-on', 1.2, []],
		['lever-badly-set', 2.4, ['bias-on']],
	] as const)('on the device of %s pulls in proportion', (arm, cameWithG, done) => {
		const lesson = lessonOf({arm});
		expect(lesson.biasWeightG).toBe(cameWithG);
		const own = truthOf(specOn(lesson, {done: [...done]}), 100).biasPct;
		const other = (weightG: number) => truthOf(specOn(lesson, {done: [...done], biasWeightG: weightG}), 100).biasPct;
		expect(other(cameWithG)).toBeCloseTo(own, 9);
		expect(other(cameWithG / 2)).toBeCloseTo(own / 2, 9);
		expect(other(2 * cameWithG)).toBeCloseTo(2 * own, 9);
		expect(other(0)).toBeCloseTo(0, 9);
	});

	it('means nothing to an arm without a bias device', () => {
		const lesson = lessonOf({arm: 'well-behaved'});
		expect(specOn(lesson, {done: [], biasWeightG: 3})).toEqual(lesson.spec);
	});
});

describe('the notes of a deck', () => {
	it('keep the deeds in the order in which they were done, and the weight', () => {
		const deck = withDeed(withDeed({done: [], biasWeightG: 2}, 'levelled'), 'bias-on');
		expect(deck).toEqual({done: ['levelled', 'bias-on'], biasWeightG: 2});
	});

	it('of a newer program may name deeds that are not known here: they change nothing', () => {
		expect(deckOf('tilted-deck', 'polished', 'levelled', 'toString')).toEqual(deckOf('tilted-deck', 'levelled'));
	});

	it('of an arm that is not known are refused by its name', () => {
		expect(() => lessonOf({arm: 'an-arm-of-later'})).toThrow(RangeError);
		expect(() => lessonOf({arm: 'an-arm-of-later'})).toThrow('This program has no practice arm "an-arm-of-later".');
	});
});
