import type {CheckStore, Remark} from '../desk/stored-forms.js';
import {isSameJson} from '../store/json.js';
import {StoreError} from '../store/store-error.js';
import type {StoreFault} from '../store/store-fault.js';
import type {ImportedCheck, ImportFile} from './import-file.js';
import {type MergedProfiles, type MergedRemark, mergedProfiles, mergedRemark} from './merging.js';

/** What an import comes to in this data folder. Checks are named by their place in the file. */
export type ImportPlan = {
	readonly newChecks: readonly number[];
	/** Checks that are here already, beside which something is to be noted. */
	readonly newRemarks: readonly number[];
	/** How many checks are here already. */
	readonly same: number;
	/** Ids of checks that are here with other content. */
	readonly clashes: readonly string[];
	/** Ids of checks beside which something else is noted here. */
	readonly remarkClashes: readonly string[];
	/** Checks beside which nobody knows what is noted here, since its file is damaged: it is kept, and theirs is left out. */
	readonly remarksUnread: readonly RemarkUnread[];
	/** Id of the check in progress, where the file has it filed. */
	readonly openHere?: string;
	readonly profiles: MergedProfiles;
	readonly settings: 'none' | 'new' | 'same' | 'own';
};

type RemarkUnread = {readonly id: string; readonly fault: StoreFault};

export const addsNothing = ({newChecks, newRemarks, profiles, settings}: ImportPlan): boolean =>
	newChecks.length + newRemarks.length + profiles.added.length + profiles.named.length + profiles.noted.length === 0 &&
	settings !== 'new';

/**
 * Whether something of the file is otherwise here, so that it was left out. Settings are those of a place, and no clash.
 */
export const hasClashes = ({clashes, remarkClashes, remarksUnread, openHere, profiles}: ImportPlan): boolean =>
	clashes.length + remarkClashes.length + remarksUnread.length + profiles.clashes.length > 0 ||
	openHere !== undefined ||
	profiles.named.some(({isTwofold}) => isTwofold);

/**
 * Looks at every check of a file before anything comes of it.
 * @returns their ids, in the order of the file
 * @throws StoreError, Refusal where one cannot be kept, or comes twice
 */
export function checkedIds(file: ImportFile): readonly string[] {
	const ids = new Set<string>();
	for (let index = 0; index < file.count; index++) {
		const {id} = file.check(index);
		if (ids.has(id)) throw file.twofold(index, id);
		ids.add(id);
	}
	return [...ids];
}

/** Holds a file against the data folder. @throws StoreError, Refusal */
export function importPlan(file: ImportFile, ids: readonly string[], store: CheckStore): ImportPlan {
	const here = new Set(store.ids());
	const open = store.draft().check?.id;
	const newChecks: number[] = [];
	const known: number[] = [];
	for (const [index, id] of ids.entries()) {
		if (here.has(id)) known.push(index);
		else if (id !== open) newChecks.push(index);
	}
	return {
		...comparedChecks(file, ids, {known, unknown: newChecks}, store),
		...(open !== undefined && !here.has(open) && ids.includes(open) && {openHere: open}),
		profiles: mergedProfiles(store.profiles().value, file.profiles),
		settings: settingsPlan(file, store),
	};
}

type Places = {readonly known: readonly number[]; readonly unknown: readonly number[]};

function comparedChecks(file: ImportFile, ids: readonly string[], {known, unknown}: Places, store: CheckStore) {
	const newChecks = [...unknown];
	const newRemarks: number[] = [];
	const clashes: string[] = [];
	const remarkClashes: string[] = [];
	const remarksUnread: RemarkUnread[] = [];
	const remarked = store.remarked();
	let same = 0;
	for (const index of known) {
		const check = file.check(index);
		const filed = usable(store.filed(check.id));
		if (!filed) newChecks.push(index);
		else if (isSameJson(filed.json, check.json)) {
			same++;
			const {isNew, clashes: remarkDiffers, unread} = remarkOf(check, store);
			if (isNew) newRemarks.push(index);
			if (remarkDiffers) remarkClashes.push(check.id);
			if (unread) remarksUnread.push({id: check.id, fault: unread});
		} else clashes.push(check.id);
	}
	for (const index of newChecks) {
		// Something is noted here beside a check that is not here, or no longer sound.
		const id = ids[index] ?? '';
		const unread = remarked.has(id) ? remarkOf(file.check(index), store).unread : undefined;
		if (unread) remarksUnread.push({id, fault: unread});
	}
	return {newChecks, newRemarks, same, clashes, remarkClashes, remarksUnread};
}

type RemarkToNote = MergedRemark & {
	readonly isNew: boolean;
	/** Why nobody knows what is noted here, where theirs must not take its place. */
	readonly unread?: StoreFault;
};

/**
 * What is noted beside a check here, with what the file has to note. A damaged one may have marked the check void, so it
 * makes way only for one that does so too, and is set aside then.
 * @throws StoreError
 */
export function remarkOf({id, remark: theirs = {}}: ImportedCheck, store: CheckStore): RemarkToNote {
	const found = store.remark(id);
	if (found instanceof StoreError && found.code === 'damaged' && !theirs.void) {
		const isNothing = Object.keys(theirs).length === 0;
		return {remark: theirs, clashes: false, isNew: false, ...(isNothing ? {} : {unread: found.fault})};
	}
	const ours: Remark = usable(found) ?? {};
	const merged = mergedRemark(ours, theirs);
	return {...merged, isNew: !isSameJson(ours, merged.remark)};
}

/** A damaged file is as good as none: it is set aside when another one takes its place. */
function usable<T>(found: T | StoreError): T | undefined {
	if (!(found instanceof StoreError)) return found;
	if (found.code === 'damaged' || found.code === 'missing') return;
	throw found;
}

function settingsPlan({settings}: ImportFile, store: CheckStore): ImportPlan['settings'] {
	if (!settings) return 'none';
	const ours = store.settings().value;
	if (!ours) return 'new';
	return isSameJson(ours, settings) ? 'same' : 'own';
}
