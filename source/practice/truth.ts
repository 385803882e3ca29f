import {swingAngleDeg} from '../measures/geometry.js';
import type {ArmSpec} from './arm-spec.js';
import {biasTorqueMicroNm} from './bias-torque.js';
import {holdTorqueMicroNm, ownTorqueMicroNm, pctOfTorque, tiltPct, wireTorqueMicroNm} from './torques.js';

/** What a probe at one radius should find. */
export type Truth = ReturnType<typeof truthOf>;

/** The hidden truth of an arm at a radius, in percent of the playing force; pulls positive toward the rim. */
export function truthOf(spec: ArmSpec, radiusMm: number) {
	const swingDeg = swingAngleDeg(spec.geometry, radiusMm);
	const pct = (microNm: number): number => pctOfTorque(spec, microNm);
	return {
		/** Centre of the hold band: wire, tilt, and a bias that is on. */
		pullPct: pct(ownTorqueMicroNm(spec, swingDeg)),
		/** Width of the hold band: twice the friction of the arm at rest, and of a damping that is in. */
		bandPct: pct(2 * holdTorqueMicroNm(spec, swingDeg)),
		/** What the pull is made of. */
		wirePct: pct(wireTorqueMicroNm(spec, swingDeg)),
		tiltPct: tiltPct(spec, radiusMm),
		biasPct: spec.bias?.isOn ? pct(biasTorqueMicroNm(spec.bias.device, swingDeg)) : 0,
	};
}
