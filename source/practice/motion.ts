import {type TorqueTable, torqueAt} from './torque-table.js';

/** What acts on the arm and does not change while it moves; torques in µN·m, angles in rad. */
export type Surroundings = {
	readonly table: TorqueTable;
	readonly momentKgMm2: number;
	readonly viscousMicroNmS: number;
	/** Restoring torque of the gauge for each rad, its neutral place, and the ends of its travel. */
	readonly gaugeMicroNmPerRad: number;
	readonly neutralRad: number;
	readonly innermostRad: number;
	readonly outermostRad: number;
};

/** A finger that follows the arm and pushes it; it never holds the arm back. */
export type Finger = {readonly atRad: number; readonly toRad: number; readonly rateRadPerS: number};

/** The moving part, finger included. Changed in place: a run takes a thousand steps a second. */
export type MovingArm = {
	swingRad: number;
	rateRadPerS: number;
	finger: {-readonly [Key in keyof Finger]: Finger[Key]} | null;
	/** Side force beside what the arm makes at its place, as a torque in µN·m. */
	unrestMicroNm: number;
};

/** Below this the arm counts as still, in rad/s: a fifth of a micrometre a second at the stylus. */
const stillRadPerS = 1e-6;

/** Torque on the arm beside all friction. */
const driving = (body: MovingArm, {table, gaugeMicroNmPerRad, neutralRad}: Surroundings): number =>
	torqueAt(table.own, body.swingRad) + body.unrestMicroNm - gaugeMicroNmPerRad * (body.swingRad - neutralRad);

/** Whether the arm, at rest, stays so: friction meets any torque up to its limit, and a stop any torque into it. */
export function isHeld(body: MovingArm, around: Surroundings): boolean {
	if (body.rateRadPerS !== 0 || body.finger !== null) return false;
	const torque = driving(body, around);
	if (Math.abs(torque) <= torqueAt(around.table.hold, body.swingRad)) return true;
	return torque > 0 ? body.swingRad >= around.outermostRad : body.swingRad <= around.innermostRad;
}

/**
 * One time step. Stick and slip after Karnopp (ASME J. Dyn. Syst. Meas. Control 107 (1985) 100–103, from memory): within a
 * small zone about rest the friction takes whatever value keeps the arm still, up to its limit. Between stops the step
 * is velocity Verlet (Verlet, Phys. Rev. 159 (1967) 98, from memory); the first half of the fluid's drag is implicit.
 * A step in which friction would turn the arm back ends at rest.
 */
export function moveOn(body: MovingArm, around: Surroundings, seconds: number): void {
	const torque = driving(body, around);
	const isStill = Math.abs(body.rateRadPerS) < stillRadPerS;
	if (isStill && Math.abs(torque) <= torqueAt(around.table.hold, body.swingRad)) body.rateRadPerS = 0;
	else swing(body, around, seconds, torque, Math.sign(isStill ? torque : body.rateRadPerS));
	if (body.finger !== null) push(body, body.finger, seconds);
	keepWithinStops(body, around);
}

function swing(body: MovingArm, around: Surroundings, seconds: number, torque: number, way: number): void {
	const perTorque = seconds / (2 * around.momentKgMm2);
	const drag = perTorque * around.viscousMicroNmS;
	const friction = torqueAt(around.table.slide, body.swingRad);
	const halfway = stopped((body.rateRadPerS + perTorque * (torque - way * friction)) / (1 + drag), way, friction);
	body.swingRad += halfway * seconds;
	if (halfway === 0) {
		body.rateRadPerS = 0;
		return;
	}
	const after = driving(body, around) - way * torqueAt(around.table.slide, body.swingRad);
	body.rateRadPerS = stopped(halfway * (1 - drag) + perTorque * after, way, friction);
}

/** Friction brings the arm to rest, it never drives it backward. */
const stopped = (rateRadPerS: number, way: number, friction: number): number =>
	friction > 0 && rateRadPerS * way <= 0 ? 0 : rateRadPerS;

function push(body: MovingArm, finger: NonNullable<MovingArm['finger']>, seconds: number): void {
	const way = Math.sign(finger.rateRadPerS);
	const wanted = finger.atRad + finger.rateRadPerS * seconds;
	const isThere = (wanted - finger.toRad) * way >= 0;
	finger.atRad = isThere ? finger.toRad : wanted;
	if ((finger.atRad - body.swingRad) * way > 0) {
		body.swingRad = finger.atRad;
		if ((finger.rateRadPerS - body.rateRadPerS) * way > 0) body.rateRadPerS = finger.rateRadPerS;
	}
	if (isThere) body.finger = null;
}

function keepWithinStops(body: MovingArm, {innermostRad, outermostRad}: Surroundings): void {
	if (body.swingRad > outermostRad) {
		body.swingRad = outermostRad;
		body.rateRadPerS = Math.min(0, body.rateRadPerS);
	} else if (body.swingRad < innermostRad) {
		body.swingRad = innermostRad;
		body.rateRadPerS = Math.max(0, body.rateRadPerS);
	}
}
