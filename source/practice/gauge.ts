import type {ArmSpec} from './arm-spec.js';
import {swingAt} from './torques.js';

/** A gauge as it stands under the arm, and the ends of its travel as swing of the arm. */
export type GaugeStand = ReturnType<typeof standingAt>;

/** Percent shown for each rad that the arm stands off the neutral place. */
const shownPerRad = ({gauge, geometry}: ArmSpec): number =>
	gauge.restoringPctPerMm * geometry.effectiveLengthMm * (1 + gauge.gainPct / 100);

const signOf = (isTurned: boolean): number => (isTurned ? -1 : 1);

/** A gauge with its neutral place at a radius. Its stops stand where its own scale ends. */
export function standingAt(spec: ArmSpec, radiusMm: number, isTurned: boolean) {
	const {topPct, zeroPct} = spec.gauge;
	const neutralRad = swingAt(spec, radiusMm);
	const ends = [-topPct, topPct].map((end) => (signOf(isTurned) * (end - zeroPct)) / shownPerRad(spec));
	return {
		isTurned,
		neutralRad,
		innermostRad: neutralRad + Math.min(...ends),
		outermostRad: neutralRad + Math.max(...ends),
	};
}

/**
 * What the gauge shows in its own sign, in percent of the force carried: the force that the arm exerts on it, its gain and
 * its zero error in it, trembling, in whole steps, and never past the end of the scale.
 */
export function shownPct(spec: ArmSpec, stand: GaugeStand, swingRad: number, tremble: number): number {
	const {stepPct, topPct, zeroPct, trembleSteps} = spec.gauge;
	const pushed = signOf(stand.isTurned) * shownPerRad(spec) * (swingRad - stand.neutralRad) + zeroPct;
	const steps = Math.round(pushed / stepPct + trembleSteps * tremble);
	// Whole steps, without the dust of binary fractions.
	const shown = Number((steps * stepPct).toPrecision(12));
	return Math.min(topPct, Math.max(-topPct, shown));
}
