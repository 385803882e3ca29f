import type {ModelArm, ModelDocument, ModelGauge, ModelLevel, ModelTrackingForce} from './model-types.js';
import type {Dice} from './random-dice.js';

/** Everything of a document but what is read with the gauge. */
export interface Frame {
	arm: ModelArm;
	gauge: ModelGauge;
	trackingForce: ModelTrackingForce;
	level?: ModelLevel;
	clearance?: NonNullable<ModelDocument['clearance']>;
	cartridge?: NonNullable<ModelDocument['cartridge']>;
	limits?: NonNullable<ModelDocument['limits']>;
}

const randomLengths = (dice: Dice): [number, number] => {
	const length = dice.rounded(190, 320, 1);
	const kind = dice.pick([
		[16, 'overhung'],
		[2, 'underhung'],
		[0.4, 'as long as it stands off'],
		[0.5, 'reaches no inner groove'],
		[1, 'tiny'],
	] as const);
	switch (kind) {
		case 'overhung':
			return [length, length - dice.rounded(8, 22, 1)];
		case 'underhung':
			return [length, length + dice.rounded(5, 20, 1)];
		case 'as long as it stands off':
			return [length, length];
		case 'reaches no inner groove':
			return [length, length - dice.rounded(62, 90, 1)];
		case 'tiny':
			return [dice.rounded(24, 45, 1), dice.rounded(20, 45, 1)];
	}
};

const randomArm = (dice: Dice): ModelArm => {
	const [effectiveLengthMm, pivotDistanceMm] = randomLengths(dice);
	return {
		effectiveLengthMm,
		pivotDistanceMm,
		loading: dice.chance(0.7) ? 'gravity' : 'spring',
		...(dice.chance(0.4) ? {pivotDirectionDeg: dice.rounded(-180, 180, 0)} : {}),
	};
};

const randomForce = (dice: Dice, unit: ModelGauge['unit']): ModelTrackingForce => {
	const playingMn = dice.rounded(10, 30, 1);
	const guard = dice.pick([
		[5, 'included'],
		[2, 'left-out'],
		[3, 'none'],
	] as const);
	const floated = unit !== 'percent' && dice.chance(0.2);
	const weighed = dice.chance(0.5) ? playingMn : dice.rounded(playingMn * 0.8, playingMn * 1.15, 2);
	const massKnown = guard === 'left-out' || dice.chance(0.6);
	return {
		playingMn,
		scaleReadingMn: floated ? 0 : weighed,
		guard,
		...(massKnown ? {guardMassG: dice.chance(0.1) ? 0 : dice.rounded(0.1, 0.8, 2)} : {}),
		...(dice.chance(0.5) ? {relativeUncertaintyPct: dice.rounded(0, 3, 1)} : {}),
	};
};

const randomGauge = (dice: Dice, unit: ModelGauge['unit'], playingMn: number): ModelGauge => {
	const perUnit = {percent: 1, mN: 100 / playingMn, gf: 980.665 / playingMn}[unit];
	const rough = dice.pick([
		[3, 0.02],
		[4, 0.1],
		[3, 0.2],
		[3, 0.5],
		[0.6, 1],
		[0.4, 2],
	]);
	const step = (rough * dice.between(0.8, 1.25)) / perUnit;
	const asSold = dice.chance(0.85) ? Number(step.toPrecision(1)) : step;
	const nudge = dice.pick([
		[1, 0],
		[2, asSold],
		[1, asSold / 2],
		[0.5, asSold * 3],
	]);
	return {
		unit,
		step: asSold,
		topOfScale: Number((dice.between(18, 40) / perUnit).toPrecision(2)),
		...(dice.chance(0.6) ? {relativeUncertaintyPct: dice.rounded(0, dice.chance(0.6) ? 1 : 5, 1)} : {}),
		...(dice.chance(0.7) ? {nudge} : {}),
		...(dice.chance(0.7) ? {setAnew: dice.chance(0.8)} : {}),
	};
};

const randomLevel = (dice: Dice): ModelLevel | undefined => {
	const size = dice.pick([
		[5, undefined],
		[5, 0.15],
		[2, 0.8],
		[3, 4],
	]);
	if (size === undefined) {
		return undefined;
	}
	const readings = (): number[] => {
		const tilt = dice.rounded(-size, size, 2);
		const own = dice.rounded(-0.2, 0.2, 2);
		return dice.chance(0.7) ? [tilt + own, own - tilt] : [tilt];
	};
	return {stepDeg: dice.chance(0.1) ? 0 : 0.05, leftRightDeg: readings(), frontBackDeg: readings()};
};

const randomClearance = (dice: Dice): Frame['clearance'] => {
	const mat = dice.chance(0.5) ? dice.rounded(0, 4, 1) : undefined;
	return {
		stylusMm: dice.chance(0.7) ? (mat ?? 0) + dice.rounded(1.8, 3.2, 1) : dice.rounded(0, 6, 1),
		...(mat === undefined ? {} : {matRemovedMm: mat}),
		...(dice.chance(0.6) ? {guardDepthMm: dice.rounded(0, 3, 1)} : {}),
	};
};

const randomLimits = (dice: Dice): Frame['limits'] => ({
	...(dice.chance(0.5) ? {pullGoodPct: dice.rounded(0.5, 3, 1)} : {}),
	...(dice.chance(0.5) ? {pullUsablePct: dice.rounded(3, 6, 1)} : {}),
	...(dice.chance(0.5) ? {bandGoodPct: dice.rounded(1, 4, 1)} : {}),
	...(dice.chance(0.5) ? {bandUsablePct: dice.rounded(4.1, 9, 1)} : {}),
});

export const randomFrame = (dice: Dice): Frame => {
	const unit = dice.pick([
		[5, 'percent'],
		[3, 'mN'],
		[2, 'gf'],
	] as const);
	const trackingForce = randomForce(dice, unit);
	const level = randomLevel(dice);
	const clearance = dice.chance(0.6) ? randomClearance(dice) : undefined;
	const limits = dice.chance(0.4) ? randomLimits(dice) : undefined;
	const cartridge = {
		...(dice.chance(0.7) ? {staticComplianceUmPerMn: dice.rounded(4, 30, 1)} : {}),
		...(dice.chance(0.7) ? {cantileverMm: dice.rounded(4, 8, 1)} : {}),
	};
	return {
		arm: randomArm(dice),
		gauge: randomGauge(dice, unit, trackingForce.playingMn),
		trackingForce,
		...(level === undefined ? {} : {level}),
		...(clearance === undefined ? {} : {clearance}),
		...(dice.chance(0.6) ? {cartridge} : {}),
		...(limits === undefined ? {} : {limits}),
	};
};
