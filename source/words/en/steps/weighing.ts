import {formatIn} from '../../../units.js';
import type {StepSentences} from '../../step-text.js';

export const weighing = {
	'guard-on': {
		title: 'Stylus guard',
		ask: ({isUnipivot}) =>
			`Is the stylus guard on, and will it stay on during the probe?${isUnipivot ? ' Never press it down on a unipivot.' : ''}`,
		why: 'The guard protects the cantilever while the arm is nudged. Its mass then counts in the tracking force.',
		mistake: 'Taking it off between the weighing and the probe.',
		caution:
			'Without a guard the bare stylus hangs over everything you do: work slowly, and lift the arm by its lifter.',
	},
	weighed: {
		title: 'How it is weighed',
		ask: 'Weigh with the guard on, and do not zero the scale on it. How do you weigh?',
		why: 'The percent scale of the gauge is percent of the force that it carries: that includes the guard.',
		mistake: 'Zeroing the scale with the guard lying on it: the guard is then left out.',
	},
	'guard-account': {
		title: 'The guard was left out',
		ask: ({guardG}) => `The guard adds ${formatIn(guardG, 'g')} that the scale did not see. What do you want to do?`,
		why: 'Weighing again with the guard on is surer; adding its known mass is as good as that mass is known.',
		mistake: 'Ignoring it: half a gram on a force of 1.8 g is 28 %.',
	},
	'force-reading': {
		title: 'Tracking force',
		ask: ({hasGuard}) =>
			hasGuard ? 'Scale reading with the guard on, at record height.' : 'Scale reading at record height.',
		why: 'All readings of a percent gauge are worth this much.',
		mistake:
			'A steel scale plate under a strong cartridge magnet reads wrong; and a scale that sits higher than the record shows too much.',
	},
	clearance: {
		title: 'Clearance',
		ask: ({hangsFar}) =>
			hangsFar
				? 'Gauge in place: height of the stylus above the surface under it. Stay at the low end for this arm.'
				: 'Gauge in place: height of the stylus above the surface under it.',
		why: 'Too low and the guard rubs, too high and the arm no longer stands as it plays. The window moves up by the mat that was taken off.',
		mistake: 'Measuring to the guard instead of to the stylus.',
	},
	'force-at-height': {
		title: 'Weighed again at probe height',
		ask: 'Weigh once more at probe height, guard as before. Type - to keep the first reading.',
		why: 'With the centre of gravity far from the pivot, or a magnet near steel, the tracking force changes with height.',
		mistake: 'Guessing the height: stand the scale on blocks until the arm is where the gauge holds it.',
	},
} satisfies Partial<StepSentences>;
