import {degrees, radians} from './angles.js';

const degreesPerHour = 30;

/** A clock time such as '8:30' as degrees from 12 o'clock, clockwise; undefined when it is none. */
export function clockDeg(time: string): number | undefined {
	const found = /^([1-9]|1[0-2]):([0-5]\d)$/.exec(time);
	if (!found) return;
	const [, hours, minutes] = found;
	return ((Number(hours) % 12) + Number(minutes) / 60) * degreesPerHour;
}

/** Degrees from 12 o'clock as a clock time, to the minute of the hour hand. */
export function clockText(deg: number): string {
	const minutes = Math.round((((deg % 360) + 360) % 360) * (60 / degreesPerHour)) % 720;
	return `${Math.floor(minutes / 60) || 12}:${String(minutes % 60).padStart(2, '0')}`;
}

/**
 * Share of a hanging weight's torque that acts on its lever, or of a thread's tension that acts across a bias pin: the
 * sine of the angle. All where the lever lies level, half at 30° from upright, none where it stands or hangs upright (OpenStax University Physics vol. 1, 15.4:
 * torque of a hanging weight −L·m·g·sin θ).
 */
export const leverShare = (deg: number): number => {
	const share = Math.abs(Math.sin(radians(deg)));
	// 6 o'clock is none, not the rounding of a sine.
	return share < 1e-15 ? 0 : share;
};

/** The angle whose sine is a share, in degrees from 0 to 90. */
export const angleOfShare = (share: number): number => degrees(Math.asin(Math.min(1, Math.max(0, share))));
