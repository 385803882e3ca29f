import type {GaugeMount} from '../../../procedure/readings.js';
import {inUnit, scaleText} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';

/** Gauge first, arm after. */
const placed: Readonly<Record<GaugeMount, string>> = {
	stands: 'Set the gauge first, then the arm on it.',
	hangs: 'Hang the gauge first, then the arm on it.',
	clamped: 'Clamp the gauge first, then the arm on it.',
	hand: '',
};

export const weighing = {
	'guard-on': {
		title: 'Guard',
		short: 'Guard on?',
		ask: ({isUnipivot}) =>
			isUnipivot
				? 'Arm locked. Push the guard straight on. Never press a unipivot down.'
				: 'Arm locked. Push the guard straight on.',
		why: 'It protects the cantilever until you put the deck back.',
		mistake: 'Pushing it on with the arm free. The stylus then takes the push.',
		caution: 'A stylus is sharp; its cantilever breaks at a touch. No guard: the stylus stays bare, so work slowly.',
	},
	weighed: {
		title: 'How it is weighed',
		ask: 'Zero the empty scale. How do you weigh?',
		why: 'The gauge carries arm and guard. So weigh both.',
		mistake: 'Zeroing the scale with the guard on it. Then the guard is left out.',
	},
	'guard-account': {
		title: 'The guard was left out',
		ask: ({guardG}) => `You weighed without the guard (${inUnit(guardG, 'g')}). Choose what to do.`,
		why: 'Weighing again with the guard on is surer.',
		mistake: 'Ignoring it. Half a gram is 28 % of 1.8 g.',
	},
	'force-reading': {
		title: 'Tracking force',
		ask: ({hasGuard, targetMn, matMm}) =>
			[
				matMm === undefined
					? 'Set the scale so that its pan is at record height.'
					: `The mat is off, so set the scale ${inUnit(matMm, 'mm')} higher.`,
				targetMn === undefined || !hasGuard
					? 'Weigh the arm.'
					: `Set the counterweight until arm and guard weigh ${scaleText(targetMn)}.`,
				'Lock the arm, then type what the scale showed.',
			].join(' '),
		why: 'A percent gauge reads percent of this force.',
		mistake:
			'Turning the counterweight with the stylus on the scale. Arm in its rest first. Steel near a strong magnet reads wrong.',
	},
	'arm-afloat': {
		title: 'Arm afloat',
		short: 'Arm floats level?',
		ask: ({hasGuard, hasSpring}) =>
			`${hasSpring ? 'Spring at zero. ' : ''}Set the counterweight until the arm floats level${hasGuard ? ', guard on' : ''}. Lock the arm. Done?`,
		why: 'A floating arm has no tracking force. So the gauge reads the sideways push alone.',
		mistake: 'Turning the counterweight with the arm afloat. Arm in its rest first.',
		caution: 'A floating arm swings at a touch. Hold its finger lift until it is locked.',
	},
	clearance: {
		title: 'Height',
		ask: ({hangsFar, mount}) =>
			`${placed[mount]} How high is the stylus above mat or platter?${hangsFar ? ' Set this arm low.' : ''}`,
		why: 'Too low, and the guard rubs. Too high, and the arm does not stand as it plays.',
		mistake: 'Sliding a block under the stylus. Hold a ruler behind it.',
		caution:
			'Never push the gauge under a hanging arm. Lower the arm by its lifter. No lifter: by the finger lift, wrist on a block.',
	},
	'guard-gap': {
		title: 'Gap under the guard',
		ask: ({mount}) => `${placed[mount]} Slide a feeler under the guard. How large is the gap?`,
		why: 'Too low, and the guard rubs. Too high, and the arm does not stand as it plays.',
		mistake: 'Sliding the feeler under the stylus.',
		caution:
			'Never push the gauge under a hanging arm. Lower the arm by its lifter. No lifter: by the finger lift, wrist on a block.',
	},
	'lifter-clear': {
		title: 'Lifter',
		short: 'Paper passes at both radii?',
		ask: 'At each radius: arm on the gauge, lifter down. Does paper pass between lifter and arm?',
		why: 'A lifter that touches the arm reads as friction.',
		mistake: 'Looking at one radius only. No lifter: y.',
	},
	'force-at-height': {
		title: 'Weighed again at probe height',
		ask: 'Weigh again at probe height. Guard on or off: as at the first weighing. Type - to keep the first reading.',
		why: 'With a high or low counterweight, or a magnet near steel, the force changes with height.',
		mistake: 'Guessing the height. Block the scale up until the arm is where the gauge holds it.',
	},
} satisfies Partial<StepSentences>;
