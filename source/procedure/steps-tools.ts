import {grams} from '../units.js';
import type {Facts} from './facts.js';
import {gaugeUnitOf, showsHandForce} from './readings.js';
import {type Step, stepsOf, withProfile} from './step.js';

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
	step('gauge-unit', {suggest: () => 'percent', touches: ['gauge-step', 'gauge-top', 'gauge-nudge', 'rounds']}),
	step('gauge-step', {
		input: {unit: gaugeUnitOf, between: onGauge(0.01, 5)},
		suggest: (facts) => ({percent: '0.5', mN: '0.1', gf: '0.01'})[gaugeUnitOf(facts)],
	}),
	step('gauge-top', {input: {unit: gaugeUnitOf, between: onGauge(0.1, 100)}}),
	step('gauge-sign', {suggest: () => 'arm-out', touches: ['rounds']}),
	step('gauge-turns', {suggest: () => 'inner', touches: ['rounds']}),
	...accuracies,
];

/** Gauge, scale and level. */
export const toolsSteps: readonly Step[] = withProfile(step('tools-profile', {input: {of: 'tools'}}), asked);
