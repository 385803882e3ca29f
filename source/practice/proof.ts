import type {ComputeOutput} from '../results/compute.js';
import type {Document} from '../results/document-schema.js';
import {type LessonArm, lessonArms} from './arms.js';
import {chanceFrom} from './chance.js';
import {addProbe, emptyTally, type Tally} from './coverage.js';
import {probed} from './operator.js';
import {type ArmOnBench, randomArm} from './random-arm.js';

/** How rounds are taken and read, and how they scatter; percent of tracking force. */
export type ProbingWay = {
	readonly rounds: number;
	readonly stepPct: number;
	/** Standard deviation of one limit. */
	readonly scatterPct: number;
	/** Arm and gauge are set up anew for each round; what that makes of the pull is {@link settingUpPct} either way. */
	readonly setAnew: boolean;
};

/** Standard deviation of what setting up makes of the side force, in percent of tracking force. */
export const settingUpPct = 0.3;

const steps = [0.1, 0.25, 0.5, 1];
const scatters = [0.05, 0.15, 0.3, 0.5];

const combined = (manyRounds: readonly number[]): readonly ProbingWay[] =>
	[true, false].flatMap((setAnew) =>
		manyRounds.flatMap((rounds) =>
			steps.flatMap((stepPct) => scatters.map((scatterPct) => ({rounds, stepPct, scatterPct, setAnew}))),
		),
	);

/** Every combination of a usual probe and one with more rounds, fine and coarse step, small and large scatter. */
export const manyWays: readonly ProbingWay[] = combined([3, 5]);

/** One round at each radius: how well rounds repeat is assumed, so that nothing is promised. */
export const onceWays: readonly ProbingWay[] = combined([1]).filter(({stepPct}) => stepPct === 0.5);

export type LessonTally = {
	readonly way: ProbingWay;
	readonly arm: LessonArm;
	readonly named: number;
	readonly of: number;
};
export type WayTally = {readonly way: ProbingWay; readonly tally: Tally};

export type Proof = {
	readonly ways: readonly WayTally[];
	/** One round at each radius: nothing is promised of it. */
	readonly once: readonly WayTally[];
	/** The same arms with a side force that wanders more than on a quiet bench: where the figures come to their end. */
	readonly restless: readonly WayTally[];
	readonly lessons: readonly LessonTally[];
};

export type ProofTask = {
	/** How many random arms. */
	readonly arms: number;
	readonly seed: number;
	/** Works out figures and findings of a document. */
	readonly compute: (document: Document) => ComputeOutput;
};

/** Where the arms are probed. */
export const radiiMm = {inner: 68, outer: 136};

/** How much the side force wanders for the restless arms: standard deviation in percent of the playing force. */
export const restlessPct = 0.2;

/** A quiet hand at a fine step shows it most. */
const finest = manyWays.filter(({stepPct, scatterPct, setAnew}) => stepPct === 0.1 && scatterPct === 0.05 && setAnew);

/** Ways in which the lesson arms are probed: a usual gauge, as most people would. */
const lessonWays = manyWays.filter(
	({stepPct, scatterPct, setAnew}) => (stepPct === 0.5 || stepPct === 0.1) && scatterPct === 0.15 && setAnew,
);

/** Each arm is probed in one of so many ways, so that the whole takes minutes and not hours. */
const inOneOf = 3;

/** Runs of each lesson arm in each way for so many random ones. */
const lessonShare = 0.03;

/** What a probe in one way reads of an arm. */
function readBy({rounds, stepPct, scatterPct, setAnew}: ProbingWay, one: ArmOnBench, readsBias: boolean, seed: number) {
	const spec = {...one.spec, settingUpPct, scatterPct, gauge: {...one.spec.gauge, stepPct}};
	return probed({spec, bench: one.bench, radiiMm, rounds, setAnew, readsBias}, seed);
}

/**
 * The whole chain against the hidden truth: random arms are probed in every way, the readings go through the figures, and
 * it is counted how often the stated 95 % intervals hold the truth, how often an arm is called good that is not, and
 * whether each lesson arm's lesson is named. The same seed gives the same proof.
 */
export function prove({arms, seed, compute}: ProofTask): Proof {
	const chance = chanceFrom(seed);
	const many = Array.from({length: arms}, () => randomArm(chance));
	const restless = many.map((one) => ({...one, spec: {...one.spec, unrestPct: restlessPct}}));
	const repeats = Math.max(1, Math.round(arms * lessonShare));
	const read: Read = (way, one, readsBias) => compute(readBy(way, one, readsBias, chance.next()));
	const talliesOf = (chosen: readonly ProbingWay[], on: readonly ArmOnBench[]): readonly WayTally[] =>
		chosen.map((way, index) => ({
			way,
			tally: tallyOf(
				way,
				on.filter((_, arm) => (arm + index) % inOneOf === 0),
				read,
			),
		}));
	return {
		ways: talliesOf(manyWays, many),
		once: talliesOf(onceWays, many),
		restless: talliesOf(finest, restless),
		lessons: lessonArms.flatMap((arm) => lessonWays.map((way) => lessonTally(way, arm, repeats, read))),
	};
}

/** What the program makes of an arm that is probed in one way. */
type Read = (way: ProbingWay, one: ArmOnBench, readsBias: boolean) => ComputeOutput;

function tallyOf(way: ProbingWay, many: readonly ArmOnBench[], read: Read): Tally {
	const tally = emptyTally();
	for (const one of many) {
		addProbe(tally, one.spec, read(way, one, false));
	}
	return tally;
}

function lessonTally(way: ProbingWay, arm: LessonArm, repeats: number, read: Read): LessonTally {
	let named = 0;
	for (let run = 0; run < repeats; run++) {
		const {findings} = read(way, arm, arm.readsBias);
		if (findings.some(({code}) => code === arm.finding)) named++;
	}
	return {way, arm, named, of: repeats};
}
