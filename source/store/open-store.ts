import {createConfWriter} from './conf-writer.js';
import type {Codec, StoreContext} from './context.js';
import {codeOf, saveFault} from './describe-fault.js';
import {sweepLeftOvers} from './folder.js';
import {createGenerations} from './generations.js';
import {createHistory, type Listing, type ListPage} from './history.js';
import {createLockKeeper, type Lock} from './lock-keeper.js';
import {createRecords, idFault} from './records.js';
import {createRemarks} from './remarks.js';
import {StoreError} from './store-error.js';
import type {StoreFault} from './store-fault.js';
import type {Summary} from './summary.js';
import {CURRENT_VERSION, UPGRADES, type Versions} from './upgrades.js';

/** C: a check in progress, R: a finished one, M: a remark beside it, P: all profiles, S: the settings. */
export type StoreOptions<C, R, M, P, S> = {
	/** Full path, see `dataDirectory`. */
	readonly dataDir: string;
	readonly check: Codec<C>;
	readonly record: Codec<R>;
	readonly remark: Codec<M>;
	readonly profiles: Codec<P>;
	readonly settings: Codec<S>;
	/** The id of a check in progress, made by `newCheckId` at its start. */
	readonly idOf: (check: C) => string;
	/**
	 * Whether a check in progress goes on after it was finished (put-back made good later). Any other one whose record is on
	 * file was left behind by a crash in the middle of finishing, and is over.
	 */
	readonly isReopened?: (check: C) => boolean;
	readonly summaryOf: (record: R) => Summary;
	readonly now: () => Date;
	/** Takes what there is to tell in the middle of a save (a damaged file was set aside). */
	readonly onNotice?: (fault: StoreFault) => void;
	readonly versions?: Versions;
};

/**
 * The data folder. Reading is immediate and changes nothing on the disk but to set damaged files aside, and that only where
 * no other copy is writing. Every save is done when its promise is: on the disk and read back. A save takes the lock for
 * itself where it is not held already. All errors are StoreErrors; after one the save can be tried again.
 */
export type Store<C, R, M, P, S> = {
	readonly draft: () => {readonly check?: C; readonly savedAt?: string; readonly notices: StoreFault[]};
	readonly saveDraft: (check: C) => Promise<void>;
	/** Puts the open check away without finishing it. */
	readonly clearDraft: () => Promise<void>;
	/** Writes the record once, then clears the draft of the same id. Doing it twice does nothing. */
	readonly finish: (id: string, record: R) => Promise<void>;
	/** A page of the past checks, newest first. */
	readonly list: (page: ListPage) => Listing;
	/** A finished check, or the reason why there is none. */
	readonly record: (id: string) => R | StoreError;
	/** Ids of all finished checks, newest first. @throws StoreError */
	readonly ids: () => readonly string[];
	/** A finished check beside the very content of its file, which may hold more than this program knows. */
	readonly filed: (id: string) => {readonly record: R; readonly json: unknown} | StoreError;
	/** Writes a finished check that was recorded elsewhere, once. The list finds it when it is shown next. */
	readonly add: (id: string, json: unknown) => Promise<void>;
	/**
	 * Removes finished checks for good, then what is noted beside them, so that a check that is left never lacks it. Whoever
	 * calls it has made sure that all of it is kept elsewhere.
	 */
	readonly remove: (ids: readonly string[]) => Promise<void>;
	readonly remark: (id: string) => M | StoreError | undefined;
	/** Ids of the checks that have a remark. */
	readonly remarked: () => ReadonlySet<string>;
	readonly saveRemark: (id: string, remark: M) => Promise<void>;
	readonly profiles: () => {readonly value?: P; readonly savedAt?: string; readonly notices: StoreFault[]};
	readonly saveProfiles: (profiles: P) => Promise<void>;
	readonly settings: () => {readonly value?: S; readonly savedAt?: string; readonly notices: StoreFault[]};
	readonly saveSettings: (settings: S) => Promise<void>;
	readonly lock: () => Lock;
	/** Loads what the first save needs, when there is time for it. */
	readonly prepare: () => Promise<void>;
	/** Puts away what a crash left half done and writes what listing made good; for a quiet moment, and safe to leave out. */
	readonly tidy: () => Promise<void>;
};

/** Opens the store; nothing is read or written yet. */
export const openStore = <C, R, M, P, S>(options: StoreOptions<C, R, M, P, S>): Store<C, R, M, P, S> => {
	const {dataDir, now, onNotice = () => {}, versions = {current: CURRENT_VERSION, upgrades: UPGRADES}} = options;
	const writer = createConfWriter();
	const lock = createLockKeeper(dataDir, now, onNotice);
	const context: StoreContext = {dataDir, now, versions, lock, writer, onNotice};
	const drafts = createGenerations('draft', options.check, context);
	const profiles = createGenerations('profiles', options.profiles, context);
	const settings = createGenerations('settings', options.settings, context);
	const records = createRecords(options.record, context);
	const remarks = createRemarks(options.remark, context);
	const history = createHistory(records, options.summaryOf, context);

	let last: Promise<unknown> = Promise.resolve();
	let swept = false;
	/** One save after the other, each under the lock. */
	const saving = (work: () => Promise<void>): Promise<void> => {
		const next = last.then(() =>
			lock.within(async () => {
				await work();
				if (!swept) sweepLeftOvers(dataDir, now());
				swept = true;
			}),
		);
		const told = next.catch((error: unknown) => {
			throw codeOf(error) === undefined ? error : saveFault({id: 'data', values: {}}, dataDir, error);
		});
		last = told.catch(() => {});
		return told;
	};
	const withId = (id: string, work: () => Promise<void>): Promise<void> => {
		const fault = idFault(id, dataDir);
		return fault === undefined ? saving(work) : Promise.reject(fault);
	};
	const isFinished = (check: C): boolean =>
		options.isReopened?.(check) !== true && records.find(options.idOf(check)).state === 'sound';
	const isLeftOpen = (): boolean => {
		const {value} = drafts.load();
		return value !== undefined && isFinished(value);
	};
	const clearFinished = async (id: string): Promise<void> => {
		const {value, notices} = drafts.load();
		for (const notice of notices) onNotice(notice);
		if (value !== undefined && options.idOf(value) === id) await drafts.save(null);
	};

	const filed = (id: string): {readonly record: R; readonly json: unknown} | StoreError => {
		const fault = idFault(id, dataDir);
		if (fault !== undefined) return fault;
		const {file} = records.placeOf(id);
		const found = records.find(id);
		if (found.state === 'sound') return {record: found.record, json: found.json};
		if (found.state === 'closed') return found.error;
		if (found.state === 'damaged') return new StoreError('damaged', records.report(id, found.damage));
		return new StoreError('missing', {id: 'no-check', values: {file, dataDir, id}});
	};

	return {
		draft() {
			const {value, savedAt, notices} = drafts.load();
			// A crash between the two steps of finishing leaves both; the record is whole, so the check is over.
			if (value === undefined || savedAt === undefined || isFinished(value)) return {notices};
			return {check: value, savedAt, notices};
		},
		saveDraft: (check) => withId(options.idOf(check), () => drafts.save(check)),
		clearDraft: () => saving(() => drafts.save(null)),
		finish: (id, record) =>
			withId(id, async () => {
				await records.write(id, record);
				await clearFinished(id);
				// The check is safe by now, and a list that lacks it is made good when it is shown.
				await history.add(id).catch(() => {});
			}),
		list: (page) => history.list(page),
		record(id) {
			const found = filed(id);
			return found instanceof StoreError ? found : found.record;
		},
		ids: () => records.ids(),
		filed,
		add: (id, json) => withId(id, () => records.write(id, json)),
		remove: (ids) =>
			saving(async () => {
				const fault = ids.map((id) => idFault(id, dataDir)).find((one) => one !== undefined);
				if (fault) throw fault;
				records.remove(ids);
				remarks.remove(ids);
				// The list goes by the files; what the index keeps too long does no harm.
				await history.remove(ids).catch(() => {});
			}),
		remark: (id) => idFault(id, dataDir) ?? remarks.find(id),
		remarked: () => remarks.ids(),
		saveRemark: (id, remark) => withId(id, () => remarks.save(id, remark)),
		profiles: () => profiles.load(),
		saveProfiles: (value) => saving(() => profiles.save(value)),
		settings: () => settings.load(),
		saveSettings: (value) => saving(() => settings.save(value)),
		lock: () => lock.take(),
		prepare: () => writer.prepare(),
		async tidy() {
			try {
				if (!isLeftOpen() && !history.isPending()) return;
				await saving(async () => {
					if (isLeftOpen()) await drafts.save(null);
					await history.settle();
				});
			} catch (error) {
				// Another copy is writing, or nothing can be written: then it waits.
				if (!(error instanceof StoreError)) throw error;
			}
		},
	};
};
