import type {StepSentences} from '../../step-sentences.js';

export const safe = {
	safe: {
		title: 'Make safe',
		short: 'Look at each line. Type n to go line by line.',
		ask: 'Tick each line.',
		why: 'A thump through a live amplifier can destroy loudspeakers. A platter that creeps drags gauge and stylus along.',
		mistake: 'Opening the plinth with the mains plugged in.',
		caution:
			"A stylus is sharp; its cantilever breaks at a touch. This check is mechanical. Leave wiring, earthing and repair to licensed people; local codes apply. The maker's instructions come first. Touching a bearing may end the warranty.",
	},
} satisfies Partial<StepSentences>;
