import limits from '../../shared/limits.json' with {type: 'json'};

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
