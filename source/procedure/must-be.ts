import type {Facts} from './facts.js';
import type {Problem, UnconfirmedStep} from './problem.js';

/** What is wrong with a confirmation that was answered with no. */
export const mustBe = (facts: Facts, step: UnconfirmedStep, label = 'do it now, then confirm'): Problem | undefined =>
	facts.yes(step) ? undefined : {id: 'not-confirmed', values: {step}, ways: [{label, do: 'ask-again', steps: [step]}]};
