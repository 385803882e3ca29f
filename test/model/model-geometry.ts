import {above, atMost} from './model-compare.js';
import type {AxisOutput, ModelArm, ModelDocument, ModelLevel} from './model-types.js';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degrees = (angle: number): number => (angle * 180) / Math.PI;

export const gramForce = 9.80665;

/** The ends of the reach may come out past 1 by a rounding. */
const arcCosine = (value: number): number => Math.acos(Math.min(1, Math.max(-1, value)));

/** Swing angle at the pivot, in degrees (section 8). */
export const swingAngle = (arm: ModelArm, radius: number): number => {
	const {effectiveLengthMm: l, pivotDistanceMm: d} = arm;
	return degrees(arcCosine((l ** 2 + d ** 2 - radius ** 2) / (2 * l * d)));
};

export const radiusAtSwing = (arm: ModelArm, angleDeg: number): number => {
	const {effectiveLengthMm: l, pivotDistanceMm: d} = arm;
	return Math.sqrt(l ** 2 + d ** 2 - 2 * l * d * Math.cos(radians(angleDeg)));
};

/** Sine of the angle between groove tangent and the line stylus–pivot (section 9). */
export const fraction = (arm: ModelArm, radius: number): number => {
	const {effectiveLengthMm: l, pivotDistanceMm: d} = arm;
	return (l ** 2 + radius ** 2 - d ** 2) / (2 * l * radius);
};

export const carried = (document: ModelDocument): number => {
	const {scaleReadingMn, guard, guardMassG} = document.trackingForce;
	return guard === 'left-out' ? scaleReadingMn + (guardMassG ?? 0) * gramForce : scaleReadingMn;
};

export const scaleFactor = (document: ModelDocument): number => {
	const v = document.trackingForce.playingMn;
	switch (document.gauge.unit) {
		case 'percent':
			return carried(document) / v;
		case 'mN':
			return 100 / v;
		case 'gf':
			return 980.665 / v;
	}
};

/** Which force the tilt acts on, as a share of the playing force. */
const leaning = (document: ModelDocument): number => {
	const {playingMn, guard, guardMassG} = document.trackingForce;
	if (document.arm.loading === 'gravity') {
		return carried(document) / playingMn;
	}
	return guard === 'none' ? 0 : ((guardMassG ?? 0) * gramForce) / playingMn;
};

export const readAxis = (readings: number[]): AxisOutput => {
	const [first = 0, second] = readings;
	return second === undefined
		? {tiltDeg: first, zeroErrorDeg: null}
		: {tiltDeg: (first - second) / 2, zeroErrorDeg: (first + second) / 2};
};

const axisUncertainty = (readings: number[], step: number): number =>
	readings.length === 2 ? step / Math.sqrt(24) : Math.sqrt(step ** 2 / 12 + 0.2 ** 2);

/** The larger standard uncertainty of the two tilts, in degrees. */
const tiltUncertainty = (level: ModelLevel): number =>
	Math.max(axisUncertainty(level.leftRightDeg, level.stepDeg), axisUncertainty(level.frontBackDeg, level.stepDeg));

/** The outward direction at a radius, seen from above. */
export const outward = (arm: ModelArm, radius: number): [number, number] => {
	const {effectiveLengthMm: l, pivotDistanceMm: d, pivotDirectionDeg = 45} = arm;
	const psi = radians(pivotDirectionDeg);
	const eta = arcCosine((d ** 2 + radius ** 2 - l ** 2) / (2 * d * radius));
	const stylus = [radius * Math.cos(psi - eta), radius * Math.sin(psi - eta)] as const;
	const pivot = [d * Math.cos(psi), d * Math.sin(psi)] as const;
	return [-(stylus[1] - pivot[1]) / l, (stylus[0] - pivot[0]) / l];
};

export const tiltShare = (document: ModelDocument, radius: number): number | null => {
	if (document.level === undefined) {
		return null;
	}
	const leftRight = radians(readAxis(document.level.leftRightDeg).tiltDeg);
	const frontBack = radians(readAxis(document.level.frontBackDeg).tiltDeg);
	const [x, y] = outward(document.arm, radius);
	return -100 * leaning(document) * (Math.tan(leftRight) * x + Math.tan(frontBack) * y);
};

export const tiltShareUncertainty = (document: ModelDocument): number | null =>
	document.level === undefined
		? null
		: 1.959964 * 100 * leaning(document) * Math.tan(radians(tiltUncertainty(document.level)));

/** What the unsure tilt leaves in the difference of two pulls (standard uncertainty). */
export const slant = (document: ModelDocument, outer: number, inner: number): number => {
	if (document.level === undefined) {
		return 0;
	}
	const [ox, oy] = outward(document.arm, outer);
	const [ix, iy] = outward(document.arm, inner);
	return 100 * leaning(document) * Math.tan(radians(tiltUncertainty(document.level))) * Math.hypot(ox - ix, oy - iy);
};

export const levelPasses = (document: ModelDocument, pullGood: number): boolean => {
	const level = document.level;
	if (level === undefined) {
		return true;
	}
	const whole = Math.hypot(readAxis(level.leftRightDeg).tiltDeg, readAxis(level.frontBackDeg).tiltDeg);
	return (
		atMost(whole, 0.5) &&
		document.probe.every(({radiusMm}) => atMost(Math.abs(tiltShare(document, radiusMm) ?? 0), pullGood / 4))
	);
};

export const clearance = (document: ModelDocument) => {
	if (document.clearance === undefined) {
		return null;
	}
	const {stylusMm, matRemovedMm = 0, guardDepthMm} = document.clearance;
	const stylusWindowMm: [number, number] = [2 + matRemovedMm, 3 + matRemovedMm];
	const inside = atMost(stylusWindowMm[0], stylusMm) && atMost(stylusMm, stylusWindowMm[1]);
	if (guardDepthMm === undefined || document.trackingForce.guard === 'none') {
		return {stylusWindowMm, guardWindowMm: null, passes: inside};
	}
	const guardWindowMm: [number, number] = [stylusWindowMm[0] - guardDepthMm, stylusWindowMm[1] - guardDepthMm];
	return {stylusWindowMm, guardWindowMm, passes: inside && above(stylusMm - guardDepthMm, 0.5)};
};
