import type {Check} from '../check/check.js';
import {reduce} from '../check/reduce.js';
import {type FinishedCheck, finishedCheck} from '../findings/record.js';
import type {CheckStore} from './shelf.js';

export const isEmpty = (check: Check): boolean => Object.keys(check.answers).length === 0;

const isPutBack = (step: string): boolean => step.startsWith('back-');

/**
 * Puts a check away that has come to its end. The file of a filed check never changes: what was put back later stands
 * beside it, with the answers that were given then.
 */
export async function fileCheck(store: CheckStore, check: Check, at: string): Promise<FinishedCheck> {
	const record = finishedCheck(check, at);
	if (!check.reopened) {
		await store.finish(check.id, record);
		return record;
	}
	const putBack = Object.fromEntries(Object.entries(check.answers).filter(([step]) => isPutBack(step)));
	if (record.outcome !== 'interrupted') await store.saveRemark(check.id, {putBackAt: at, putBack});
	await store.clearDraft();
	return record;
}

/** A filed check opened again for its put-back list: what was left to somebody else is asked anew. */
export function reopened(filed: Check, at: string): Check {
	const undone = Object.entries(filed.answers).filter(([step, answer]) => isPutBack(step) && answer.override);
	const check: Check = {...filed, reopened: true, stopped: {at}, doubts: []};
	return reduce(check, {type: 'ask-again', steps: undone.map(([step]) => step), at});
}
