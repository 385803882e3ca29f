import {degrees} from '../measures/angles.js';
import type {ArmSpec} from './arm-spec.js';
import {holdTorqueMicroNm, ownTorqueMicroNm, slideTorqueMicroNm} from './torques.js';

/** Torques over the swing in µN·m, at equal steps from the line pivot–spindle outward. */
export type TorqueTable = ReturnType<typeof torqueTable>;

const stepDeg = 0.1;
const toDeg = 60;
const count = Math.round(toDeg / stepDeg) + 1;
const perRad = degrees(1) / stepDeg;

/**
 * The torques of an arm, worked out once: the motion asks for them every millisecond, and trigonometry would cost more
 * than all the rest. Between the steps a straight line is good to 1e-6 of what bends (step²/8 of a sine).
 */
export function torqueTable(spec: ArmSpec) {
	const sampled = (torque: (spec: ArmSpec, swingDeg: number) => number): Float64Array =>
		Float64Array.from({length: count}, (_, index) => torque(spec, index * stepDeg));
	return {
		own: sampled(ownTorqueMicroNm),
		hold: sampled(holdTorqueMicroNm),
		slide: sampled(slideTorqueMicroNm),
	};
}

/** Value at a swing, the straight line between its steps; beyond the table its last value. */
export function torqueAt(values: Float64Array, swingRad: number): number {
	const place = Math.min(count - 1, Math.max(0, swingRad * perRad));
	const index = Math.min(count - 2, Math.floor(place));
	const below = values[index] ?? 0;
	return below + ((values[index + 1] ?? below) - below) * (place - index);
}
