import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isWithin} from './compare.js';

export type WindowMm = readonly [number, number];

/** Where the stylus should stand above the surface under it, in mm: 2 to 3, and as much more as the mat taken off (common practice). */
export const stylusWindowMm = (matRemovedMm: number): WindowMm => [
	limits.clearanceLowMm.value + matRemovedMm,
	limits.clearanceHighMm.value + matRemovedMm,
];

/** The same window measured at the guard's underside, in mm, not clipped at the surface. */
export const guardWindowMm = ([low, high]: WindowMm, guardDepthMm: number): WindowMm => [
	low - guardDepthMm,
	high - guardDepthMm,
];

/** Whether the guard's underside stays clear of the surface. */
export const guardIsClear = (stylusMm: number, guardDepthMm: number): boolean =>
	isAbove(stylusMm - guardDepthMm, limits.guardGapMm.value);

/** Whether the stylus stands inside its window, and the guard (where its depth is known) clear of the surface. */
export const clearancePasses = (stylusMm: number, window: WindowMm, guardDepthMm: number | undefined): boolean =>
	isWithin(stylusMm, window) && (guardDepthMm === undefined || guardIsClear(stylusMm, guardDepthMm));
