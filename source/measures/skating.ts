import {degrees} from './angles.js';
import type {ArmGeometry} from './geometry.js';

/**
 * Skating torque over drag torque: the sine of the angle between groove tangent and the line stylus–pivot,
 * (L² + r² − D²)/(2·L·r). Positive where skating pulls toward the spindle; the offset of the head enters only through
 * L and D. Resolution of the drag about the pivot (OpenStax University Physics vol. 1, 10.6, torque).
 */
export const skatingFraction = ({effectiveLengthMm: l, pivotDistanceMm: d}: ArmGeometry, radiusMm: number): number =>
	(l ** 2 + radiusMm ** 2 - d ** 2) / (2 * l * radiusMm);

/** Radius at which skating is least, √(L² − D²) in mm; null for an arm that does not reach past the spindle. */
export const leastSkatingRadiusMm = ({effectiveLengthMm: l, pivotDistanceMm: d}: ArmGeometry): number | null =>
	d >= l ? null : Math.sqrt(l ** 2 - d ** 2);

/**
 * The reading that the gauge should show with the bias on, in percent of tracking force toward the rim: own pull and
 * bias together balance the torque of skating.
 *
 * @param drag effective drag, groove drag over tracking force; an assumption, for no published value could be read
 */
export const wantedReadingPct = (arm: ArmGeometry, drag: number, radiusMm: number): number =>
	100 * drag * skatingFraction(arm, radiusMm);

export type WallShare = {readonly inner: number; readonly outer: number};

/**
 * Share of the load on each groove wall under a side pull. Walls stand at 45° (IEC 60098:2020 6.1); a pull toward
 * the spindle loads the inner wall, which is the left channel (6.2.1).
 */
export const wallShares = (sidePullPct: number): WallShare => ({
	inner: (1 - sidePullPct / 100) / 2,
	outer: (1 + sidePullPct / 100) / 2,
});

/**
 * Force that the groove walls give along the radius, in the unit of the force handed in: a leftover torque (over the
 * effective length) over the cosine of the angle between groove tangent and the line stylus–pivot. Without bias that is
 * drag times the tangent of the angle, where the torque alone is drag times its sine. Resolution of forces at the
 * stylus (OpenStax University Physics vol. 1, 5.6).
 *
 * @param fraction sine of that angle
 */
export const wallForce = (leftoverForce: number, fraction: number): number =>
	leftoverForce / Math.sqrt(1 - fraction ** 2);

/** How far a side pull leans the stylus over, in µm. One µm/mN is 10⁻⁶ cm/dyn. */
export const leanMicrometres = (sidePullPct: number, playingMn: number, complianceUmPerMn: number): number =>
	(Math.abs(sidePullPct) / 100) * playingMn * complianceUmPerMn;

/** The lean as an angle at the cantilever's hinge, in degrees. */
export const leanDegrees = (leanUm: number, cantileverMm: number): number =>
	degrees(Math.atan(leanUm / (1000 * cantileverMm)));
