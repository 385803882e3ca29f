import {swingAngleDeg} from '../measures/geometry.js';
import type {ArmSpec} from './arm-spec.js';
import {biasTorqueMicroNm} from './bias-torque.js';
import {holdTorqueMicroNm, ownTorqueMicroNm, pctOfTorque, tiltPct, wireTorqueMicroNm} from './torques.js';

/** What a probe at one radius should find, in percent of the playing force; pulls positive toward the rim. */
export type Truth = {
	/** Centre of the hold band: wire, tilt, and a bias that is on. */
	readonly pullPct: number;
	/** Width of the hold band: twice the friction of the arm at rest, and of a damping that is in. */
	readonly bandPct: number;
	/** What the pull is made of. */
	readonly wirePct: number;
	readonly tiltPct: number;
	readonly biasPct: number;
};

/** The hidden truth of an arm at a radius. */
export function truthOf(spec: ArmSpec, radiusMm: number): Truth {
	const swingDeg = swingAngleDeg(spec.geometry, radiusMm);
	const pct = (microNm: number): number => pctOfTorque(spec, microNm);
	return {
		pullPct: pct(ownTorqueMicroNm(spec, swingDeg)),
		bandPct: pct(2 * holdTorqueMicroNm(spec, swingDeg)),
		wirePct: pct(wireTorqueMicroNm(spec, swingDeg)),
		tiltPct: tiltPct(spec, radiusMm),
		biasPct: spec.bias?.isOn ? pct(biasTorqueMicroNm(spec.bias.device, swingDeg)) : 0,
	};
}
