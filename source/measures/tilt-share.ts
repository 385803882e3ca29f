import constants from '../../shared/constants.json' with {type: 'json'};
import {radians} from './angles.js';
import {type ArmGeometry, spindleAngle} from './geometry.js';

/** A direction seen from above: x to the right, y to the back. */
export type PlanVector = {readonly x: number; readonly y: number};

export type TiltAxes = {readonly leftRightDeg: number; readonly frontBackDeg: number};

/**
 * The way the stylus moves when the arm swings toward the rim, at a radius, as a unit vector; seen from above with
 * the spindle at the origin and the pivot in the given direction (0° right, 90° back). The record turns clockwise.
 */
export const outwardDirection = (arm: ArmGeometry, pivotDirectionDeg: number, radiusMm: number): PlanVector => {
	const pivotAngle = radians(pivotDirectionDeg);
	const stylusAngle = pivotAngle - spindleAngle(arm, radiusMm);
	const fromPivotX = radiusMm * Math.cos(stylusAngle) - arm.pivotDistanceMm * Math.cos(pivotAngle);
	const fromPivotY = radiusMm * Math.sin(stylusAngle) - arm.pivotDistanceMm * Math.sin(pivotAngle);
	return {x: -fromPivotY / arm.effectiveLengthMm, y: fromPivotX / arm.effectiveLengthMm};
};

/**
 * Share that the tilt of the deck makes of the side pull, in percent of the playing force, positive toward the rim.
 *
 * @param leaning the force that leans with the deck over the playing force
 * @param tilt positive with the right side, or the back, higher
 */
export const tiltSharePct = (leaning: number, tilt: TiltAxes, outward: PlanVector): number =>
	-100 *
	leaning *
	(Math.tan(radians(tilt.leftRightDeg)) * outward.x + Math.tan(radians(tilt.frontBackDeg)) * outward.y);

/** Uncertainty (95 %) of the tilt share, in percent, from the larger standard uncertainty of the two axes. */
export const tiltShareUncertaintyPct = (leaning: number, uncertaintyDeg: number): number =>
	constants.normalQuantile975.value * 100 * leaning * Math.tan(radians(uncertaintyDeg));

/** Standard uncertainty, in percent, of what a tilt makes of the difference between the pulls at two radii. */
export const slantPct = (
	leaning: number,
	uncertaintyDeg: number,
	[one, other]: readonly [PlanVector, PlanVector],
): number => 100 * leaning * Math.tan(radians(uncertaintyDeg)) * Math.hypot(other.x - one.x, other.y - one.y);
