import {swingAngleDeg} from '../measures/geometry.js';
import {toStep} from '../measures/hold-band.js';
import {clockText} from '../measures/lever.js';
import type {ArmSpec} from './arm-spec.js';
import {turnedAngleDeg} from './bias-torque.js';
import {gaugeLoadMn} from './torques.js';

/** What stands on the bench beside the arm, and how well it shows what it shows. */
export type Bench = {
	readonly level: {
		readonly stepDeg: number;
		/** What the level shows on a level deck. */
		readonly errorDeg: number;
	};
	/** Smallest step of the stylus scale, in mN. */
	readonly scaleStepMn: number;
	/** What the maker of the gauge promises of its scale, ± percent. */
	readonly gaugeScalePct: number;
	readonly clearance: {readonly stylusMm: number; readonly matRemovedMm: number; readonly guardDepthMm: number};
};

/** What the level shows in one direction, in its own sign: as it lies, and turned round on the same spot. */
export function levelShownDeg(spec: ArmSpec, {level}: Bench, axis: 'leftRightDeg' | 'frontBackDeg'): [number, number] {
	const tiltDeg = spec.tilt[axis];
	return [toStep(level.errorDeg + tiltDeg, level.stepDeg), toStep(level.errorDeg - tiltDeg, level.stepDeg)];
}

/** What the stylus scale shows with the guard on, not zeroed on it, in mN. */
export const scaleShownMn = (spec: ArmSpec, {scaleStepMn}: Bench): number => toStep(gaugeLoadMn(spec), scaleStepMn);

/** A lever is read to a quarter of an hour. */
const clockStepDeg = 7.5;

/** Where the lever of the bias stands on a clock face at a radius; undefined for an arm without one. */
export function leverClockShown(spec: ArmSpec, radiusMm: number): string | undefined {
	if (spec.bias?.device.kind !== 'weighted-lever') return;
	const deg = turnedAngleDeg(spec.bias.device.angle, swingAngleDeg(spec.geometry, radiusMm));
	return clockText(toStep(deg, clockStepDeg));
}

/** Angle between thread and bias pin of the bias at a radius, read to 5 degrees; undefined for an arm without one. */
export function threadAngleShownDeg(spec: ArmSpec, radiusMm: number): number | undefined {
	if (spec.bias?.device.kind !== 'weight-on-thread') return;
	return toStep(turnedAngleDeg(spec.bias.device.angle, swingAngleDeg(spec.geometry, radiusMm)), 5);
}
