import type {ArmSpec} from './arm-spec.js';
import type {Bench} from './bench.js';
import {between, type Chance} from './chance.js';
import {ordinaryBench, ordinaryGauge} from './sound-arm.js';
import {torqueOfPct} from './torques.js';

/** An invented arm with its bench. */
export type ArmOnBench = {readonly spec: ArmSpec; readonly bench: Bench};

const oneInFour = (chance: Chance): boolean => between(chance, 0, 4) < 1;

/**
 * A random arm, to prove the figures with: pulls to either side and hold bands from good to far beyond the limits, on
 * every kind of nine- to ten-inch arm. Ranges are invented; each value is evenly spread. How rounds scatter is up to the one
 * who probes it.
 */
export function randomArm(chance: Chance): ArmOnBench {
	const effectiveLengthMm = between(chance, 225, 250);
	const bare: ArmSpec = {
		geometry: {effectiveLengthMm, pivotDistanceMm: effectiveLengthMm - between(chance, 14, 19)},
		pivotDirectionDeg: between(chance, 20, 70),
		loading: oneInFour(chance) ? 'spring' : 'gravity',
		playingMn: Math.round(between(chance, 150, 250)) / 10,
		guardMassG: oneInFour(chance) ? 0 : Math.round(between(chance, 10, 60)) / 100,
		isSetGuarded: false,
		momentKgMm2: between(chance, 500, 1100),
		friction: {staticMicroNm: 0, kineticShare: between(chance, 0.6, 0.95)},
		wire: {springMicroNmPerDeg: between(chance, 0, 4), restRadiusMm: between(chance, 60, 150), twistMicroNm: 0},
		tilt: {leftRightDeg: between(chance, -0.4, 0.4), frontBackDeg: between(chance, -0.4, 0.4)},
		gauge: {...ordinaryGauge, zeroPct: between(chance, -0.8, 0.8)},
		settingUpPct: 0,
		scatterPct: 0,
		unrestPct: 0,
	};
	return withFaults(bare, chance);
}

function withFaults(bare: ArmSpec, chance: Chance): ArmOnBench {
	const twistMicroNm = torqueOfPct(bare, between(chance, -6, 6));
	const staticMicroNm = torqueOfPct(bare, between(chance, 0.3, 4.5));
	const worn = oneInFour(chance) ? {worn: {withinMm: 95, times: between(chance, 1.2, 2.5)}} : {};
	const {gaugeScalePct, level} = ordinaryBench;
	const gainPct = between(chance, -gaugeScalePct, gaugeScalePct);
	const errorDeg = between(chance, -0.2, 0.2);
	return {
		spec: {
			...bare,
			wire: {...bare.wire, twistMicroNm},
			friction: {...bare.friction, staticMicroNm, ...worn},
			gauge: {...bare.gauge, gainPct},
		},
		bench: {...ordinaryBench, level: {...level, errorDeg}},
	};
}
