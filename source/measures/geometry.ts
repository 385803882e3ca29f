import limits from '../../shared/limits.json' with {type: 'json'};
import {degrees, radians} from './angles.js';
import {isAbove, isBelow, isWithin} from './compare.js';

/** Effective length L (pivot to stylus) and pivot distance D (pivot to spindle), both in plan. */
export type ArmGeometry = {readonly effectiveLengthMm: number; readonly pivotDistanceMm: number};

// Rounding may carry a cosine past 1 where the triangle is flat.
const safeAcos = (cosine: number): number => Math.acos(Math.min(1, Math.max(-1, cosine)));

/** The radii that the stylus reaches: |L − D| to L + D, in mm. */
export const reachMm = ({effectiveLengthMm, pivotDistanceMm}: ArmGeometry): readonly [number, number] => [
	Math.abs(effectiveLengthMm - pivotDistanceMm),
	effectiveLengthMm + pivotDistanceMm,
];

/** Whether the stylus can stand at this radius, its ends included. */
export const reaches = (arm: ArmGeometry, radiusMm: number): boolean => isWithin(radiusMm, reachMm(arm));

/** Whether a probe can stand at this radius: inside the ends of its reach, where the arm's triangle is not flat. */
export const canBeProbed = (arm: ArmGeometry, radiusMm: number): boolean => {
	const [least, most] = reachMm(arm);
	const margin = limits.reachMarginMm.value;
	return isAbove(radiusMm, least + margin) && isBelow(radiusMm, most - margin);
};

/** Angle at the pivot between spindle and stylus, 0° over the line to the spindle: law of cosines. */
export const swingAngleDeg = ({effectiveLengthMm: l, pivotDistanceMm: d}: ArmGeometry, radiusMm: number): number =>
	degrees(safeAcos((l ** 2 + d ** 2 - radiusMm ** 2) / (2 * l * d)));

/** Distance spindle–stylus at a swing angle, in mm. */
export const radiusAtSwingMm = ({effectiveLengthMm: l, pivotDistanceMm: d}: ArmGeometry, swingDeg: number): number =>
	Math.sqrt(Math.max(0, l ** 2 + d ** 2 - 2 * l * d * Math.cos(radians(swingDeg))));

/** Angle at the spindle between pivot and stylus, in radians. */
export const spindleAngle = ({effectiveLengthMm: l, pivotDistanceMm: d}: ArmGeometry, radiusMm: number): number =>
	safeAcos((d ** 2 + radiusMm ** 2 - l ** 2) / (2 * d * radiusMm));

/** How far the stylus reaches beyond the spindle, in mm; negative for an arm that falls short of it. */
export const overhangMm = ({effectiveLengthMm, pivotDistanceMm}: ArmGeometry): number =>
	effectiveLengthMm - pivotDistanceMm;

/**
 * The two radii at which the cartridge stands tangent to the groove, smaller first, from the arm as it is:
 * their sum is 2·L·sin(offset), their product L² − D². Null when there are no two such radii.
 */
export const nullRadiiMm = (arm: ArmGeometry, offsetDeg: number): readonly [number, number] | null => {
	const halfSum = arm.effectiveLengthMm * Math.sin(radians(offsetDeg));
	const product = arm.effectiveLengthMm ** 2 - arm.pivotDistanceMm ** 2;
	const square = halfSum ** 2 - product;
	// Where both meet in one, rounding may carry the square below zero.
	if (isBelow(square, 0) || product <= 0 || halfSum <= 0) return null;
	const half = Math.sqrt(Math.max(0, square));
	return [halfSum - half, halfSum + half];
};
