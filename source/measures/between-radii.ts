import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove, isAtLeast, isAtMost} from './compare.js';
import {type ArmGeometry, radiusAtSwingMm, reachMm, swingAngleDeg} from './geometry.js';

/** A figure at a radius, in percent of the playing force. */
export type FigureAt = {readonly radiusMm: number; readonly valuePct: number};

/** E_n, the size of a difference over its uncertainty (ISO 13528); above 1 the two differ. */
export const differenceEn = (differencePct: number, uncertaintyPct: number): number =>
	Math.abs(differencePct) / uncertaintyPct;

/** Torque at the pivot that a side force at the stylus makes, in µN·m (mN·mm). */
export const torqueMicroNm = (sideForcePct: number, playingMn: number, effectiveLengthMm: number): number =>
	(sideForcePct / 100) * playingMn * effectiveLengthMm;

const slopePctPerDeg = (arm: ArmGeometry, inner: FigureAt, outer: FigureAt): number =>
	(outer.valuePct - inner.valuePct) / (swingAngleDeg(arm, outer.radiusMm) - swingAngleDeg(arm, inner.radiusMm));

/**
 * Change of the arm's own torque with its swing, in µN·m per degree: negative pushes back to a neutral place, like
 * a spring; positive runs away from it.
 */
export const torqueSlopeMicroNmPerDeg = (
	arm: ArmGeometry,
	playingMn: number,
	inner: FigureAt,
	outer: FigureAt,
): number => torqueMicroNm(slopePctPerDeg(arm, inner, outer), playingMn, arm.effectiveLengthMm);

/**
 * Radius at which the straight line (in swing angle) through both figures crosses zero, in mm; null where that is
 * no place near a record that the arm can swing to.
 */
export const neutralRadiusMm = (arm: ArmGeometry, inner: FigureAt, outer: FigureAt): number | null => {
	const slope = slopePctPerDeg(arm, inner, outer);
	if (slope === 0) return null;
	const swingDeg = swingAngleDeg(arm, inner.radiusMm) - inner.valuePct / slope;
	// Past half a turn the law of cosines would give the radius of another place.
	if (!isAtLeast(swingDeg, 0) || isAbove(swingDeg, 180)) return null;
	const radiusMm = radiusAtSwingMm(arm, swingDeg);
	const [leastMm] = reachMm(arm);
	return isAtLeast(radiusMm, leastMm) && isAtMost(radiusMm, limits.neutralOutermostMm.value) ? radiusMm : null;
};
