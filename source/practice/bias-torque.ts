import {leverShare} from '../measures/lever.js';

/** Angle that turns with the arm: so many degrees at a swing, and so many more for each degree of swing. */
export type TurningAngle = {readonly atSwingDeg: number; readonly deg: number; readonly degPerDeg: number};

/** A bias (anti-skating) device and what sets its strength; every torque toward the rim, in µN·m. */
export type BiasMechanism =
	/** A weight over a thread to a bias pin: the sine of the angle between thread and bias pin acts. */
	| {readonly kind: 'weight-on-thread'; readonly fullMicroNm: number; readonly angle: TurningAngle}
	/** A weight on a lever, thread over a pulley: the sine of the lever's angle from 12 o'clock acts. */
	| {readonly kind: 'weighted-lever'; readonly fullMicroNm: number; readonly angle: TurningAngle}
	/** A spring that slackens as the arm goes outward (OpenStax University Physics vol. 1, 8.1, Hooke's law). */
	| {readonly kind: 'spring'; readonly atRestMicroNm: number; readonly slackeningMicroNmPerDeg: number}
	/** Two magnets that repel: the nearer the spindle, the nearer they stand; by the square of the gap (invented). */
	| {readonly kind: 'magnet'; readonly atRestMicroNm: number; readonly halfwayDeg: number};

/** Angle of the lever from 12 o'clock, or of the thread to the bias pin, in degrees. */
export const turnedAngleDeg = ({atSwingDeg, deg, degPerDeg}: TurningAngle, swingDeg: number): number =>
	deg + degPerDeg * (swingDeg - atSwingDeg);

/** Gap of two magnets at which the force is half that of the closest, over the closest gap: (1 + x)² = 2. */
const halfForceGap = Math.SQRT2 - 1;

/** Torque of a bias device at a swing angle, in µN·m, positive toward the rim. */
export function biasTorqueMicroNm(device: BiasMechanism, swingDeg: number): number {
	switch (device.kind) {
		case 'weight-on-thread':
		case 'weighted-lever':
			return device.fullMicroNm * leverShare(turnedAngleDeg(device.angle, swingDeg));
		case 'spring':
			return Math.max(0, device.atRestMicroNm - device.slackeningMicroNmPerDeg * swingDeg);
		case 'magnet':
			return device.atRestMicroNm / (1 + (halfForceGap * swingDeg) / device.halfwayDeg) ** 2;
	}
}
