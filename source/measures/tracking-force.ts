import constants from '../../shared/constants.json' with {type: 'json'};

/** Weight of a mass, in mN per gram: standard gravity, 3rd CGPM 1901. */
export const mnPerGram = constants.standardGravity.value;

/**
 * The force that the gauge carries during the probe, in mN.
 *
 * @param scaleReadingMn what the stylus scale showed
 * @param guardLeftOutG mass of a guard that is on during the probe but was not in that reading; 0 when it was, or there is none
 */
export const carriedForceMn = (scaleReadingMn: number, guardLeftOutG: number): number =>
	scaleReadingMn + guardLeftOutG * mnPerGram;

/** Percent of the playing force for each percent that the gauge shows: its scale is percent of the force it carries. */
export const percentScaleFactor = (carriedMn: number, playingMn: number): number => carriedMn / playingMn;

/** Percent of the playing force for each unit that the gauge shows, for a gauge of force. */
export const forceScaleFactor = (mnPerUnit: number, playingMn: number): number => (100 * mnPerUnit) / playingMn;
