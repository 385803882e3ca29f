import limits from '../../shared/limits.json' with {type: 'json'};
import {biasDeviceOf, hasBias} from './bias-devices.js';
import {middleProblem, middleSuggestion, onRadiusMm} from './bias-on.js';
import type {Facts} from './facts.js';
import {mustBe} from './must-be.js';
import {type OnPlace, placeLabel, radiusOf, stepOfRounds} from './places.js';
import {type Step, step} from './step.js';

const isWanted = (facts: Facts): boolean => facts.is('verdict', 'bias');
const isSet = (facts: Facts): boolean => isWanted(facts) && hasBias(facts);

const at = (facts: Facts, place: OnPlace): string => {
	const radiusMm = onRadiusMm(facts, place);
	return radiusMm === undefined ? '' : ` at ${Number(radiusMm.toFixed(1))} mm`;
};

/** Rounds with the bias on at one radius, and how the lever or the thread stands there. */
const onSteps = (place: OnPlace): readonly Step[] => {
	const isProbed = (facts: Facts): boolean => isSet(facts) && onRadiusMm(facts, place) !== undefined;
	const radius = radiusOf(place);
	return [
		step(stepOfRounds(place), {
			stage: 'bias-on',
			title: `Probe, ${placeLabel(place)}`,
			ask: (facts) => `Set the gauge${at(facts, place)} from the spindle, bias on, and let it carry the arm.`,
			why: "The same two limits as before; the arm's own pull is taken off them, and what is left is the bias device alone.",
			mistake: 'Judging by one limit: the bias shifts both, friction keeps them apart.',
			input: {kind: 'rounds', place},
			when: isProbed,
		}),
		step(`bias-clock-${radius}`, {
			stage: 'bias-on',
			title: `Lever${radius === 'middle' ? ', middle radius' : `, ${radius} radius`}`,
			ask: (facts) =>
				`With the arm still${at(facts, place)}: where does the lever point, as on the face of a clock? Its pivot is the middle. Type - if it cannot be seen.`,
			why: 'Only the part of the weight that hangs square to the lever acts: all where the lever lies level, half at 30° from upright, nothing where it stands or hangs upright. A guide; the readings decide.',
			mistake: 'Reading it with the arm back in its rest.',
			input: {kind: 'clock', optional: true},
			when: (facts) => isProbed(facts) && biasDeviceOf(facts).reads === 'clock',
		}),
		step(`bias-angle-${radius}`, {
			stage: 'bias-on',
			title: `Thread${radius === 'middle' ? ', middle radius' : `, ${radius} radius`}`,
			ask: (facts) =>
				`With the arm still${at(facts, place)}, from above: the angle between thread and stub, 90° when they stand square. Type - if not looked at.`,
			why: 'Only the part of the pull that is square to the stub turns the arm: all at 90°, half at 30°. A guide; the readings decide.',
			mistake: 'Measuring from the arm tube instead of from the stub that the thread hangs on.',
			input: {kind: 'number', unit: 'deg', between: [0, 180], optional: true},
			when: (facts) => isProbed(facts) && biasDeviceOf(facts).reads === 'angle',
		}),
	];
};

const drag = limits.effectiveDrag.value;

/** The bias device set against skating, for those who want it. */
export const biasOnSteps: readonly Step[] = [
	step('bias-drag', {
		stage: 'bias-on',
		title: 'Skating on this arm',
		ask: `How much drag does the groove have, as part of the tracking force? ${drag.toFixed(2)} is assumed; nobody has published a figure for your records.`,
		why: 'What bias must cancel is a torque: drag times the sine of the angle between groove tangent and the line from stylus to pivot. With no bias the groove walls themselves must give drag times the tangent of that angle, which is a little more.',
		mistake: 'Setting bias finer than the drag is known: ±0.05 is the band in the picture.',
		input: {
			kind: 'number',
			unit: 'ofForce',
			between: [limits.effectiveDragLeast.value, limits.effectiveDragMost.value],
		},
		suggest: () => drag.toFixed(2),
		when: isWanted,
	}),
	step('bias-radius-middle', {
		stage: 'bias-on',
		title: 'Middle radius',
		ask: 'Beside the outer and the inner probe radius: at which middle radius is the bias read? Type - for none.',
		why: 'Skating is least somewhere in the middle; a device that pulls most there shows it only there.',
		mistake: 'Leaving it out with a lever: it can be right at both ends and wrong between.',
		input: {kind: 'number', unit: 'mm', between: [50, 160], optional: true},
		suggest: middleSuggestion,
		when: isSet,
		verify: middleProblem,
		touches: ['trial'],
	}),
	step('bias-weight', {
		stage: 'bias-on',
		title: 'Bias weight',
		ask: 'How heavy is the weight that hangs on the bias device now? Type - if not known.',
		why: 'With it the advice is in grams: from so much to so much.',
		mistake: 'Forgetting the weight of the lever or hook itself: write down what you hang on.',
		input: {kind: 'number', unit: 'g', between: [0.05, 60], optional: true},
		typedAnew: true,
		when: (facts) => isSet(facts) && biasDeviceOf(facts).setBy === 'weight',
		touches: ['trial'],
		staysTrueMinutes: 30,
	}),
	step('bias-set', {
		stage: 'bias-on',
		title: 'How it is set',
		caution: 'Arm locked in its rest, guard on, while your hands are at the device.',
		ask: 'How is it set for these readings: notch, number on the dial? Type - if there is nothing to note.',
		why: 'Each setting is kept with its readings, so that you can go back to the best one.',
		mistake: 'Noting only what you changed.',
		input: {kind: 'text', optional: true},
		suggest: (facts) => facts.text('bias-setting'),
		typedAnew: true,
		when: isSet,
	}),
	step('bias-on', {
		stage: 'bias-on',
		title: 'Bias on',
		ask: (facts) => `${biasDeviceOf(facts).on} Bias on, and all else untouched?`,
		caution: 'Guard on, arm locked while your hands are at the device; stay within what its maker allows.',
		why: 'Only the bias may differ from the probe before: then the difference is the bias.',
		mistake: 'Moving a lead while reaching for the device.',
		input: {kind: 'confirm'},
		when: isSet,
		verify: (facts) => mustBe(facts, 'bias-on', 'switch-on'),
		touches: ['trial'],
		staysTrueMinutes: 30,
	}),
	...onSteps('bias-outer'),
	...onSteps('bias-middle'),
	...onSteps('bias-inner'),
	step('bias-result', {
		stage: 'bias-on',
		title: 'Bias against skating',
		ask: '',
		why: 'A reading cannot be trusted finer than half the hold band, and the drag is an assumption: once what is left lies under that floor, more setting is false precision.',
		mistake: 'Chasing the last tenth of a percent at one radius and losing it at another.',
		input: {kind: 'bias-result'},
		when: isSet,
	}),
];
