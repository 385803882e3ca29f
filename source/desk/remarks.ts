import type {PastCheck} from '../check/past-check.js';
import {StoreError} from '../store/store-error.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';
import type {CheckStore} from './stored-forms.js';

/** Past checks with what was noted later, and what is to be said where that could not be read. */
type Noted = {readonly rows: readonly PastCheck[]; readonly notices: readonly string[]};

/** That nobody knows whether a check is void, or which ones are, since what is noted beside it cannot be read. */
export const unknownFor = ({fault}: StoreError, ofAll = false): string =>
	words.commands.desk.countsNotKnown({sentence: storeText(fault), ofAll});

/** An interrupted check whose deck was put back later says so, and so does one that is void or of which nobody knows. */
export function withRemarks(rows: readonly PastCheck[], store: CheckStore): Noted {
	const remarked = remarkedIn(store);
	if (remarked instanceof StoreError)
		return {rows: rows.map((row) => ({...row, isVoidUnknown: true})), notices: [unknownFor(remarked, true)]};
	if (remarked.size === 0) return {rows, notices: []};
	const notices: string[] = [];
	const noted = rows.map((row): PastCheck => {
		const remark = remarked.has(row.id) ? store.remark(row.id) : undefined;
		if (!remark) return row;
		if (remark instanceof StoreError) {
			notices.push(unknownFor(remark));
			return {...row, isVoidUnknown: true};
		}
		const isBack = row.outcome === 'interrupted' && remark.putBackAt !== undefined;
		return {
			...row,
			...(isBack ? {outcome: 'put back'} : {}),
			...(remark.void ? {voidBecause: remark.void.reason} : {}),
		};
	});
	return {rows: noted, notices};
}

function remarkedIn(store: CheckStore): ReadonlySet<string> | StoreError {
	try {
		return store.remarked();
	} catch (error) {
		if (error instanceof StoreError) return error;
		throw error;
	}
}
