import type {LimitPair} from '../measures/hold-band.js';
import type {Document} from '../results/document-schema.js';
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
	/** Rounds at each radius, the one with the gauge turned among them; one alone is taken as used, and none closes. */
	readonly rounds: number;
	/** Arm and gauge are set up anew for each round. */
	readonly setAnew: boolean;
	/** Whether they read with the bias on as well. */
	readonly readsBias: boolean;
};

type ProbeRounds = Document['probe'][number]['rounds'];

// A narrow band may read upside down by a trembling step: such a round is taken again, as the program asks.
const mostTries = 20;

function soundRound(hand: Hand, isTurned: boolean): LimitPair {
	for (let tries = 0; tries < mostTries; tries++) {
		const {inner, outer} = roundBy(hand);
		if (isTurned ? outer <= inner : inner <= outer) return {innerLimit: inner, outerLimit: outer};
	}
	throw new RangeError('No round came out the right way round.');
}

/** Rounds at a radius, the gauge as used or turned for each. */
function roundsAt(hand: Hand, radiusMm: number, turns: readonly boolean[], setAnew: boolean): ProbeRounds {
	return turns.map((isTurned, index) => {
		if (setAnew || index === 0 || isTurned !== turns[index - 1]) standAt(hand, radiusMm, isTurned);
		const round = soundRound(hand, isTurned);
		return isTurned ? {...round, gauge: 'turned' as const} : round;
	});
}

/**
 * Probes an arm as the procedure says: as used, turned, as used at the inner radius, then the outer one, then a closing
 * round; and with the bias on where that is wanted. @returns what was read, as a document for the figures
 */
export function probed(task: Task, seed: number): Document {
	const {spec, rounds, radiiMm, setAnew} = task;
	const habit = carefulHabit(spec.gauge.stepPct);
	const hand: Hand = {arm: newPracticeArm(spec, seed), habit, chance: chanceFrom(~seed)};
	const asUsed = Array.from({length: rounds}, () => false);
	const isWhole = rounds > 1;
	const inner = roundsAt(hand, radiiMm.inner, isWhole ? asUsed.with(1, true) : asUsed, setAnew);
	const outer = roundsAt(hand, radiiMm.outer, asUsed, setAnew);
	const [last] = isWhole ? roundsAt(hand, radiiMm.inner, [false], setAnew) : [];
	return {
		...preparation(task),
		gauge: {...gaugePart(task, habit.nudgePct), setAnew},
		probe: [
			{place: 'inner', radiusMm: radiiMm.inner, rounds: last ? [...inner, {...last, closing: true}] : inner},
			{place: 'outer', radiusMm: radiiMm.outer, rounds: outer},
		],
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

function biasPart({spec, radiiMm, rounds, setAnew}: Task, hand: Hand): Pick<Document, 'bias'> {
	const {bias} = spec;
	if (!bias) return {};
	hand.arm = withChange(hand.arm, {bias: {...bias, isOn: true}});
	const readings = [radiiMm.outer, radiiMm.inner].map((radiusMm) => {
		const leverClock = leverClockShown(spec, radiusMm);
		const plain = roundsAt(
			hand,
			radiusMm,
			Array.from({length: rounds}, () => false),
			setAnew,
		);
		return {radiusMm, rounds: plain, ...(leverClock === undefined ? {} : {leverClock})};
	});
	return {bias: {device: bias.device.kind, readings}};
}
