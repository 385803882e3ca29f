import type {AtRadius, GaugeAtRadius} from '../../../procedure/step-values.js';
import {rounded} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {atRadius, placedAt} from '../at-radius.js';
import {deviceWords} from '../bias-devices.js';

/** The rounds at one radius. */
const probe = {
	ask: (at: GaugeAtRadius) => `${placedAt(at)}.`,
	why: 'Read both limits as before. The pull read with bias off is taken off; what remains is the bias.',
	mistake: 'Judging by one limit. Bias shifts both; friction keeps them apart.',
};

/** How a lever stands at one radius. */
const lever = {
	ask: (at: AtRadius) =>
		`Leave the arm on the gauge${atRadius(at)}. Read the lever like an hour hand: what time does it show? Look from the same side each time. Type - if not seen.`,
	why: 'A level lever (3:00 or 9:00) lets the whole weight act. At 30° from upright half of it acts; upright none does. The readings decide.',
	mistake: 'Reading it with the arm in its rest.',
};

/** How a thread stands at one radius. */
const thread = {
	ask: (at: AtRadius) =>
		`Leave the arm on the gauge${atRadius(at)}. Look from above. At what angle does the thread meet its pin on the arm? Type - if not seen.`,
	why: 'At 90° the whole weight acts, at 30° half of it. The readings decide.',
	mistake: 'Measuring from the arm tube, not from the bias pin, where the thread pulls.',
};

export const biasOn = {
	'bias-drag': {
		title: 'Drag of the groove',
		ask: ({usualDrag, hasDevice}) =>
			hasDevice
				? `Type the drag, as part of the tracking force. Default: ${rounded(usualDrag, 2)}.`
				: `This much skating acts on the arm. Drag: ${rounded(usualDrag, 2)}, the default. Enter goes on.`,
		why: 'The drag of the groove turns the arm toward the spindle: that is skating. Bias must cancel it. No published drag was found, so it is assumed.',
		mistake: 'Setting the bias finer than the drag is known. The picture shows ± 0.05.',
	},
	'bias-radius-middle': {
		title: 'Third radius, bias on',
		ask: 'Type a third radius to read with bias on, or - for none.',
		why: 'Skating is least about halfway across the record. Some devices pull most just there.',
		mistake: 'Leaving it out with a lever. A lever can be right at both ends and wrong between.',
	},
	'bias-weight': {
		title: 'Bias weight',
		ask: 'Type the mass of the bias weight, or - if not known.',
		why: 'With it the advice is in grams.',
		mistake: 'Adding lever or hook. Type only what you hang on.',
	},
	'bias-set': {
		title: 'How it is set',
		ask: 'Set the bias as you usually play. Type its notch or dial number, or - if it has neither.',
		why: 'Each setting keeps its readings. You can go back to the best one.',
		mistake: 'Typing only what you changed.',
		caution: 'Lock the arm, guard on, while your hands are at the device. Leave the counterweight alone.',
	},
	'bias-on': {
		title: 'Bias on',
		ask: ({device}) => `${deviceWords[device].on} Touch nothing else. Done?`,
		why: 'If nothing else changes, the change of the readings is the bias.',
		mistake: 'Moving a lead on the way to the device.',
		caution: 'Lock the arm, guard on, while your hands are at the device. Go only as far as its maker allows.',
	},
	'probe-bias-outer': {title: 'Probe, bias on, outer', ...probe},
	'bias-clock-outer': {title: 'Lever, outer radius', ...lever},
	'bias-angle-outer': {title: 'Thread, outer radius', ...thread},
	'probe-bias-middle': {title: 'Probe, bias on, third', ...probe},
	'bias-clock-middle': {title: 'Lever, third radius', ...lever},
	'bias-angle-middle': {title: 'Thread, third radius', ...thread},
	'probe-bias-inner': {title: 'Probe, bias on, inner', ...probe},
	'bias-clock-inner': {title: 'Lever, inner radius', ...lever},
	'bias-angle-inner': {title: 'Thread, inner radius', ...thread},
	'bias-result': {
		title: 'Bias against skating',
		ask: '',
		why: 'Friction hides all that is smaller than half of it, and the drag is assumed. Once less is left over, stop.',
		mistake: 'Chasing the last tenth at one radius and losing it at another.',
	},
} satisfies Partial<StepSentences>;
