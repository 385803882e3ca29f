import type {CheckStore, Remark, StoredProfiles} from '../desk/stored-forms.js';
import {biasHeader, biasRecords} from '../reports/bias-csv.js';
import {type NotedCheck, radiusHeader, radiusRecords} from '../reports/radius-csv.js';
import type {FinishedCheck} from '../results/record.js';
import {notedInTurn} from '../results/years/arms.js';
import {StoreError} from '../store/store-error.js';
import {CURRENT_VERSION} from '../store/upgrades.js';
import {escaped} from '../visible-text.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';

export const exportKind = 'armdrift-export';

/** The contents are those of the files in the data folder, so their version is the version of the whole. */
export const exportVersion = CURRENT_VERSION;

/** The tables that an export as CSV can be. */
export type CsvTableName = 'probe' | 'bias';

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
	yield `${JSON.stringify({kind: exportKind, version: exportVersion, program, exportedAt: at})}\n`;
	const [settings, profiles] = [store.settings(), store.profiles()];
	for (const {notices} of only ? [profiles] : [settings, profiles]) for (const fault of notices) tell(storeText(fault));
	if (!only && settings.value) yield lineOf({settings: settings.value});
	const wanted = profiles.value?.profiles.filter(({id}) => only?.profileIds.includes(id) ?? true).toSorted(byUse);
	if (profiles.value) yield lineOf({profiles: {...profiles.value, profiles: wanted}});
	for (const {id, json, remark} of filedChecks(store, tell, only?.checkIds))
		yield lineOf({check: {id, record: json, ...(remark && {remark})}});
	yield lineOf({end: true});
}

/** The one used last comes first, as in the list itself; whichever way they came into it. */
function byUse(one: StoredProfile, other: StoredProfile): number {
	const later = Date.parse(other.usedAt) - Date.parse(one.usedAt);
	return later || (one.id < other.id ? 1 : -1);
}

const lineOf = (value: object): string => `${escaped(JSON.stringify(sorted(value)))}\n`;

/** With the keys in one order, so that the same data make the same bytes. */
function sorted(value: unknown): unknown {
	if (Array.isArray(value)) return value.map(sorted);
	if (typeof value !== 'object' || value === null) return value;
	const entries = Object.entries(value).map(([key, one]) => [key, sorted(one)] as const);
	return Object.fromEntries(entries.sort(([one], [other]) => (one < other ? -1 : 1)));
}

type StoredProfile = StoredProfiles['profiles'][number];

/** A table that an export can be: its first record, and those of a check. */
type CsvTable = {readonly header: () => string; readonly records: (filed: NotedCheck) => string};

/** What can be exported as a table; a further one is a row here. */
const csvTables = {
	probe: {header: radiusHeader, records: radiusRecords},
	bias: {header: biasHeader, records: biasRecords},
} satisfies Readonly<Record<CsvTableName, CsvTable>>;

/** One table of all checks, piece by piece. @throws StoreError */
export function* csvExport({store, tell}: ExportSource, name: CsvTableName = 'probe'): Generator<string> {
	const {header, records} = csvTables[name];
	yield header();
	const notedFor = notedInTurn(store.profiles().value?.profiles ?? []);
	for (const {record, remark, isVoidUnknown} of filedChecks(store, tell)) {
		const noted = notedFor(record.check);
		yield records({record, putBackAt: remark?.putBackAt, voidBecause: remark?.void?.reason, isVoidUnknown, noted});
	}
}

type ExportedCheck = {
	readonly id: string;
	readonly record: FinishedCheck;
	/** The record as it lies in its file. */
	readonly json: unknown;
	readonly remark?: Remark;
	readonly isVoidUnknown: boolean;
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

function remarkBeside(
	store: CheckStore,
	id: string,
	tell: (sentence: string) => void,
): Pick<ExportedCheck, 'remark' | 'isVoidUnknown'> {
	const remark = store.remark(id);
	const isVoidUnknown = remark instanceof StoreError;
	if (isVoidUnknown) tell(storeText(remark.fault));
	return remark === undefined || isVoidUnknown ? {isVoidUnknown} : {isVoidUnknown, remark};
}
