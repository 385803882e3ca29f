import type {CheckStore, Remark} from '../desk/stored-forms.js';
import {isSameJson} from '../store/json.js';
import {StoreError} from '../store/store-error.js';
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
	/** Id of the check in progress, where the file has it filed. */
	readonly openHere?: string;
	readonly profiles: MergedProfiles;
	readonly settings: 'none' | 'new' | 'same' | 'own';
};

export const addsNothing = ({newChecks, newRemarks, profiles, settings}: ImportPlan): boolean =>
	newChecks.length + newRemarks.length + profiles.added.length + profiles.named.length + profiles.noted.length === 0 &&
	settings !== 'new';

/**
 * Whether something of the file is otherwise here, so that it was left out. Settings are those of a place, and no clash.
 */
export const hasClashes = ({clashes, remarkClashes, openHere, profiles}: ImportPlan): boolean =>
	clashes.length + remarkClashes.length + profiles.clashes.length > 0 ||
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
		...comparedChecks(file, known, newChecks, store),
		...(open !== undefined && !here.has(open) && ids.includes(open) && {openHere: open}),
		profiles: mergedProfiles(store.profiles().value, file.profiles),
		settings: settingsPlan(file, store),
	};
}

function comparedChecks(file: ImportFile, known: readonly number[], unknown: readonly number[], store: CheckStore) {
	const newChecks = [...unknown];
	const newRemarks: number[] = [];
	const clashes: string[] = [];
	const remarkClashes: string[] = [];
	let same = 0;
	for (const index of known) {
		const check = file.check(index);
		const filed = usable(store.filed(check.id));
		if (!filed) newChecks.push(index);
		else if (isSameJson(filed.json, check.json)) {
			same++;
			const {isNew, clashes: remarkDiffers} = remarkOf(check, store);
			if (isNew) newRemarks.push(index);
			if (remarkDiffers) remarkClashes.push(check.id);
		} else clashes.push(check.id);
	}
	return {newChecks, newRemarks, same, clashes, remarkClashes};
}

/** What is noted beside a check here, with what the file has to note. @throws StoreError */
export function remarkOf(
	{id, remark: theirs = {}}: ImportedCheck,
	store: CheckStore,
): MergedRemark & {readonly isNew: boolean} {
	const ours: Remark = usable(store.remark(id)) ?? {};
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
