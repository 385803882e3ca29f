// Valid documents by chance, made up from a seed so that every finding comes up. All of it is invented.

import {scaleFactor} from './model-geometry.js';
import type {ModelArm, ModelDocument, ModelProbe, Place} from './model-types.js';
import {randomBias} from './random-bias.js';
import {Dice} from './random-dice.js';
import {type Frame, randomFrame} from './random-frame.js';
import {type Bench, randomBench, randomProbe, randomTruth, type Truth} from './random-rounds.js';

/** The radii worth reading that the arm can reach. */
const reach = ({effectiveLengthMm: l, pivotDistanceMm: d}: ModelArm): [number, number] => {
	const most = Math.min(146, l + d - 0.1);
	return [Math.max(Math.abs(l - d) + 0.1, Math.min(58, most / 2)), most];
};

const randomPlaces = (dice: Dice, [low, high]: readonly [number, number]): [Place, number][] => {
	const inner = dice.rounded(low, low + (high - low) * 0.35, 1);
	const outer = dice.rounded(low + (high - low) * 0.6, high, 1);
	const extra = dice.pick([
		[6, 0],
		[3, 1],
		[1, 2],
	]);
	const others = Array.from({length: extra}, () => dice.rounded(low, high, 1));
	const kept = new Set([inner, outer, ...others]).size === extra + 2 ? others : [];
	const places: [Place, number][] = [
		['inner', inner],
		['outer', outer],
	];
	for (const radius of kept) {
		places.splice(dice.whole(0, places.length), 0, ['other', radius]);
	}
	return dice.chance(0.2) ? places.reverse() : places;
};

const randomProbes = (
	dice: Dice,
	bench: Bench,
	truth: Truth,
	places: [Place, number][],
	withTurned: boolean,
): ModelProbe[] => {
	const turnedAt = withTurned ? dice.whole(0, places.length - 1) : -1;
	const closingAt = dice.chance(0.6) ? dice.whole(0, places.length - 1) : -1;
	const offScaleAt = dice.chance(0.08) ? dice.whole(0, places.length - 1) : -1;
	const allOff = dice.chance(0.01);
	const single = dice.chance(0.08);
	return places.map((place, index) =>
		randomProbe(dice, bench, truth, place, {
			single,
			turned: index === turnedAt,
			closing: index === closingAt,
			offScale: allOff || index === offScaleAt,
		}),
	);
};

export const randomDocument = (seed: number): ModelDocument => {
	const dice = new Dice(seed);
	const drawn = randomFrame(dice);
	const zero = Number((dice.between(-0.6, 0.6) / scaleFactor({...drawn, probe: []})).toPrecision(2));
	const zeroSource = dice.pick([
		[4, 'turned'],
		[3, 'stated'],
		[3, 'unchecked'],
	] as const);
	const stated = {
		zero: dice.chance(0.1) ? 0 : zero,
		...(dice.chance(0.6) ? {zeroUncertainty: Math.abs(zero) / 3} : {}),
	};
	const frame: Frame = zeroSource === 'stated' ? {...drawn, gauge: {...drawn.gauge, ...stated}} : drawn;
	const within = reach(frame.arm);
	const places = randomPlaces(dice, within);
	const radiusOf = (wanted: Place): number => places.find(([place]) => place === wanted)?.[1] ?? 0;
	const truth = randomTruth(dice, frame, radiusOf('inner'), radiusOf('outer'));
	const bench = randomBench(dice, frame, zero);
	const probe = randomProbes(dice, bench, truth, places, zeroSource === 'turned');
	const probed = [radiusOf('outer'), radiusOf('inner')];
	return {
		...frame,
		probe,
		...(dice.chance(0.65) ? {bias: randomBias(dice, bench, truth, probed, within)} : {}),
	};
};

export const randomDocuments = (count: number, firstSeed = 1): ModelDocument[] =>
	Array.from({length: count}, (_, index) => randomDocument(firstSeed + index));
