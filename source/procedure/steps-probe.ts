import type {Facts} from './facts.js';
import {offRadiusMm} from './geometry.js';
import {closingProblem} from './hold-limits.js';
import {type OffPlace, stepOfRounds} from './places.js';
import {showsHandForce} from './readings.js';
import {type Step, step} from './step.js';
import {zeroAfterStep, zeroBeforeStep} from './steps-zero.js';

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

const probe = (place: OffPlace, extra: Partial<Pick<Step, 'when' | 'verify' | 'reasons'>> = {}): Step =>
	step(stepOfRounds(place), {
		stage: 'probe',
		values: (facts) => ({radiusMm: offRadiusMm(facts, place)}),
		input: {kind: 'rounds', place},
		...extra,
	});

/** The probe, the closing round and the verdict. */
export const probeSteps: readonly Step[] = [
	zeroBeforeStep,
	probe('inner'),
	probe('outer'),
	probe('extra', {when: (facts) => facts.number('radius-extra') !== undefined}),
	probe('closing', {
		// One round does not show how well rounds repeat, so there is nothing to hold a closing one against.
		when: (facts) => facts.roundsEach > 1,
		verify: closingProblem,
		reasons: ['known-what-moved', 'time-short'],
	}),
	zeroAfterStep,
	step('verdict', {stage: 'verdict', input: {kind: 'verdict'}}),
];
