import {stepById} from '../procedure/index.js';
import type {Check} from './check.js';
import {closeSeries} from './close-series.js';
import {keepWas} from './series.js';
import {closeTrial} from './trials.js';

/** Answers under which readings are taken: another one does not make the earlier readings wrong. */
export function isCondition(id: string): boolean {
	const step = stepById(id);
	return (
		step !== undefined &&
		(step.stage === 'zero' || step.stage === 'tools' || (step.touches?.includes('rounds') ?? false))
	);
}

export const keepAll = (check: Check, steps: readonly string[], before: Check): Check =>
	steps.reduce((sofar, one) => keepWas(sofar, one, before.answers[one]), check);

/**
 * Takes answers out, to be given anew: what was read before the deck was touched must not be mixed with what is read
 * now, nor offered. Readings that hang on them close as a series.
 */
export function askAnew(check: Check, steps: readonly string[], because: string, at: string): Check {
	const given = steps.filter((id) => check.answers[id]);
	const touch = (what: string) => given.some((id) => stepById(id)?.touches?.includes(what));
	const kept = touch('trial') ? closeTrial(check, at) : check;
	const closed = touch('rounds') ? closeSeries(kept, because, at) : kept;
	const known = keepAll(closed, given.filter(isCondition), check);
	return {...known, answers: Object.fromEntries(Object.entries(known.answers).filter(([id]) => !given.includes(id)))};
}

/** Marks answers to be confirmed again; each keeps its old value as the offer. */
export function askAgain(check: Check, steps: readonly string[]): Check {
	const marked = steps.flatMap((id) => {
		const old = check.answers[id];
		if (!old) return [];
		const {override: _dropped, ...rest} = old;
		return [[id, {...rest, again: true as const}] as const];
	});
	return marked.length === 0 ? check : {...check, answers: {...check.answers, ...Object.fromEntries(marked)}};
}
