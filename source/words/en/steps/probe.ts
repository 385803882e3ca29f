import type {GaugeAtRadius} from '../../../procedure/step-values.js';
import type {StepSentences} from '../../step-sentences.js';
import {placedAt} from '../at-radius.js';

const rounds = {
	ask: (at: GaugeAtRadius) => `${placedAt(at)}.`,
	why: 'Between the limits friction holds the arm. Their middle is the pull, their distance is the friction.',
	mistake:
		'Nudging too far, or reading before the arm is still. The inner limit may also lie on the out side: that is normal.',
};

/** The pointer of a gauge that cannot be turned, read with nothing touching it. */
const freeZero = {
	why: 'The gauge may not show zero when nothing touches it. This reading tells how far off it is.',
	mistake: 'Turning the zero screw. Leave it alone until the last round.',
};

export const probe = {
	'first-swing': {
		title: 'One full swing',
		short: 'Swung and nudged?',
		ask: ({isUnipivot}) =>
			`Hold the finger lift. Swing the arm to the inner radius and back. Then nudge it once inward, once outward${isUnipivot ? ', at pivot height' : ''}. Done?`,
		why: 'Oil and leads settle. This swing does not count.',
		mistake: 'Turning the zero screw of the gauge. Leave it alone until the last round.',
	},
	'probe-end': {
		title: 'Arm locked again',
		short: 'Arm locked?',
		ask: 'Lift the arm into its rest and lock it. Done?',
		why: 'The stylus is safe while you read the verdict.',
		mistake: 'Pulling the gauge from under the arm.',
	},
	'zero-free-before': {
		title: 'Zero of the gauge, before',
		ask: 'Arm in its rest. Type what the bare gauge shows, with its sign. Type - if it cannot be read.',
		...freeZero,
	},
	'probe-inner': {
		title: 'Probe, inner',
		...rounds,
		caution: 'Lower the arm by its lifter. Do not swing it onto the gauge.',
	},
	'probe-outer': {title: 'Probe, outer', ...rounds},
	'probe-extra': {title: 'Probe, third radius', ...rounds},
	'probe-closing': {
		title: 'Closing round, inner',
		ask: (at) => `${placedAt(at)}. One last round.`,
		why: 'It shows whether something moved while you probed. It counts like any round.',
		mistake: 'Leaving it out because the figures look fine.',
	},
	'zero-free-after': {
		title: 'Zero of the gauge, after',
		ask: 'Lift the arm into its rest. Type what the bare gauge shows, with its sign. Type - if it cannot be read.',
		...freeZero,
	},
	verdict: {
		title: 'Verdict',
		ask: '',
		why: 'A verdict is sure when it holds for the whole ± of a figure. If not, the screen says what would decide it.',
		mistake: 'Taking undecided for bad. Often a few more rounds decide it.',
	},
} satisfies Partial<StepSentences>;
