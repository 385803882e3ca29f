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
