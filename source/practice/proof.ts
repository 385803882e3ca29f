import type {ComputeOutput} from '../findings/compute.js';
import type {Document} from '../findings/document-schema.js';
import {type LessonArm, lessonArms} from './arms.js';
import {type Chance, chanceFrom} from './chance.js';
import {addProbe, emptyTally, type Tally} from './coverage.js';
import {probed} from './operator.js';
import {type ArmOnBench, randomArm} from './random-arm.js';

/** How the scripted operator goes about it. */
export type Way = {readonly rounds: number; readonly stepPct: number; readonly nudgeSteps: number};

/** Every combination of few and more rounds, fine and coarse reading step, small and large nudge. */
export const ways: readonly Way[] = [3, 5].flatMap((rounds) =>
	[0.1, 0.5].flatMap((stepPct) => [1, 2].map((nudgeSteps) => ({rounds, stepPct, nudgeSteps}))),
);

export type LessonTally = {readonly way: Way; readonly arm: LessonArm; readonly named: number; readonly of: number};
export type WayTally = {readonly way: Way; readonly tally: Tally};

export type Proof = {
	readonly ways: readonly WayTally[];
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
export const radiiMm = {inner: 65, outer: 140};

/** Twice what the random arms have on average, standard deviation in percent of the playing force. */
export const restlessPct = 0.2;

/** What reads finest shows it most. */
const finest = ways.filter(({stepPct, nudgeSteps}) => stepPct === 0.1 && nudgeSteps === 1);

/** Runs of each lesson arm for so many random ones. */
const lessonShare = 0.03;

const withStep = <T extends ArmOnBench>(one: T, stepPct: number): T => ({
	...one,
	spec: {...one.spec, gauge: {...one.spec.gauge, stepPct}},
});

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
	return {
		ways: ways.map((way) => ({way, tally: tallyOf(many, way, chance, compute)})),
		restless: finest.map((way) => ({way, tally: tallyOf(restless, way, chance, compute)})),
		lessons: lessonArms.flatMap((arm) => ways.map((way) => lessonTally(arm, way, repeats, chance, compute))),
	};
}

function tallyOf(many: readonly ArmOnBench[], way: Way, chance: Chance, compute: ProofTask['compute']): Tally {
	const tally = emptyTally();
	for (const one of many) {
		const {spec, bench} = withStep(one, way.stepPct);
		const document = probed({spec, bench, radiiMm, ...way, readsBias: false}, chance.next());
		addProbe(tally, spec, compute(document));
	}
	return tally;
}

function lessonTally(
	arm: LessonArm,
	way: Way,
	repeats: number,
	chance: Chance,
	compute: ProofTask['compute'],
): LessonTally {
	const task = {...withStep(arm, way.stepPct), radiiMm, ...way};
	const named = Array.from({length: repeats}, () => compute(probed(task, chance.next())).findings).filter((findings) =>
		findings.some(({code}) => code === arm.finding),
	);
	return {way, arm, named: named.length, of: repeats};
}
