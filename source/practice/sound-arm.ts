import type {ArmSpec, Gauge} from './arm-spec.js';
import type {Bench} from './bench.js';

/** An ordinary gauge. Its stiffness is invented: four mm of travel either side, on which a wire changes little. */
export const ordinaryGauge: Gauge = {
	stepPct: 0.5,
	topPct: 20,
	restoringPctPerMm: 4,
	zeroPct: 0.3,
	gainPct: 0.8,
	trembleSteps: 0.4,
};

/** Torque in µN·m of one percent of the playing force, for the arm below. */
export const onePercentMicroNm = (18 / 100) * 233;

/** A sound arm of nine inches on a level deck; all values are invented. Every other arm is this one with a fault. */
export const soundArm: ArmSpec = {
	geometry: {effectiveLengthMm: 233, pivotDistanceMm: 215.4},
	pivotDirectionDeg: 45,
	loading: 'gravity',
	playingMn: 18,
	guardMassG: 0.25,
	isSetGuarded: false,
	momentKgMm2: 840,
	friction: {staticMicroNm: 0.8 * onePercentMicroNm, kineticShare: 0.8},
	wire: {springMicroNmPerDeg: 0.5, restRadiusMm: 100, twistMicroNm: 0.4 * onePercentMicroNm},
	tilt: {leftRightDeg: 0.05, frontBackDeg: -0.05},
	gauge: ordinaryGauge,
	settingUpPct: 0.2,
	scatterPct: 0.15,
	unrestPct: 0,
};

/** The bench that it stands on. */
export const ordinaryBench: Bench = {
	level: {stepDeg: 0.05, errorDeg: 0.1},
	scaleStepMn: 0.1,
	gaugeScalePct: 2,
	clearance: {stylusMm: 5.6, matRemovedMm: 3, guardDepthMm: 1.3},
};
