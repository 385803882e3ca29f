import type {CheckStore, Remark} from '../desk/stored-forms.js';
import {radiusHeader, radiusRecords} from '../reports/radius-csv.js';
import type {FinishedCheck} from '../results/record.js';
import {notedInTurn} from '../results/years/arms.js';
import {StoreError} from '../store/store-error.js';
import {CURRENT_VERSION} from '../store/upgrades.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';

export const exportKind = 'armdrift-export';

/** The contents are those of the files in the data folder, so their version is the version of the whole. */
export const exportVersion = CURRENT_VERSION;

export type ExportSource = {
	readonly store: CheckStore;
	/** Version of this program. */
	readonly program: string;
	/** Time now, with its offset. */
	readonly at: string;
	/** Takes sentences about what could not be read and is left out. */
	readonly tell: (sentence: string) => void;
	/** Only these checks and profiles, and no settings. */
	readonly only?: {readonly checkIds: readonly string[]; readonly profileIds: readonly string[]};
};

/**
 * Everything on file as JSON Lines (jsonlines.org): a line that says what it is, profiles and settings as they are in
 * their files, each check as it was recorded with what was noted beside it, and a line that says that it is whole. The
 * check in progress is not in it.
 * @throws StoreError
 */
export function* jsonExport({store, program, at, tell, only}: ExportSource): Generator<string> {
	yield lineOf({kind: exportKind, version: exportVersion, program, exportedAt: at});
	const [settings, profiles] = [store.settings(), store.profiles()];
	for (const {notices} of only ? [profiles] : [settings, profiles]) for (const fault of notices) tell(storeText(fault));
	if (!only && settings.value) yield lineOf({settings: settings.value});
	const wanted = profiles.value?.profiles.filter(({id}) => only?.profileIds.includes(id) ?? true);
	if (profiles.value) yield lineOf({profiles: {...profiles.value, profiles: wanted}});
	for (const {id, json, remark} of filedChecks(store, tell, only?.checkIds))
		yield lineOf({check: {id, record: json, ...(remark && {remark})}});
	yield lineOf({end: true});
}

const lineOf = (value: object): string => `${JSON.stringify(value)}\n`;

/** A table of all probe radii of all checks, piece by piece. @throws StoreError */
export function* csvExport({store, tell}: ExportSource): Generator<string> {
	yield radiusHeader();
	const notedFor = notedInTurn(store.profiles().value?.profiles ?? []);
	for (const {record, remark} of filedChecks(store, tell)) {
		const noted = notedFor(record.check);
		yield radiusRecords({record, putBackAt: remark?.putBackAt, voidBecause: remark?.void?.reason, noted});
	}
}

type ExportedCheck = {
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
function* filedChecks(
	store: CheckStore,
	tell: (sentence: string) => void,
	ids: readonly string[] = store.ids(),
): Generator<ExportedCheck> {
	for (const id of [...ids].reverse()) {
		const filed = store.filed(id);
		if (filed instanceof StoreError) tell(storeText(filed.fault));
		else if (filed.record.check.id !== id)
			tell(words.commands.exchange.otherInside({id, holds: filed.record.check.id}));
		else yield {id, ...filed, ...remarkBeside(store, id, tell)};
	}
}

function remarkBeside(store: CheckStore, id: string, tell: (sentence: string) => void): {remark?: Remark} {
	const remark = store.remark(id);
	if (remark instanceof StoreError) tell(storeText(remark.fault));
	return remark === undefined || remark instanceof StoreError ? {} : {remark};
}
