import {fromBase, grams} from '../units.js';
import type {Facts} from './facts.js';
import {gaugeUnitOf, showsHandForce} from './readings.js';
import {type Step, stepsOf, withProfile} from './step.js';

const step = stepsOf('tools');

/** A believable range given in percent of tracking force, for a gauge of any unit (at up to about 5 g). */
const onGauge =
	(lowPct: number, highPct: number) =>
	(facts: Facts): readonly [number, number] =>
		gaugeUnitOf(facts) === 'percent' ? [lowPct, highPct] : [lowPct / 10, highPct / 2];

/** The step of the gauge as it is printed, for a nudge of one step. */
const oneStep = (facts: Facts): string | undefined => {
	const stepBase = facts.number('gauge-step');
	return stepBase === undefined ? undefined : String(Number(fromBase(stepBase, gaugeUnitOf(facts)).toPrecision(6)));
};

const asked = [
	step('tools-name', {suggest: () => 'bench-set'}),
	step('gauge-unit', {touches: ['gauge-step', 'gauge-top', 'gauge-nudge', 'rounds']}),
	step('gauge-step', {
		input: {unit: gaugeUnitOf, between: onGauge(0.01, 5)},
		suggest: (facts) => ({percent: '0.5', mN: '0.1', gf: '0.01'})[gaugeUnitOf(facts)],
	}),
	step('gauge-top', {input: {unit: gaugeUnitOf, between: onGauge(0.1, 100)}}),
	step('gauge-sign', {touches: ['rounds']}),
	step('gauge-turns', {touches: ['rounds']}),
	step('gauge-scale-uncertainty', {
		input: {unit: 'percent', between: [0, 50]},
		suggest: () => '2',
	}),
	step('gauge-nudge', {
		input: {unit: gaugeUnitOf, between: onGauge(0, 5)},
		suggest: (facts) => (showsHandForce(facts) ? '0' : oneStep(facts)),
	}),
	step('scale-step', {
		input: {unit: 'gf', between: [0, grams(0.5)]},
		suggest: () => '0.01',
	}),
	step('scale-uncertainty', {
		input: {unit: 'gf', between: [0, grams(1)]},
		suggest: () => '0.02',
	}),
	step('level-step', {
		input: {unit: 'deg', between: [0, 2]},
		suggest: () => '0.05',
	}),
];

/** Gauge, scale and level. */
export const toolsSteps: readonly Step[] = withProfile(step('tools-profile', {input: {of: 'tools'}}), asked);
