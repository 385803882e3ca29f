import type {Facts} from './facts.js';
import type {Problem, UnconfirmedStep, WayId} from './problem.js';

/** What is wrong with a confirmation that was answered with no. */
export const mustBe = (facts: Facts, step: UnconfirmedStep, id: WayId = 'do-now'): Problem | undefined =>
	facts.yes(step) ? undefined : {id: 'not-confirmed', values: {step}, ways: [{id, do: 'ask-again', steps: [step]}]};
