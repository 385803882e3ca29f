import {fraction} from './model-geometry.js';
import type {ModelBiasReading, ModelDocument} from './model-types.js';
import type {Dice} from './random-dice.js';
import {type Bench, putOffScale, readRound, type Truth} from './random-rounds.js';

type Bias = NonNullable<ModelDocument['bias']>;

/** What the device adds to the pull at a radius, in percent. */
const randomStrength = (
	dice: Dice,
	bench: Bench,
	truth: Truth,
	drag: number,
	outermost: number,
): ((radius: number) => number) => {
	const {arm} = bench.frame;
	const wanted = (radius: number): number => 100 * drag * fraction(arm, radius);
	const strength = dice.between(0.2, 1.4);
	const size = dice.sign() * dice.between(0, 0.45);
	const level = dice.between(-3, 9);
	const slope = dice.between(-0.08, 0.08);
	return dice.pick<(radius: number) => number>([
		[4, (radius) => strength * wanted(radius)],
		[3, (radius) => strength * (wanted(radius) - truth.pull(radius))],
		[1.2, () => size],
		[0.6, () => 0],
		[2, (radius) => level + slope * (radius - 100)],
		[0.8, (radius) => Math.max(0, (outermost - radius) * Math.abs(slope) * 2)],
	]);
};

const randomClock = (dice: Dice): string => `${dice.whole(1, 12)}:${String(dice.whole(0, 59)).padStart(2, '0')}`;

const randomBiasRadii = (dice: Dice, probed: number[], [low, high]: readonly [number, number]): number[] => {
	const count = dice.pick([
		[5, 2],
		[3, 3],
		[1, 4],
	]);
	const fresh = Array.from({length: count}, () => dice.rounded(low, high, 1));
	const taken = dice.chance(0.7) ? [...probed, ...fresh].slice(0, count) : fresh;
	return new Set(taken).size === taken.length ? taken : probed.slice(0, 2);
};

export const randomBias = (
	dice: Dice,
	bench: Bench,
	truth: Truth,
	probed: number[],
	reach: readonly [number, number],
): Bias => {
	const effectiveDrag = dice.pick([
		[4, undefined],
		[1, 0.15],
		[1, 0.6],
		[4, dice.rounded(0.15, 0.6, 2)],
	]);
	const device = dice.pick([
		[0.4, 'none'],
		[2, 'weight-on-thread'],
		[4, 'weighted-lever'],
		[1, 'spring'],
		[1, 'magnet'],
		[0.5, 'other'],
	] as const);
	const head: Bias = {...(effectiveDrag === undefined ? {} : {effectiveDrag}), device};
	if (dice.chance(0.12)) {
		return head;
	}
	const strength = randomStrength(dice, bench, truth, effectiveDrag ?? 0.3, Math.max(...probed));
	const rub = dice.chance(0.15) ? dice.between(1, 4) : dice.between(0, 0.4);
	const anyOff = dice.chance(0.1);
	const readings = randomBiasRadii(dice, probed, reach).map((radiusMm): ModelBiasReading => {
		const rounds = Array.from({length: dice.whole(1, 3)}, () =>
			readRound(dice, bench, truth.pull(radiusMm) + strength(radiusMm), truth.band(radiusMm) + rub),
		);
		return {
			radiusMm,
			rounds: anyOff && dice.chance(0.5) ? putOffScale(dice, bench, rounds) : rounds,
			...(device === 'weighted-lever' && dice.chance(0.7) ? {leverClock: randomClock(dice)} : {}),
		};
	});
	return {...head, readings};
};
