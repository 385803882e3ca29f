import {radiusHeader, radiusRecords} from '../../reports/radius-csv.js';
import {CURRENT_VERSION} from '../../store/upgrades.js';
import type {CheckStore} from '../shelf.js';
import {filedChecks} from './filed-checks.js';

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
 * Everything on file as one JSON document, piece by piece, one check a line: checks as they were recorded with what was
 * noted beside them, profiles and settings as they are in their files. The check in progress is not in it.
 * @throws StoreError
 */
export function* jsonExport({store, program, at, tell, only}: ExportSource): Generator<string> {
	const head = JSON.stringify({kind: exportKind, version: exportVersion, program, exportedAt: at});
	yield head.slice(0, -1);
	const [settings, profiles] = [store.settings(), store.profiles()];
	for (const {notices} of only ? [profiles] : [settings, profiles]) notices.forEach(tell);
	if (!only && settings.value) yield `,\n"settings":${JSON.stringify(settings.value)}`;
	const wanted = profiles.value?.profiles.filter(({id}) => only?.profileIds.includes(id) ?? true);
	if (profiles.value) yield `,\n"profiles":${JSON.stringify({...profiles.value, profiles: wanted})}`;
	yield ',\n"checks":[';
	let between = '\n';
	for (const {id, json, remark} of filedChecks(store, tell, only?.checkIds)) {
		yield between + JSON.stringify({id, record: json, ...(remark && {remark})});
		between = ',\n';
	}
	yield '\n]}\n';
}

/** A table of all probe radii of all checks, piece by piece. @throws StoreError */
export function* csvExport({store, tell}: ExportSource): Generator<string> {
	yield radiusHeader();
	for (const {record, remark} of filedChecks(store, tell))
		yield radiusRecords({record, putBackAt: remark?.putBackAt, voidBecause: remark?.void?.reason});
}
