import {type Step, step} from './step.js';

/** The answer that is no event. */
export const nothingDone = 'nothing';

/** Asked first where a check is repeated: what was done since. */
export const sinceSteps: readonly Step[] = [
	step('done-since', {stage: 'resume', input: {kind: 'choice'}, when: (facts) => facts.isRecheck}),
	step('done-since-note', {stage: 'resume', input: {kind: 'text'}, when: (facts) => facts.is('done-since', 'other')}),
];
