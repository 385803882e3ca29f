import limits from '../../shared/limits.json' with {type: 'json'};
import {biasDeviceId, biasDeviceOf, hasBias} from './bias-devices.js';
import {middleProblem, middleSuggestion, onRadiusMm} from './bias-on.js';
import {armLocked, type Finds} from './deck.js';
import type {Facts} from './facts.js';
import {type OnPlace, radiusOf, stepOfRounds} from './places.js';
import {mustBe} from './problem.js';
import {type Step, stepsOf} from './step.js';
import type {AtRadius} from './step-values.js';
import {readyToProbe, roundsAt} from './steps-probe.js';
import {guardedArm} from './steps-weighing.js';

const step = stepsOf('bias-on');

const isWanted = (facts: Facts): boolean => facts.is('verdict', 'bias');
const isSet = (facts: Facts): boolean => isWanted(facts) && hasBias(facts);

/** Hands at the device: nothing swings. */
const atDevice = {
	finds: (facts: Facts): Finds => ({...guardedArm(facts), ...armLocked}),
	leaves: () => ({arm: 'locked'}),
} as const satisfies Partial<Step>;

/** Rounds with the bias on at one radius, and how the lever or the thread stands there. */
const onSteps = (place: OnPlace): readonly Step[] => {
	const isProbed = (facts: Facts): boolean => isSet(facts) && onRadiusMm(facts, place) !== undefined;
	const at = (facts: Facts): AtRadius => ({radiusMm: onRadiusMm(facts, place)});
	const radius = radiusOf(place);
	return [
		step(stepOfRounds(place), {
			...roundsAt((facts) => onRadiusMm(facts, place)),
			input: {place},
			when: isProbed,
			finds: (facts) => ({...readyToProbe(facts), bias: ['on']}),
		}),
		step(`bias-clock-${radius}`, {
			values: at,
			input: {optional: true},
			when: (facts) => isProbed(facts) && biasDeviceOf(facts).reads === 'clock',
		}),
		step(`bias-angle-${radius}`, {
			values: at,
			input: {unit: 'deg', between: [0, 180], optional: true},
			when: (facts) => isProbed(facts) && biasDeviceOf(facts).reads === 'angle',
		}),
	];
};

/** The bias device set against skating, for those who want it. */
export const biasOnSteps: readonly Step[] = [
	// An arm without a device is shown what skating asks of it; with one, that stands where the device is set.
	step('bias-drag', {
		values: (facts) => ({usualDrag: limits.effectiveDrag.value, hasDevice: hasBias(facts)}),
		input: {unit: 'ofForce', between: [limits.effectiveDragLeast.value, limits.effectiveDragMost.value]},
		suggest: () => limits.effectiveDrag.value.toFixed(2),
		when: isWanted,
		usual: (facts) => (hasBias(facts) ? limits.effectiveDrag.value : undefined),
		listed: true,
	}),
	step('bias-radius-middle', {
		input: {unit: 'mm', between: [50, 160], optional: true},
		suggest: middleSuggestion,
		when: isSet,
		verify: middleProblem,
		touches: ['trial'],
	}),
	step('bias-weight', {
		input: {unit: 'g', between: [0.05, 60], optional: true},
		typedAnew: true,
		when: (facts) => isSet(facts) && biasDeviceOf(facts).setBy === 'weight',
		touches: ['trial'],
		staysTrueMinutes: 30,
		...atDevice,
	}),
	step('bias-set', {
		input: {optional: true},
		suggest: (facts) => facts.text('bias-setting'),
		typedAnew: true,
		when: isSet,
		...atDevice,
	}),
	step('bias-on', {
		values: (facts) => ({device: biasDeviceId(facts)}),
		when: isSet,
		verify: (facts) => mustBe(facts, 'bias-on', 'switch-on'),
		touches: ['trial'],
		staysTrueMinutes: 30,
		...atDevice,
	}),
	...onSteps('bias-outer'),
	...onSteps('bias-middle'),
	...onSteps('bias-inner'),
	step('bias-result', {when: isSet}),
];
