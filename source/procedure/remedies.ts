import type {Facts} from './facts.js';
import {forceSteps, guardSteps, levelSteps} from './step-groups.js';
import type {StepId} from './step-ids.js';

type Remedy = {
	/** Steps that are asked again before the new series. */
	readonly steps: readonly StepId[];
	readonly when?: (facts: Facts) => boolean;
};

const byId = {
	level: {steps: levelSteps},
	leads: {steps: ['wires']},
	bias: {steps: ['bias-off'], when: (facts) => facts.answered('bias-off')},
	damping: {steps: ['damping-off'], when: (facts) => facts.answered('damping-off')},
	force: {steps: [...guardSteps, ...forceSteps]},
	height: {steps: ['guard-gap', 'clearance']},
	again: {steps: []},
} as const satisfies Readonly<Record<string, Remedy>>;

export type RemedyId = keyof typeof byId;

/** What can be tried at the bench at once; each closes the series and opens a new one. */
export const remedies: readonly (Remedy & {readonly id: RemedyId})[] = (Object.keys(byId) as RemedyId[]).map((id) => ({
	...byId[id],
	id,
}));
