import type {AtRadius, GaugeAtRadius} from '../../../procedure/step-values.js';
import {rounded} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';
import {atRadius, placedAt} from '../at-radius.js';
import {deviceWords} from '../bias-devices.js';

/** The rounds at one radius. */
const probe = {
	ask: (at: GaugeAtRadius) => `Bias on. ${placedAt(at)}.`,
	why: "The same two limits as before; the arm's own pull is taken off them, and what is left is the bias device alone.",
	mistake: 'Judging by one limit: the bias shifts both, friction keeps them apart.',
};

/** How a lever stands at one radius. */
const lever = {
	ask: (at: AtRadius) =>
		`With the arm still${atRadius(at)}: where does the lever point, as on the face of a clock? Its pivot is the middle. Type - if it cannot be seen.`,
	why: 'Only the part of the weight that hangs square to the lever acts: all where the lever lies level, half at 30° from upright, nothing where it stands or hangs upright. A guide; the readings decide.',
	mistake: 'Reading it with the arm back in its rest.',
};

/** How a thread stands at one radius. */
const thread = {
	ask: (at: AtRadius) =>
		`With the arm still${atRadius(at)}, from above: the angle between thread and stub, 90° when they stand square. Type - if not looked at.`,
	why: 'Only the part of the pull that is square to the stub turns the arm: all at 90°, half at 30°. A guide; the readings decide.',
	mistake: 'Measuring from the arm tube instead of from the stub that the thread hangs on.',
};

export const biasOn = {
	'bias-drag': {
		title: 'Drag of the groove',
		ask: ({usualDrag, hasDevice}) =>
			hasDevice
				? `How much drag, as part of the tracking force? ${rounded(usualDrag, 2)} is the default of this program.`
				: `This is what skating asks of the arm, with a drag of ${rounded(usualDrag, 2)}: the default of this program. Enter goes on.`,
		why: 'What bias must cancel is a torque: drag times the sine of the angle between groove tangent and the line from stylus to pivot. With no bias the groove walls themselves must give drag times the tangent of that angle, which is a little more.',
		mistake: 'Setting bias finer than the drag is known: ± 0.05 is the band in the picture.',
	},
	'bias-radius-middle': {
		title: 'Middle radius',
		ask: 'Beside the outer and the inner probe radius: at which middle radius is the bias read? Type - for none.',
		why: 'Skating is least somewhere in the middle; a device that pulls most there shows it only there.',
		mistake: 'Leaving it out with a lever: it can be right at both ends and wrong between.',
	},
	'bias-weight': {
		title: 'Bias weight',
		ask: 'How heavy is the weight that hangs on the bias device now? Type - if not known.',
		why: 'With it the advice is in grams: from so much to so much.',
		mistake: 'Forgetting the weight of the lever or hook itself: write down what you hang on.',
	},
	'bias-set': {
		title: 'How it is set',
		ask: 'How is the bias device set for these readings: notch, number on the dial? Type - if there is nothing to note.',
		why: 'Each setting is kept with its readings, so that you can go back to the best one.',
		mistake: 'Noting only what you changed.',
		caution: 'Arm locked in its rest, guard on, while your hands are at the device.',
	},
	'bias-on': {
		title: 'Bias on',
		ask: ({device}) => `${deviceWords[device].on} Bias on, and all else untouched?`,
		why: 'Only the bias may differ from the probe before: then the difference is the bias.',
		mistake: 'Moving a lead while reaching for the device.',
		caution: 'Guard on, arm locked while your hands are at the device; stay within what its maker allows.',
	},
	'probe-bias-outer': {title: 'Probe, bias on, outer', ...probe},
	'bias-clock-outer': {title: 'Lever, outer radius', ...lever},
	'bias-angle-outer': {title: 'Thread, outer radius', ...thread},
	'probe-bias-middle': {title: 'Probe, bias on, middle', ...probe},
	'bias-clock-middle': {title: 'Lever, middle radius', ...lever},
	'bias-angle-middle': {title: 'Thread, middle radius', ...thread},
	'probe-bias-inner': {title: 'Probe, bias on, inner', ...probe},
	'bias-clock-inner': {title: 'Lever, inner radius', ...lever},
	'bias-angle-inner': {title: 'Thread, inner radius', ...thread},
	'bias-result': {
		title: 'Bias against skating',
		ask: '',
		why: 'A reading cannot be trusted finer than half the hold band, and the drag is an assumption: once what is left lies under that floor, more setting is false precision.',
		mistake: 'Chasing the last tenth of a percent at one radius and losing it at another.',
	},
} satisfies Partial<StepSentences>;
