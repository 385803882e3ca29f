import {fromBase, grams} from '../units.js';
import type {Facts} from './facts.js';
import {gaugeUnitOf, showsHandForce} from './readings.js';
import {type Step, step} from './step.js';
import {withProfile} from './with-profile.js';

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
	step('tools-name', {
		stage: 'tools',
		title: 'Name of the gauge and tools',
		ask: 'What do you call this set of gauge, scale and level?',
		why: 'Figures taken with another gauge are compared with more care.',
		mistake: 'Keeping the name after the gauge was repaired or adjusted.',
		input: {kind: 'text'},
		suggest: () => 'bench set',
	}),
	step('gauge-unit', {
		stage: 'tools',
		title: 'Unit of the gauge',
		ask: 'What does the gauge read?',
		why: 'A percent scale is percent of the force that the gauge carries; millinewtons and grams are plain forces.',
		mistake: 'Changing it later: readings keep the unit in which they were taken.',
		input: {
			kind: 'choice',
			options: [
				{id: 'percent', label: 'percent of tracking force'},
				{id: 'mN', label: 'millinewtons (mN)'},
				{id: 'gf', label: 'grams (gram-force)'},
			],
		},
		touches: ['gauge-step', 'gauge-top', 'gauge-nudge', 'rounds'],
	}),
	step('gauge-step', {
		stage: 'tools',
		title: 'Smallest step of the gauge',
		ask: 'Smallest step that you can read on the gauge (half a percent of the tracking force, or finer, is advised).',
		why: 'A coarse step widens every uncertainty.',
		mistake: 'Naming the marks on the scale when you can read halfway between them.',
		input: {kind: 'number', unit: gaugeUnitOf, between: onGauge(0.01, 5)},
		suggest: (facts) => ({percent: '0.5', mN: '0.1', gf: '0.01'})[gaugeUnitOf(facts)],
	}),
	step('gauge-top', {
		stage: 'tools',
		title: 'Top of the scale',
		ask: 'Where does the scale of the gauge end?',
		why: 'At the end of the scale the pointer no longer measures. Every gauge ends elsewhere, so there is no usual value.',
		mistake: 'Reading a pointer that leans on its stop.',
		input: {kind: 'number', unit: gaugeUnitOf, between: onGauge(0.1, 100)},
	}),
	step('gauge-sign', {
		stage: 'tools',
		title: 'Sign of the gauge',
		ask: 'What does the gauge show, and what does its plus mean?',
		why: 'Here a reading is the force that the arm exerts on the gauge, plus toward the rim. A gauge that shows the force of your hand, or has its plus the other way, is turned at entry.',
		mistake: 'Not sure? Push the pointer gently toward the rim as the arm would, and look which way it goes.',
		input: {
			kind: 'choice',
			options: [
				{id: 'arm-out', label: 'force of the arm, + toward the rim'},
				{id: 'arm-in', label: 'force of the arm, + toward the spindle'},
				{id: 'hand-out', label: 'force of my hand to start it, + toward the rim'},
				{id: 'hand-in', label: 'force of my hand to start it, + toward the spindle'},
			],
		},
		touches: ['rounds'],
	}),
	step('gauge-turns', {
		stage: 'tools',
		title: 'Turning the gauge',
		ask: 'Can the gauge be turned end for end under the arm, so that its plus points the other way?',
		why: "Turned, the gauge shows the arm's pull with the other sign and its own zero error with the same one: one such round tells them apart.",
		mistake: 'Trusting a pointer that rests on zero in the air: carrying the arm may shift it.',
		input: {
			kind: 'choice',
			options: [
				{id: 'inner', label: 'yes, at both radii'},
				{id: 'outer', label: 'yes, but at the inner radius it would hit the spindle'},
				{id: 'no', label: 'no: its zero is read free of the arm'},
			],
		},
		touches: ['rounds'],
	}),
	step('gauge-scale-uncertainty', {
		stage: 'tools',
		title: 'How true is the scale of the gauge',
		ask: 'The gauge is true to plus or minus how many percent of its reading?',
		why: 'It limits how well large pulls are known; repeating does not help against it.',
		mistake: 'Typing the smallest step here. If the maker says nothing, 2 is a careful guess.',
		input: {kind: 'number', unit: 'percent', between: [0, 50]},
		suggest: () => '2',
	}),
	step('gauge-nudge', {
		stage: 'tools',
		title: 'Size of a nudge',
		ask: 'By how much does the reading move with one nudge? One reading step is advised.',
		why: 'The last place that held falls short of the limit by half a nudge on average; the band is corrected for it. A reading taken when the arm just starts needs no correction: 0.',
		mistake: 'Nudging in jumps: the arm then starts early. Type 0 if you read halfway between holding and going.',
		input: {kind: 'number', unit: gaugeUnitOf, between: onGauge(0, 5)},
		suggest: (facts) => (showsHandForce(facts) ? '0' : oneStep(facts)),
	}),
	step('scale-step', {
		stage: 'tools',
		title: 'Smallest step of the stylus scale',
		ask: 'Smallest step that the stylus scale shows.',
		why: 'A coarse scale cannot know the tracking force better than its step.',
		mistake: 'Taking a fine display for a true one.',
		input: {kind: 'number', unit: 'gf', between: [0, grams(0.5)]},
		suggest: () => '0.01',
	}),
	step('scale-uncertainty', {
		stage: 'tools',
		title: 'Stylus scale',
		ask: 'The stylus scale is true to plus or minus how much?',
		why: 'It says how well the tracking force is known.',
		mistake: 'Typing its smallest step: that is usually finer than it is true.',
		input: {kind: 'number', unit: 'gf', between: [0, grams(1)]},
		suggest: () => '0.02',
	}),
	step('level-step', {
		stage: 'tools',
		title: 'Smallest step of the level',
		ask: 'Smallest tilt that you can read on the level (degrees, or mm/m).',
		why: 'A tilt of 0.1° pushes the stylus sideways by 0.17 % of the tracking force.',
		mistake: 'A bubble without marks reads no finer than about 0.2°.',
		input: {kind: 'number', unit: 'deg', between: [0, 2]},
		suggest: () => '0.05',
	}),
];

/** Gauge, scale and level. */
export const toolsSteps: readonly Step[] = withProfile(
	step('tools-profile', {
		stage: 'tools',
		title: 'Which gauge and tools?',
		ask: 'Pick a set from the list, or enter a new one.',
		why: 'Its answers are filled in; each of them can be corrected from the list of steps (Tab).',
		mistake: 'Picking the old set when the gauge was changed.',
		input: {kind: 'profile', of: 'tools'},
	}),
	asked,
);
