import type {Facts} from './facts.js';
import {forceSteps, guardSteps, levelSteps} from './step-groups.js';
import type {StepId} from './step-ids.js';

export type Remedy = {
	readonly id: string;
	readonly label: string;
	/** Steps that are asked again before the new series. */
	readonly steps: readonly StepId[];
	readonly when?: (facts: Facts) => boolean;
};

/** What can be tried at the bench at once; each closes the series and opens a new one. */
export const remedies: readonly Remedy[] = [
	{id: 'level', label: 'level the armboard', steps: levelSteps},
	{id: 'leads', label: 'dress the leads anew', steps: ['wires']},
	{
		id: 'bias',
		label: 'look at the bias device again',
		steps: ['bias-off'],
		when: (facts) => facts.answered('bias-off'),
	},
	{
		id: 'damping',
		label: 'look at the damping again',
		steps: ['damping-off'],
		when: (facts) => facts.answered('damping-off'),
	},
	{
		id: 'force',
		label: 'set and weigh the tracking force again',
		steps: [...guardSteps, ...forceSteps],
	},
	{id: 'height', label: 'set the height anew', steps: ['clearance']},
	{id: 'again', label: 'touch nothing, only probe again', steps: []},
];
