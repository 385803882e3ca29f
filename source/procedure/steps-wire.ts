import {type Step, step} from './step.js';

/** How the signal wires leave the arm; kept with it. They are the usual cause of a pull that changes over the record. */
export const wireSteps: readonly Step[] = [
	step('arm-wire-path', {
		stage: 'arm',
		input: {kind: 'choice'},
	}),
	step('arm-wire-stiffness', {
		stage: 'arm',
		input: {kind: 'choice'},
	}),
];
