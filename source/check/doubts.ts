import {differenceInMinutes} from 'date-fns/differenceInMinutes';
import {stepById} from '../procedure/index.js';
import {type Doubt, doubts} from '../procedure/steps-still.js';
import type {Answer, Check} from './check.js';

/** Steps that a doubt is about and that were answered in this check and are not being asked anew. */
export const stepsInDoubt = (check: Check, doubt: Doubt): string[] =>
	doubt.items.flatMap((item) => item.steps).filter((id) => check.answers[id] && !check.answers[id].again);

/**
 * What must be asked again when a check is taken up at a time, by the age of the last confirmation. Once the
 * verdict was taken, or the check stopped, no condition matters any more.
 */
export function doubtsAfter(check: Check, at: string): string[] {
	if (check.stopped || check.answers.verdict) return [];
	return doubts
		.filter((doubt) => stepsInDoubt(check, doubt).some((id) => isStale(check.answers[id], id, at)))
		.map(({id}) => id);
}

function isStale(answer: Answer | undefined, id: string, at: string): boolean {
	const limit = stepById(id)?.staysTrueMinutes;
	if (!answer || limit === undefined) return false;
	const confirmed = answer.confirmedAt ?? answer.at;
	return differenceInMinutes(at, confirmed) >= limit;
}

/** The doubts that a step belongs to. */
export const doubtsWithStep = (id: string): string[] =>
	doubts.filter((doubt) => doubt.items.some((item) => item.steps.includes(id))).map((doubt) => doubt.id);

/** Whether anything of a doubt is left to be confirmed. */
export const isStillInDoubt = (check: Check, id: string): boolean =>
	doubts.some((doubt) => doubt.id === id && stepsInDoubt(check, doubt).length > 0);
