import {scaleFactor, swingAngle, tiltShare} from './model-geometry.js';
import type {ModelBiasRound, ModelProbe, ModelRound, Place} from './model-types.js';
import type {Dice} from './random-dice.js';
import type {Frame} from './random-frame.js';

/** What the arm really does at a radius, in percent of the playing force. */
export interface Truth {
	pull: (radius: number) => number;
	band: (radius: number) => number;
}

export const randomTruth = (dice: Dice, frame: Frame, inner: number, outer: number): Truth => {
	const {arm} = frame;
	const start = swingAngle(arm, inner);
	const along = (radius: number): number => (swingAngle(arm, radius) - start) / (swingAngle(arm, outer) - start);
	const share = (radius: number): number => tiltShare({...frame, probe: []}, radius) ?? 0;
	const steady = dice.sign() * dice.between(2, 7);
	const middling = dice.between(1, 4.5);
	const [from, to] = dice.pick([
		[5, [dice.between(-0.8, 0.8), dice.between(-0.8, 0.8)]],
		[3, [steady, steady + dice.between(-0.7, 0.7)]],
		[4, [dice.between(-6, 7), dice.between(-6, 7)]],
		[2, [middling, middling + dice.between(-0.2, 0.2)]],
	] as const);
	const even = dice.between(0.4, 2);
	const sticky = dice.between(6.5, 10);
	const [bandIn, bandOut] = dice.pick([
		[5, [even, even]],
		[2, [dice.between(2, 4), dice.between(2, 4)]],
		[1.5, [sticky, sticky]],
		[2, [dice.between(0.5, 8), dice.between(0.5, 8)]],
	] as const);
	return {
		pull: (radius) => from + (to - from) * along(radius) + share(radius),
		band: (radius) => Math.max(0.1, bandIn + (bandOut - bandIn) * along(radius)),
	};
};

/** How the gauge is read on this bench. */
export interface Bench {
	frame: Frame;
	/** In the gauge's unit. */
	zero: number;
	/** Spread of one limit, in percent. */
	spread: number;
	/** Read to the whole step, or as fine as it comes. */
	toTheStep: boolean;
}

export const randomBench = (dice: Dice, frame: Frame, zero: number): Bench => ({
	frame,
	zero,
	spread: dice.pick([
		[2, 0],
		[3, 0.05],
		[3, 0.2],
		[2, 0.5],
	]),
	toTheStep: dice.chance(0.85),
});

export const readRound = (dice: Dice, bench: Bench, pull: number, band: number, turned = false): ModelBiasRound => {
	const {gauge} = bench.frame;
	const f = scaleFactor({...bench.frame, probe: []});
	const onGauge = (percent: number): number => {
		const reading = ((turned ? -1 : 1) * (percent + bench.spread * dice.wobble())) / f + bench.zero;
		return bench.toTheStep ? Number((Math.round(reading / gauge.step) * gauge.step).toPrecision(12)) : reading;
	};
	const [one, other] = [onGauge(pull - band / 2), onGauge(pull + band / 2)];
	const [low, high] = [Math.min(one, other), Math.max(one, other)];
	return turned ? {innerLimit: high, outerLimit: low} : {innerLimit: low, outerLimit: high};
};

/** Pushes one limit to the end of the scale or past it. */
export const putOffScale = <R extends ModelRound>(dice: Dice, bench: Bench, rounds: R[]): R[] => {
	const at = dice.whole(0, rounds.length - 1);
	const end = bench.frame.gauge.topOfScale * (dice.chance(0.5) ? 1 : 1.1);
	return rounds.map((round, index) => {
		if (index !== at) {
			return round;
		}
		const rising = round.gauge !== 'turned';
		return dice.chance(0.5)
			? {...round, outerLimit: rising ? Math.max(end, round.innerLimit) : Math.min(-end, round.innerLimit)}
			: {...round, innerLimit: rising ? Math.min(-end, round.outerLimit) : Math.max(end, round.outerLimit)};
	});
};

export interface Wishes {
	/** One round as used and no more. */
	single: boolean;
	turned: boolean;
	closing: boolean;
	offScale: boolean;
}

export const randomProbe = (
	dice: Dice,
	bench: Bench,
	truth: Truth,
	[place, radiusMm]: readonly [Place, number],
	wishes: Wishes,
): ModelProbe => {
	const pull = truth.pull(radiusMm);
	const band = truth.band(radiusMm);
	const count = wishes.single
		? 1
		: dice.pick([
				[2.5, 1],
				[2, 2],
				[6, 3],
				[3, dice.whole(4, 7)],
				[1.5, dice.whole(8, 13)],
			]);
	const used: ModelRound[] = Array.from({length: count}, () => readRound(dice, bench, pull, band));
	if (wishes.closing && !wishes.single) {
		const shift = dice.chance(0.25) ? dice.sign() * dice.between(0.5, 4) : 0;
		const last: ModelRound = {...readRound(dice, bench, pull + shift, band), closing: true};
		used.splice(dice.chance(0.8) ? used.length : 0, 0, last);
	}
	if (wishes.turned) {
		const backs = dice.pick([
			[4, 1],
			[2, 2],
			[1, 3],
		]);
		for (let back = 0; back < backs; back++) {
			const round: ModelRound = {...readRound(dice, bench, pull, band, true), gauge: 'turned'};
			used.splice(dice.whole(0, used.length), 0, round);
		}
	}
	return {place, radiusMm, rounds: wishes.offScale ? putOffScale(dice, bench, used) : used};
};
