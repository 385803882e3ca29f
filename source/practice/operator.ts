import type {Document} from '../findings/document-schema.js';
import {gaugeZero, gaugeZeroUncertainty} from '../measures/gauge-zero.js';
import {type Round, roundCentresPct} from '../measures/hold-band.js';
import {pooledSpread} from '../measures/statistics.js';
import type {ArmSpec} from './arm-spec.js';
import {type Bench, levelShownDeg, leverClockShown, scaleShownMn} from './bench.js';
import {chanceFrom} from './chance.js';
import {carefulHabit, type Hand, roundBy, standAt} from './hand.js';
import {newPracticeArm, withChange} from './practice-arm.js';

/** What a scripted operator is given, and how much they do. */
export type Task = {
	readonly spec: ArmSpec;
	readonly bench: Bench;
	readonly radiiMm: {readonly inner: number; readonly outer: number};
	readonly rounds: number;
	/** Size of the nudge, in steps of the gauge. */
	readonly nudgeSteps: number;
	/** Whether they read with the bias on as well. */
	readonly readsBias: boolean;
};

// A narrow band may read upside down by a trembling step: such a round is taken again, as the program asks.
const mostTries = 20;

function soundRound(hand: Hand): Round {
	for (let tries = 0; tries < mostTries; tries++) {
		const {inner, outer} = roundBy(hand);
		if (inner <= outer) return {innerLimit: inner, outerLimit: outer};
	}
	throw new RangeError('No round came out the right way round.');
}

function roundsAt(hand: Hand, radiusMm: number, count: number): Round[] {
	standAt(hand, radiusMm);
	return Array.from({length: count}, () => soundRound(hand));
}

/** Centre of one round in the gauge's own sign, as it stands and turned end for end; half the sum is its zero. */
function zeroBy(hand: Hand, radiusMm: number): number {
	const [direct = 0, turned = 0] = [false, true].map((isTurned) => {
		standAt(hand, radiusMm, isTurned);
		const {inner, outer} = roundBy(hand);
		return (inner + outer) / 2;
	});
	return gaugeZero(direct, turned);
}

/**
 * Probes an arm as the procedure says: zero by turning the gauge, rounds at both radii, and with the bias on where that
 * is wanted. @returns what was read, as a document for the figures
 */
export function probed(task: Task, seed: number): Document {
	const {spec, rounds, radiiMm, nudgeSteps} = task;
	const habit = carefulHabit(nudgeSteps * spec.gauge.stepPct);
	const hand: Hand = {arm: newPracticeArm(spec, seed), habit, chance: chanceFrom(~seed)};
	const zero = zeroBy(hand, radiiMm.inner);
	const probe: Document['probe'] = (['inner', 'outer'] as const).map((place) => ({
		place,
		radiusMm: radiiMm[place],
		rounds: roundsAt(hand, radiiMm[place], rounds),
	}));
	return {
		...preparation(task),
		gauge: {...gaugePart(task, habit.nudgePct), zero, zeroUncertainty: zeroUncertainty(task, habit.nudgePct, probe)},
		probe,
		...(task.readsBias ? biasPart(task, hand) : {}),
	};
}

const gaugePart = ({spec, bench}: Task, nudge: number) => ({
	unit: 'percent' as const,
	step: spec.gauge.stepPct,
	topOfScale: spec.gauge.topPct,
	// A promised ± is a rectangular bound (JCGM 100:2008 4.3.7).
	relativeUncertaintyPct: bench.gaugeScalePct / Math.sqrt(3),
	nudge,
});

/** Of the zero, from step, nudge and how well the rounds repeat. */
function zeroUncertainty({spec}: Task, nudge: number, probe: Document['probe']): number {
	const asShown = {factor: 1, zero: 0, nudge};
	const spread = pooledSpread(probe.map(({rounds}) => roundCentresPct(rounds, asShown)));
	return gaugeZeroUncertainty({step: spec.gauge.stepPct, nudge, centreSd: spread?.sd ?? 0});
}

function preparation({spec, bench}: Task): Pick<Document, 'arm' | 'trackingForce' | 'level' | 'clearance'> {
	const {geometry, loading, pivotDirectionDeg, playingMn, guardMassG} = spec;
	return {
		arm: {...geometry, loading, pivotDirectionDeg},
		trackingForce: {
			playingMn,
			scaleReadingMn: scaleShownMn(spec, bench),
			...(guardMassG > 0 ? {guard: 'included', guardMassG} : {guard: 'none'}),
		},
		level: {
			stepDeg: bench.level.stepDeg,
			leftRightDeg: levelShownDeg(spec, bench, 'leftRightDeg'),
			frontBackDeg: levelShownDeg(spec, bench, 'frontBackDeg'),
		},
		clearance: {...bench.clearance},
	};
}

function biasPart({spec, radiiMm, rounds}: Task, hand: Hand): Pick<Document, 'bias'> {
	const {bias} = spec;
	if (!bias) return {};
	hand.arm = withChange(hand.arm, {bias: {...bias, isOn: true}});
	const readings = [radiiMm.outer, radiiMm.inner].map((radiusMm) => {
		const leverClock = leverClockShown(spec, radiusMm);
		return {radiusMm, rounds: roundsAt(hand, radiusMm, rounds), ...(leverClock === undefined ? {} : {leverClock})};
	});
	return {bias: {device: bias.device.kind, readings}};
}
