import {degrees} from '../measures/angles.js';
import {radiusAtSwingMm} from '../measures/geometry.js';
import type {ArmSpec} from './arm-spec.js';
import {type ChanceState, chanceFrom, evenUnit, resumedChance} from './chance.js';
import {type GaugeStand, standingAt} from './gauge.js';
import type {Finger} from './motion.js';
import {type TorqueTable, torqueTable} from './torque-table.js';
import {swingAt, torqueOfPct} from './torques.js';

/** An invented arm at one moment. Plain values; every function of it gives a new one. */
export type PracticeArm = {
	readonly spec: ArmSpec;
	readonly table: TorqueTable;
	readonly timeMs: number;
	/** Swing from the line pivot–spindle outward. */
	readonly swingRad: number;
	readonly rateRadPerS: number;
	/** The gauge that carries the stylus; null while the arm is free of it. */
	readonly gauge: GaugeStand | null;
	readonly finger: Finger | null;
	/** Side force that this setting up of arm and gauge makes, and this search for a limit, as torques in µN·m. */
	readonly settingUpMicroNm: number;
	readonly scatterMicroNm: number;
	/** Wandering side force, in its standard deviations. */
	readonly unrest: number;
	/** Trembling of the shown value, from −1 to 1. */
	readonly tremble: number;
	/** When the arm last moved. */
	readonly movedAtMs: number;
	readonly chance: ChanceState;
};

export type SwingWay = 'in' | 'out';

/** Where the arm waits until a gauge is put under it, in mm. */
const waitingRadiusMm = 150;

/**
 * An invented arm, free of the gauge and still.
 *
 * @param seed the same seed and the same calls give the same run
 */
export function newPracticeArm(spec: ArmSpec, seed: number): PracticeArm {
	const chance = chanceFrom(seed);
	const unrest = evenUnit(chance);
	return {
		spec,
		table: torqueTable(spec),
		timeMs: 0,
		swingRad: swingAt(spec, waitingRadiusMm),
		rateRadPerS: 0,
		gauge: null,
		finger: null,
		settingUpMicroNm: 0,
		scatterMicroNm: 0,
		unrest,
		tremble: 0,
		movedAtMs: 0,
		chance: chance.getState(),
	};
}

/**
 * The same arm, in the same place, with something changed: the deck levelled, the bias off, the paddle out. A changed gauge
 * shows once it is placed anew.
 */
export const withChange = (arm: PracticeArm, change: Partial<ArmSpec>): PracticeArm => {
	const spec = {...arm.spec, ...change};
	return {...arm, spec, table: torqueTable(spec)};
};

/**
 * Puts the gauge at a radius and the arm on it, at the gauge's neutral place and at rest; let go there, it may swing.
 *
 * @param isTurned the gauge stands end for end, so that in its own sign the arm pushes the other way
 */
export const placeGauge = (arm: PracticeArm, radiusMm: number, isTurned = false): PracticeArm => {
	const chance = resumedChance(arm.chance);
	const settingUpMicroNm = torqueOfPct(arm.spec, arm.spec.settingUpPct * evenUnit(chance));
	return lookedFor({
		...arm,
		gauge: standingAt(arm.spec, radiusMm, isTurned),
		swingRad: swingAt(arm.spec, radiusMm),
		rateRadPerS: 0,
		finger: null,
		movedAtMs: arm.timeMs,
		settingUpMicroNm,
		chance: chance.getState(),
	});
};

/** The arm as the next limit is looked for: friction lets go a little earlier or later each time. */
export function lookedFor(arm: PracticeArm): PracticeArm {
	const chance = resumedChance(arm.chance);
	const scatterMicroNm = torqueOfPct(arm.spec, arm.spec.scatterPct * evenUnit(chance));
	return {...arm, scatterMicroNm, chance: chance.getState()};
}

/**
 * Pushes the arm with a finger, which meets it where it is, moves with it, and pushes on by so many mm. A quick push lets
 * the arm fly on by itself, and a push on an arm that still moves that way carries it farther.
 *
 * @param quicknessMmPerS speed of the push; half a mm in a second is careful
 */
export function withFinger(arm: PracticeArm, mm: number, way: SwingWay, quicknessMmPerS: number): PracticeArm {
	const sign = way === 'out' ? 1 : -1;
	const perMm = 1 / arm.spec.geometry.effectiveLengthMm;
	const following = Math.max(0, arm.rateRadPerS * sign);
	return {
		...arm,
		finger: {
			atRad: arm.swingRad,
			toRad: arm.swingRad + sign * mm * perMm,
			rateRadPerS: sign * (following + quicknessMmPerS * perMm),
		},
	};
}

/** How far the stylus stands off the gauge's neutral place, in mm, positive toward the rim; 0 without a gauge. */
export const offNeutralMm = ({spec, gauge, swingRad}: PracticeArm): number =>
	gauge === null ? 0 : (swingRad - gauge.neutralRad) * spec.geometry.effectiveLengthMm;

/** Distance spindle–stylus, in mm. */
export const stylusRadiusMm = ({spec, swingRad}: PracticeArm): number =>
	radiusAtSwingMm(spec.geometry, degrees(swingRad));

/** For how long the arm has not moved, in ms. */
export const stillForMs = ({timeMs, movedAtMs}: PracticeArm): number => timeMs - movedAtMs;
