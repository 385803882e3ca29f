import {armLocked, type Finds} from './deck.js';
import type {Facts} from './facts.js';
import {offRadiusMm} from './geometry.js';
import {closingProblem, topOfScale} from './hold-limits.js';
import {type OffPlace, type ProbeEnd, stepOfRounds} from './places.js';
import {mustBe} from './problem.js';
import {gaugeSides, gaugeUnitOf, showsHandForce} from './readings.js';
import {type Step, stepsOf} from './step.js';
import {type freeZeroSteps, isBeforeRounds} from './step-groups.js';
import {guardedArm} from './steps-weighing.js';

const probing = stepsOf('probe');

type Limit = {readonly which: 'innerLimit' | 'outerLimit'; readonly gauge?: 'turned'};

/** A limit that is to be found, and on what gauge. */
export type LimitAsked = {
	readonly which: 'innerLimit' | 'outerLimit';
	readonly isTurned: boolean;
	/** The gauge shows the force of a hand that starts the arm. */
	readonly showsHand: boolean;
};

export const limitAsked = (facts: Facts, {which, gauge}: Limit): LimitAsked => ({
	which,
	isTurned: gauge === 'turned',
	showsHand: showsHandForce(facts),
});

/** The pointer of a gauge that cannot be turned, read with nothing touching it. */
const freeZero = (id: (typeof freeZeroSteps)[number]): Step =>
	probing(id, {
		input: {
			unit: gaugeUnitOf,
			sides: gaugeSides,
			between: (facts) => [0, topOfScale(facts) ?? Number.MAX_VALUE],
			optional: true,
		},
		when: (facts) => facts.is('gauge-turns', 'no'),
	});

/** What holds the arm or pushes it is out of the way, but where somebody went on without; the gauge stands on its mark. */
export const readyToProbe = (facts: Facts): Finds => ({
	...guardedArm(facts),
	gauge: ['as-used', 'turned'],
	...(facts.yes('bias-off') ? {bias: ['off']} : {}),
	...(facts.yes('damping-off') ? {damping: ['out']} : {}),
});

const probe = (place: OffPlace, extra: Partial<Pick<Step, 'when' | 'verify' | 'reasons'>> = {}): Step =>
	probing(stepOfRounds(place), {
		values: (facts) => ({radiusMm: offRadiusMm(facts, place)}),
		input: {place},
		finds: readyToProbe,
		leaves: () => ({arm: 'on-gauge', gauge: 'as-used'}),
		...extra,
	});

const isShownAt =
	(end: ProbeEnd) =>
	({shownAt}: Facts): boolean =>
		shownAt?.includes(end) ?? true;

/** The probe, the closing round and the verdict. */
export const probeSteps: readonly Step[] = [
	probing('first-swing', {
		when: isBeforeRounds('first-swing'),
		values: (facts) => ({isUnipivot: facts.is('arm-bearing', 'unipivot')}),
		verify: (facts) => mustBe(facts, 'first-swing'),
		reasons: ['part-of-fault', 'cannot-do-here'],
		finds: readyToProbe,
	}),
	freeZero('zero-free-before'),
	probe('inner', {when: isShownAt('inner')}),
	probe('outer', {when: isShownAt('outer')}),
	probe('extra', {when: (facts) => facts.number('radius-extra') !== undefined && !facts.shownAt}),
	probe('closing', {
		// One round does not show how well rounds repeat, so there is nothing to hold a closing one against.
		when: (facts) => facts.roundsEach > 1 && !facts.shownAt,
		verify: closingProblem,
		reasons: ['known-what-moved', 'time-short'],
	}),
	freeZero('zero-free-after'),
	probing('probe-end', {
		// A check that came to its verdict before this was asked is not led back.
		when: (facts) => facts.everAnswered('probe-end') || !facts.everAnswered('verdict'),
		verify: (facts) => mustBe(facts, 'probe-end'),
		reasons: ['someone-else', 'cannot-do-here'],
		leaves: (facts) => (facts.yes('probe-end') ? {arm: 'locked'} : {}),
	}),
	stepsOf('verdict')('verdict', {finds: armLocked}),
];
