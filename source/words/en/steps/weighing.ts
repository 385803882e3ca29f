import type {GaugeMount} from '../../../procedure/readings.js';
import {inUnit, scaleText} from '../../numbers.js';
import type {StepSentences} from '../../step-sentences.js';

/** Gauge first, arm after. */
const placed: Readonly<Record<GaugeMount, string>> = {
	stands: 'Gauge first, then the arm on it.',
	hangs: 'Hang the gauge first, then the arm on it.',
	clamped: 'Clamp the gauge first, then the arm on it.',
	hand: '',
};

export const weighing = {
	'guard-on': {
		title: 'Stylus guard',
		short: 'Guard on?',
		ask: ({isUnipivot}) =>
			isUnipivot
				? 'Arm locked: push the guard straight on. Never press a unipivot down.'
				: 'Arm locked: push the guard straight on.',
		why: 'It protects the cantilever until the deck is put back.',
		mistake: 'Pushing it on with the arm free: the arm gives way and the stylus takes the push.',
		caution: 'A stylus is sharp; its cantilever breaks at a touch. Without a guard it stays bare: work slowly.',
	},
	weighed: {
		title: 'How it is weighed',
		ask: 'Scale empty at 0.00, guard on. How do you weigh?',
		why: 'The gauge carries arm and guard: its percent are percent of both.',
		mistake: 'Zeroing the scale with the guard lying on it: the guard is then left out.',
	},
	'guard-account': {
		title: 'The guard was left out',
		ask: ({guardG}) => `The guard adds ${inUnit(guardG, 'g')} that the scale did not see. What do you want to do?`,
		why: 'Weighing again with the guard on is surer; adding its known mass is as good as that mass is known.',
		mistake: 'Ignoring it: half a gram on a force of 1.8 g is 28 %.',
	},
	'force-reading': {
		title: 'Tracking force',
		ask: ({hasGuard, targetMn, matMm}) =>
			[
				`Pan at the height of the probe${matMm === undefined ? '' : `, packed by ${inUnit(matMm, 'mm')}`}.`,
				targetMn === undefined || !hasGuard
					? 'What does the scale show?'
					: `Set the counterweight until the scale shows ${scaleText(targetMn)}, guard on. What does it show?`,
				'Lock the arm, then type it.',
			].join(' '),
		why: 'All readings of a percent gauge are worth this much.',
		mistake:
			'Turning the counterweight with the stylus on the scale: arm in its rest first. Steel under a strong magnet reads wrong.',
	},
	'arm-afloat': {
		title: 'Arm afloat',
		short: 'Afloat, level on its own?',
		ask: ({hasGuard, hasSpring}) =>
			`${hasSpring ? 'Spring at zero. ' : ''}Set the counterweight until the arm floats level on its own${hasGuard ? ', guard on' : ''}. Then lock it. Done?`,
		why: 'Afloat it shows nothing on the stylus scale, so the gauge reads the push alone.',
		mistake: 'Turning the counterweight with the arm afloat: arm in its rest first.',
		caution: 'A floating arm swings at a touch: keep its finger lift in your hand until it is locked.',
	},
	clearance: {
		title: 'Height',
		ask: ({hangsFar, mount}) =>
			`${placed[mount]} How high is the stylus above the surface?${hangsFar ? ' Stay at the low end for this arm.' : ''}`,
		why: 'Too low and the guard rubs; too high and the arm does not stand as it plays.',
		mistake: 'A block under the stylus: hold a ruler behind it. Pushing the gauge under a hanging arm.',
		caution:
			'Never push the gauge under a hanging arm. Lower it by the lifter; no lifter: by the finger lift, wrist on a block.',
	},
	'guard-gap': {
		title: 'Gap under the guard',
		ask: ({mount}) => `${placed[mount]} Slide a feeler under the guard: what gap?`,
		why: 'Too low and the guard rubs; too high and the arm does not stand as it plays.',
		mistake: 'Pushing the gauge under a hanging arm, or a feeler under the stylus.',
		caution:
			'Never push the gauge under a hanging arm. Lower it by the lifter; no lifter: by the finger lift, wrist on a block.',
	},
	'lifter-clear': {
		title: 'Lifter',
		short: 'Paper passes at both radii?',
		ask: 'Lifter right down: does paper pass between it and the arm, at both radii?',
		why: 'A lifter that touches the arm holds it and shows as friction.',
		mistake: 'Looking at one radius only. No lifter: answer y.',
	},
	'force-at-height': {
		title: 'Weighed again at probe height',
		ask: 'Weigh once more at probe height, guard as before. Type - to keep the first reading.',
		why: 'With the centre of gravity far from the pivot, or a magnet near steel, the tracking force changes with height.',
		mistake: 'Guessing the height: stand the scale on blocks until the arm is where the gauge holds it.',
	},
} satisfies Partial<StepSentences>;
