import type {StepId} from './step-ids.js';

/** What a line of the put-back list undoes: it is asked by name before the probe goes on. */
export const undoneBy: Readonly<Partial<Record<StepId, readonly StepId[]>>> = {
	'back-mat': ['mat', 'mat-thickness'],
	'back-damping': ['damping-off'],
	'back-bias': ['bias-off'],
	'back-height': ['clearance'],
	'back-guard': ['guard-on', 'weighed'],
};
