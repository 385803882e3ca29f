import limits from '../../shared/limits.json' with {type: 'json'};
import {radians} from './angles.js';
import {isAtMost} from './compare.js';

/** One reading of a level, or two with the level turned round in between, each in the level's own scale. */
export type LevelReadings = readonly number[];

export type Tilt = {
	readonly tiltDeg: number;
	/** The level's own zero error; unknown after one reading. */
	readonly zeroErrorDeg: number | null;
};

/**
 * Tilt by reversal: half the difference of the two readings, the level's own error half their sum.
 * Reversal as in H. E. Burton, thesis, 1903, p. 32.
 */
export const levelTilt = ([firstDeg = 0, secondDeg]: LevelReadings): Tilt =>
	secondDeg === undefined
		? {tiltDeg: firstDeg, zeroErrorDeg: null}
		: {tiltDeg: (firstDeg - secondDeg) / 2, zeroErrorDeg: (firstDeg + secondDeg) / 2};

/**
 * Standard uncertainty of a tilt in degrees. A reading is good to step/√12 (JCGM 100:2008 F.2.2.1), half the
 * difference of two to step/√24; one reading also holds the level's unknown zero error.
 */
export const tiltUncertaintyDeg = (stepDeg: number, readings: LevelReadings): number =>
	readings.length > 1
		? stepDeg / Math.sqrt(24)
		: Math.sqrt(stepDeg ** 2 / 12 + limits.singleLevelReadingDeg.value ** 2);

/** How much lower the high side goes to be level, in mm for each 100 mm between the feet. */
export const dropPer100Mm = (tiltDeg: number): number => 100 * Math.tan(radians(Math.abs(tiltDeg)));

/** What the tilt may make of the pull, in percent: a quarter of the good pull limit. */
export const allowedTiltSharePct = (pullGoodPct: number): number => limits.levelShareOfGood.value * pullGoodPct;

/** The whole tilt of two directions, in degrees. */
export const wholeTiltDeg = (leftRight: Tilt, frontBack: Tilt): number =>
	Math.hypot(leftRight.tiltDeg, frontBack.tiltDeg);

const staysWithin = (sharesPct: readonly number[], mostPct: number, wholeDeg: number): boolean =>
	sharesPct.every((sharePct) => isAtMost(Math.abs(sharePct), mostPct)) &&
	isAtMost(wholeDeg, limits.levelWholeTiltDeg.value);

/** Whether a level passes: the tilt's share of the pull small enough at every radius, and the whole tilt. */
export const levelPasses = (sharesPct: readonly number[], wholeDeg: number, pullGoodPct: number): boolean =>
	staysWithin(sharesPct, allowedTiltSharePct(pullGoodPct), wholeDeg);

/** Whether it is so good that it need not be looked at again. */
export const levelIsFine = (sharesPct: readonly number[], wholeDeg: number, pullGoodPct: number): boolean =>
	staysWithin(sharesPct, limits.levelFineShareOfGood.value * pullGoodPct, wholeDeg);
