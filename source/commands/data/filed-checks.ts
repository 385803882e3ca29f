import type {FinishedCheck} from '../../results/record.js';
import {StoreError} from '../../store/store-error.js';
import type {CheckStore} from '../shelf.js';
import type {Remark} from '../stored-forms.js';

export type FiledCheck = {
	readonly id: string;
	readonly record: FinishedCheck;
	/** The record as it lies in its file. */
	readonly json: unknown;
	readonly remark?: Remark;
};

/**
 * All filed checks, oldest first, one in memory at a time. Those that cannot be used are left out and told.
 * @param ids newest first
 * @throws StoreError where the folder cannot be read
 */
export function* filedChecks(
	store: CheckStore,
	tell: (sentence: string) => void,
	ids: readonly string[] = store.ids(),
): Generator<FiledCheck> {
	for (const id of [...ids].reverse()) {
		const filed = store.filed(id);
		if (filed instanceof StoreError) tell(filed.sentence);
		else if (filed.record.check.id !== id)
			tell(`The finished check ${id} is left out: its file holds the check ${filed.record.check.id}.`);
		else yield {id, ...filed, ...remarkOf(store, id, tell)};
	}
}

function remarkOf(store: CheckStore, id: string, tell: (sentence: string) => void): {remark?: Remark} {
	const remark = store.remark(id);
	if (remark instanceof StoreError) tell(remark.sentence);
	return remark === undefined || remark instanceof StoreError ? {} : {remark};
}
