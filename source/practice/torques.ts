import {radians} from '../measures/angles.js';
import {torqueMicroNm} from '../measures/between-radii.js';
import {radiusAtSwingMm, swingAngleDeg} from '../measures/geometry.js';
import {outwardDirection, tiltSharePct} from '../measures/tilt-share.js';
import {carriedForceMn, mnPerGram} from '../measures/tracking-force.js';
import type {ArmSpec, Wire} from './arm-spec.js';
import {biasTorqueMicroNm} from './bias-torque.js';

/** The force that the gauge carries, in mN: the guard stays on, and weighs beside what the counterweight was set to. */
export const gaugeLoadMn = ({playingMn, guardMassG, isSetGuarded}: ArmSpec): number =>
	carriedForceMn(playingMn, isSetGuarded ? 0 : guardMassG);

/** Torque of a side force at the stylus, in µN·m; the force in percent of the playing force. */
export const torqueOfPct = ({playingMn, geometry}: ArmSpec, pct: number): number =>
	torqueMicroNm(pct, playingMn, geometry.effectiveLengthMm);

/** The other way round. */
export const pctOfTorque = (spec: ArmSpec, microNm: number): number => microNm / torqueOfPct(spec, 1);

/** Torque of the leads: back to their rest place, and the twist. */
export const wireTorqueMicroNm = (
	{geometry, wire}: {readonly geometry: ArmSpec['geometry']; readonly wire: Wire},
	swingDeg: number,
): number => wire.twistMicroNm - wire.springMicroNmPerDeg * (swingDeg - swingAngleDeg(geometry, wire.restRadiusMm));

// A gravity-loaded arm leans with all that the gauge carries, a spring-loaded one with the guard's own weight only.
const leaning = (spec: ArmSpec): number =>
	(spec.loading === 'gravity' ? gaugeLoadMn(spec) : spec.guardMassG * mnPerGram) / spec.playingMn;

/** What the tilt of the deck makes of the pull, in percent of the playing force. */
export const tiltPct = (spec: ArmSpec, radiusMm: number): number =>
	tiltSharePct(leaning(spec), spec.tilt, outwardDirection(spec.geometry, spec.pivotDirectionDeg, radiusMm));

/** The arm's own torque about the pivot beside friction and gauge, in µN·m, positive toward the rim. */
export function ownTorqueMicroNm(spec: ArmSpec, swingDeg: number): number {
	const tilt = torqueOfPct(spec, tiltPct(spec, radiusAtSwingMm(spec.geometry, swingDeg)));
	const bias = spec.bias?.isOn ? biasTorqueMicroNm(spec.bias.device, swingDeg) : 0;
	return wireTorqueMicroNm(spec, swingDeg) + tilt + bias;
}

/** Over how many mm friction grows to that of a worn race; steep enough that a probe beside it sees one or the other. */
const blendMm = 2;

function wear({friction: {worn}, geometry}: ArmSpec, swingDeg: number): number {
	if (!worn) return 1;
	const insideMm = worn.withinMm - radiusAtSwingMm(geometry, swingDeg);
	return 1 + (worn.times - 1) / (1 + Math.exp(-insideMm / blendMm));
}

const yieldOf = ({damping}: ArmSpec): number => (damping?.isIn ? damping.yieldMicroNm : 0);

/** The largest torque that friction meets while the arm is at rest, in µN·m. */
export const holdTorqueMicroNm = (spec: ArmSpec, swingDeg: number): number =>
	spec.friction.staticMicroNm * wear(spec, swingDeg) + yieldOf(spec);

/** Torque of friction on the moving arm, in µN·m; beside what the damping adds with speed. */
export const slideTorqueMicroNm = (spec: ArmSpec, swingDeg: number): number =>
	spec.friction.staticMicroNm * spec.friction.kineticShare * wear(spec, swingDeg) + yieldOf(spec);

/** Torque of the damping for each rad/s, in µN·m·s. */
export const viscousMicroNmS = ({damping}: ArmSpec): number => (damping?.isIn ? damping.viscousMicroNmS : 0);

/** Torque back to the gauge's neutral place, in µN·m for each rad of swing. */
export const gaugeMicroNmPerRad = (spec: ArmSpec): number =>
	(spec.gauge.restoringPctPerMm / 100) * gaugeLoadMn(spec) * spec.geometry.effectiveLengthMm ** 2;

/** Swing at which the stylus stands at a radius, in rad. */
export const swingAt = ({geometry}: ArmSpec, radiusMm: number): number => radians(swingAngleDeg(geometry, radiusMm));
