import type {GaugeAtRadius} from '../../../procedure/step-values.js';
import type {StepSentences} from '../../step-sentences.js';
import {atRadius, placedAt} from '../at-radius.js';

const rounds = {
	ask: (at: GaugeAtRadius) => `${placedAt(at)}.`,
	why: 'Between the two limits friction holds the arm wherever it is put. Their middle is the pull of wiring, bearings and level; their distance is the friction.',
	mistake:
		'Nudging too far, or reading before the arm has settled. An inner limit that reads out is quite normal: the arm may push outward at both limits.',
};

/** The pointer of a gauge that cannot be turned, read with nothing touching it. */
const freeZero = {
	why: 'A gauge that cannot be turned may be off its zero: read free before the first round and after the last, it shows by how much, and whether it drifted.',
	mistake: 'Turning its zero screw in between: leave it alone until the last round is read.',
};

export const probe = {
	'first-swing': {
		title: 'One full swing',
		short: 'Swung and nudged?',
		ask: ({isUnipivot}) =>
			`Swing the arm once from the rim to the label and back, then nudge it once each way${isUnipivot ? ', at the height of the pivot' : ''}. Done?`,
		why: 'Oil and leads settle; this swing does not count.',
		mistake: 'Turning the zero screw of the gauge now: leave it alone until the end.',
	},
	'probe-end': {
		title: 'Arm locked again',
		short: 'Arm locked?',
		ask: 'Lift the arm, into its rest, lock it. Done?',
		why: 'Nothing hangs over the platter while you read on.',
		mistake: 'Taking the gauge from under the arm.',
	},
	'zero-free-before': {
		title: 'Zero of the gauge, before',
		ask: 'Arm in its rest, nothing on the gauge: what does it show, + or − as it stands there? Type - if it cannot be read free.',
		...freeZero,
	},
	'probe-inner': {
		title: 'Probe, inner',
		...rounds,
		caution: 'Lower the arm with its lifter; do not swing it on.',
	},
	'probe-outer': {title: 'Probe, outer', ...rounds},
	'probe-extra': {title: 'Probe, third', ...rounds},
	'probe-closing': {
		title: 'Closing round, inner',
		ask: (at) => `Go back to the inner radius${atRadius(at)} for one round more.`,
		why: 'It shows whether anything moved while you probed. It counts like any other round.',
		mistake: 'Skipping it because the figures look fine already.',
	},
	'zero-free-after': {
		title: 'Zero of the gauge, after',
		ask: 'Lift the arm into its rest. Nothing on the gauge: what does it show now? Type - if it cannot be read free.',
		...freeZero,
	},
	verdict: {
		title: 'Verdict',
		ask: '',
		why: 'A verdict is given only where value and uncertainty together lie on one side of a limit. Otherwise it is undecided, with what would decide it.',
		mistake: 'Taking undecided for bad: it says how well you measured, not how bad the arm is.',
	},
} satisfies Partial<StepSentences>;
