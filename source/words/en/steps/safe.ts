import type {StepSentences} from '../../step-sentences.js';

export const safe = {
	safe: {
		title: 'Make safe',
		short: 'Look at each line. n asks them one by one.',
		ask: 'Tick each line.',
		why: 'A thump through a live amplifier can destroy loudspeakers; a platter that creeps drags the gauge and the stylus. The stylus is sharp and its cantilever breaks at a touch.',
		mistake:
			'Opening the plinth with the mains still plugged in. Wiring, earthing and repair are for licensed or authorised people under your local codes; the warranty may forbid touching a bearing. This program measures mechanics only.',
		caution:
			"A stylus is sharp, its cantilever breaks at a touch. Mechanics only: wiring, earthing and repair are for licensed or authorised people under local codes. The maker's instructions come first; the warranty may forbid touching a bearing.",
	},
} satisfies Partial<StepSentences>;
