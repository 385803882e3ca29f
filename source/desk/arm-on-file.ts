import type {Check} from '../check/check.js';
import type {Profile} from '../procedure/facts.js';
import {isTakenBy, profileNamed} from '../results/profiles.js';
import {summaryOf} from '../results/record.js';
import {namesOf} from '../results/years/arms.js';
import {StoreError} from '../store/store-error.js';
import {words} from '../words/index.js';
import {storeText} from '../words/store-text.js';
import {Hindrance} from './hindrance.js';
import type {Shelf} from './shelf.js';

/** All that is on file of an arm. */
export type ArmOnFile = {
	/** Its name of today. */
	readonly name: string;
	readonly formerNames: readonly string[];
	readonly profile: Profile | undefined;
	/** Newest first; void ones and those that came to no figures too. */
	readonly checkIds: readonly string[];
	/** Days of the first check and the last; the same where there is one. */
	readonly days: readonly string[];
	/** How many of them have something noted beside them. */
	readonly remarks: number;
};

/**
 * Gathers what is on file of an arm, and makes sure that all of it can be read.
 * @param arm a name that it has, or had
 * @returns undefined where nothing is known of it
 * @throws StoreError, Hindrance where a part cannot be read
 */
export function armOnFile(shelf: Shelf, arm: string): ArmOnFile | undefined {
	shelf.assertListed();
	const profiles = shelf.rereadProfiles();
	const profile = profileNamed(profiles, 'arm', arm);
	const names = namesOf(arm, profiles);
	const rows = shelf.all().filter((row) => names.includes(row.arm));
	if (rows.length === 0 && !profile) return;
	const checkIds = rows.map(({id}) => id);
	return {
		name: profile?.name ?? arm,
		formerNames: profile?.formerNames ?? [],
		profile,
		checkIds,
		days: [...new Set([rows.at(-1)?.date ?? '', rows[0]?.date ?? ''])].filter((day) => day !== ''),
		remarks: checkIds.filter((id) => isRemarked(shelf, id, names)).length,
	};
}

/** Whether something is noted beside a check, which is held against the index on the way: the file is the truth. */
function isRemarked({store, dataDir}: Shelf, id: string, names: readonly string[]): boolean {
	const record = store.record(id);
	if (record instanceof StoreError) throw record;
	if (!names.includes(summaryOf(record).arm)) {
		throw new Hindrance('damaged', dataDir, words.commands.desk.listedWrongly({id, dataDir}));
	}
	const remark = store.remark(id);
	if (remark instanceof StoreError && remark.code === 'damaged') {
		const sentence = words.commands.desk.remarkInTheWay({sentence: storeText(remark.fault)});
		throw new Hindrance('damaged', remark.file, sentence, remark);
	}
	if (remark instanceof StoreError) throw remark;
	return remark !== undefined;
}

/** Whether the open check is one of this arm. */
export function isOpenOn(check: Check | undefined, {name, formerNames, profile, checkIds}: ArmOnFile): boolean {
	if (!check) return false;
	if (checkIds.includes(check.id) || (profile && isTakenBy(check, profile))) return true;
	const typed = check.answers['arm-name']?.value;
	return typeof typed === 'string' && [name, ...formerNames].includes(typed);
}
