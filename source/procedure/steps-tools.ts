import {grams} from '../units.js';
import type {Facts} from './facts.js';
import {problem, setTo, wayTo} from './problem.js';
import {gaugeUnitOf, isPushedByHand, showsHandForce} from './readings.js';
import {type Step, stepsOf, withProfile} from './step.js';
import {forceSteps, heightSteps} from './step-groups.js';

const step = stepsOf('tools');

/** A believable range given in percent of tracking force, for a gauge of any unit (at up to about 5 g). */
const onGauge =
	(lowPct: number, highPct: number) =>
	(facts: Facts): readonly [number, number] =>
		gaugeUnitOf(facts) === 'percent' ? [lowPct, highPct] : [lowPct / 10, highPct / 2];

/** How finely and how surely the tools read: kept with them, and asked by nobody. Defaults of this program. */
const accuracies = [
	step('gauge-scale-uncertainty', {input: {unit: 'percent', between: [0, 50]}, usual: () => 2}),
	// People nudge by what they can see: one step of the scale. A hand that pushes nudges by nothing.
	step('gauge-nudge', {
		input: {unit: gaugeUnitOf, between: onGauge(0, 5)},
		usual: (facts) => (showsHandForce(facts) ? 0 : (facts.number('gauge-step') ?? 0)),
	}),
	step('scale-step', {input: {unit: 'gf', between: [0, grams(0.5)]}, usual: () => grams(0.01)}),
	step('scale-uncertainty', {input: {unit: 'gf', between: [0, grams(1)]}, usual: () => grams(0.02)}),
	step('level-step', {input: {unit: 'deg', between: [0, 2]}, usual: () => 0.05}),
];

const asked = [
	step('tools-name', {suggest: () => 'bench-set'}),
	step('gauge-mount', {
		suggest: () => 'stands',
		// Asked of a new gauge; one that is known from before this was asked stands.
		usual: (facts) => (facts.everAnswered('gauge-unit') ? 'stands' : undefined),
		touches: ['gauge-sign', 'gauge-turns', ...forceSteps, ...heightSteps, 'rounds'],
	}),
	step('gauge-unit', {
		suggest: (facts) => (isPushedByHand(facts) ? 'mN' : 'percent'),
		verify: (facts) =>
			isPushedByHand(facts) && facts.is('gauge-unit', 'percent')
				? problem(
						'percent-of-nothing',
						{},
						setTo('reads-mn', 'gauge-unit', 'mN'),
						setTo('reads-grams', 'gauge-unit', 'gf'),
						// Without the unit it is a new gauge, and the first of the two is asked.
						wayTo('correct-mount', 'gauge-mount', 'gauge-unit'),
					)
				: undefined,
		touches: ['gauge-step', 'gauge-top', 'gauge-nudge', 'rounds'],
	}),
	step('gauge-step', {
		input: {unit: gaugeUnitOf, between: onGauge(0.01, 5)},
		suggest: (facts) => ({percent: '0.5', mN: '0.1', gf: '0.01'})[gaugeUnitOf(facts)],
	}),
	step('gauge-top', {input: {unit: gaugeUnitOf, between: onGauge(0.1, 100)}}),
	step('gauge-sign', {
		suggest: (facts) => (isPushedByHand(facts) ? 'hand-out' : 'arm-out'),
		touches: ['rounds'],
	}),
	step('gauge-turns', {
		values: (facts) => ({isInHand: isPushedByHand(facts)}),
		suggest: () => 'inner',
		// What hangs or is clamped stays as it is.
		usual: (facts) => (facts.is('gauge-mount', 'hangs', 'clamped') ? 'no' : undefined),
		touches: ['rounds'],
	}),
	...accuracies,
];

/** Gauge, scale and level. */
export const toolsSteps: readonly Step[] = withProfile(step('tools-profile', {input: {of: 'tools'}}), asked);
