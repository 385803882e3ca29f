import {radians} from '../measures/angles.js';
import {type ArmGeometry, spindleAngle} from '../measures/geometry.js';
import type {PlanVector} from '../measures/tilt-share.js';

/** A place on the deck from above, in mm seen from the spindle: x to the right, y to the back. */
export type PlanPlace = PlanVector;

/** Where the pivot stands, in mm seen from the spindle: x to the right, y to the back. */
export const pivotPlace = ({pivotDistanceMm}: ArmGeometry, pivotDirectionDeg: number): PlanVector =>
	polar(pivotDistanceMm, radians(pivotDirectionDeg));

/** Where the stylus stands at a radius, in mm seen from the spindle; the record turns clockwise. */
export const stylusPlace = (arm: ArmGeometry, pivotDirectionDeg: number, radiusMm: number): PlanVector =>
	polar(radiusMm, radians(pivotDirectionDeg) - spindleAngle(arm, radiusMm));

const polar = (lengthMm: number, angle: number): PlanVector => ({
	x: lengthMm * Math.cos(angle),
	y: lengthMm * Math.sin(angle),
});
