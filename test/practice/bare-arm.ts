import {degrees, radians} from '../../source/measures/angles.js';
import {swingAngleDeg} from '../../source/measures/geometry.js';
import type {ArmSpec} from '../../source/practice/arm-spec.js';
import {newPracticeArm, type PracticeArm} from '../../source/practice/practice-arm.js';
import {soundArm} from '../../source/practice/sound-arm.js';

/** An invented arm on which nothing acts but what a test puts there: one percent of its playing force is 40 µN·m. */
export const bareArm: ArmSpec = {
	...soundArm,
	geometry: {effectiveLengthMm: 200, pivotDistanceMm: 184},
	playingMn: 20,
	guardMassG: 0,
	momentKgMm2: 600,
	friction: {staticMicroNm: 0, kineticShare: 0.8},
	wire: {springMicroNmPerDeg: 0, restRadiusMm: 100, twistMicroNm: 0},
	tilt: {leftRightDeg: 0, frontBackDeg: 0},
	gauge: {stepPct: 0.1, topPct: 20, restoringPctPerMm: 4, zeroPct: 0, gainPct: 0, trembleSteps: 0},
	settingUpPct: 0,
	scatterPct: 0,
	unrestPct: 0,
};

export const pctMicroNm = 40;

/** Free of the gauge, at rest, so many degrees outside a radius. */
export const freeAt = (spec: ArmSpec, radiusMm: number, offDeg: number): PracticeArm => ({
	...newPracticeArm(spec, 1),
	swingRad: radians(swingAngleDeg(spec.geometry, radiusMm) + offDeg),
});

/** How far it stands outside a radius, in degrees. */
export const offDeg = ({spec, swingRad}: PracticeArm, radiusMm: number): number =>
	degrees(swingRad) - swingAngleDeg(spec.geometry, radiusMm);
