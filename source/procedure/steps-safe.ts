import {step} from './step.js';
import {tickLines} from './step-ids.js';

/** Nobody and nothing gets hurt. Confirmed once a check. */
export const safeSteps = [
	step('safe', {
		stage: 'safe',
		input: {kind: 'ticks', lines: tickLines.safe},
		reasons: ['maker-wants-power', 'licensed-person'],
	}),
];
