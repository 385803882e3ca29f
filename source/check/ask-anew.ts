import {stepById} from '../procedure/index.js';
import {freeZeroSteps} from '../procedure/step-groups.js';
import type {StepId} from '../procedure/step-ids.js';
import type {Check} from './check.js';
import {closeSeries} from './close-series.js';
import type {Because} from './says.js';
import {keepWas} from './series.js';
import {closeTrial} from './trials.js';

/** Answers under which readings are taken: another one does not make the earlier readings wrong. */
export function isCondition(id: string): boolean {
	const step = stepById(id);
	return (
		step !== undefined &&
		(step.stage === 'tools' || freeZeroSteps.some((one) => one === id) || (step.touches?.includes('rounds') ?? false))
	);
}

export const keepAll = (check: Check, steps: readonly StepId[], before: Check): Check =>
	steps.reduce((sofar, one) => keepWas(sofar, one, before.answers[one]), check);

/**
 * Takes answers out, to be given anew: what was read before the deck was touched must not be mixed with what is read
 * now, nor offered. Readings that hang on them close as a series.
 */
export function askAnew(check: Check, steps: readonly StepId[], because: Because, at: string): Check {
	const given = steps.filter((id) => check.answers[id]);
	const touch = (what: 'rounds' | 'trial') => given.some((id) => stepById(id)?.touches?.includes(what));
	const kept = touch('trial') ? closeTrial(check, at) : check;
	const closed = touch('rounds') ? closeSeries(kept, because, at) : kept;
	const known = keepAll(closed, given.filter(isCondition), check);
	return {
		...known,
		answers: Object.fromEntries(Object.entries(known.answers).filter(([id]) => !given.some((one) => one === id))),
	};
}
