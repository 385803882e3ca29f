import type {PastCheck} from '../check/past-check.js';
import {createCheckFiles} from './check-files.js';
import {isCheckId} from './check-id.js';
import {createConfWriter} from './conf-writer.js';
import type {Codec, StoreContext} from './context.js';
import {codeOf, saveFault} from './describe-fault.js';
import {sweepLeftOvers} from './folder.js';
import {createGenerations} from './generations.js';
import {createHistory} from './history.js';
import {type View, type ViewName, writeView} from './kept-view.js';
import {createLockKeeper} from './lock-keeper.js';
import {StoreError} from './store-error.js';
import type {StoreFault} from './store-fault.js';
import {CURRENT_VERSION, UPGRADES, type Versions} from './upgrades.js';

/** C: a check in progress, R: a finished one, M: a remark beside it, P: all profiles, S: the settings. */
type StoreOptions<C, R, M, P, S> = {
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
	readonly summaryOf: (record: R) => PastCheck;
	readonly now: () => Date;
	/** Takes what there is to tell in the middle of a save (a damaged file was set aside). */
	readonly onNotice?: (fault: StoreFault) => void;
	readonly versions?: Versions;
};

/**
 * The data folder; nothing is read or written yet. Reading is immediate and changes nothing on the disk but to set damaged
 * files aside, and that only where no other copy is writing. Every save is done when its promise is: on the disk and read
 * back. A save takes the lock for itself where it is not held already. All errors are StoreErrors; after one the save can
 * be tried again.
 */
export const openStore = <C, R, M, P, S>(options: StoreOptions<C, R, M, P, S>) => {
	const {dataDir, now, onNotice = () => {}, versions = {current: CURRENT_VERSION, upgrades: UPGRADES}} = options;
	const writer = createConfWriter();
	const lock = createLockKeeper(dataDir, now, onNotice);
	const context: StoreContext = {dataDir, now, versions, lock, writer, onNotice};
	const drafts = createGenerations('draft', options.check, context);
	const profiles = createGenerations('profiles', options.profiles, context);
	const settings = createGenerations('settings', options.settings, context);
	const records = createCheckFiles('check', options.record, context);
	const remarks = createCheckFiles('remark', options.remark, context);
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
	/** The error for an id that could not be a file name of ours, `undefined` where it could. */
	const idFault = (id: string): StoreError | undefined =>
		isCheckId(id) ? undefined : new StoreError('missing', {id: 'no-id', values: {file: dataDir, id}});
	const withId = (id: string, work: () => Promise<void>): Promise<void> => {
		const fault = idFault(id);
		return fault === undefined ? saving(work) : Promise.reject(fault);
	};
	const isFinished = (check: C): boolean =>
		options.isReopened?.(check) !== true && records.find(options.idOf(check)).state === 'sound';
	const isLeftOpen = (): boolean => {
		const {value} = drafts.peek();
		return value !== undefined && isFinished(value);
	};
	const clearFinished = async (id: string): Promise<void> => {
		const {value, notices} = drafts.peek();
		for (const notice of notices) onNotice(notice);
		if (value !== undefined && options.idOf(value) === id) await drafts.save(null);
	};

	/** Clears what was open of a check that is safe by now, so that failing is only to be said: it is no open check any more. */
	const clearing = (id: string, work: () => Promise<void>): Promise<void> =>
		work().catch((error: unknown) => {
			const {fault} = saveFault({id: 'draft', values: {}}, dataDir, error);
			const system = fault.id === 'not-saved' ? fault.values.system : undefined;
			onNotice({id: 'not-cleared', values: {file: fault.values.file, id, system}});
		});

	/** A finished check beside the very content of its file, which may hold more than this program knows. */
	const filed = (id: string): {readonly record: R; readonly json: unknown} | StoreError => {
		const fault = idFault(id);
		if (fault !== undefined) return fault;
		const {file} = records.placeOf(id);
		const found = records.find(id);
		if (found.state === 'sound') return {record: found.value, json: found.json};
		if (found.state === 'closed') return found.error;
		if (found.state === 'damaged') return new StoreError('damaged', records.report(id, found.damage));
		return new StoreError('missing', {id: 'no-check', values: {file, dataDir, id}});
	};

	return {
		draft(): {readonly check?: C; readonly savedAt?: string; readonly notices: StoreFault[]} {
			const {value, savedAt, notices} = drafts.load();
			// A crash between the two steps of finishing leaves both; the record is whole, so the check is over.
			if (value === undefined || savedAt === undefined || isFinished(value)) return {notices};
			return {check: value, savedAt, notices};
		},
		saveDraft: (check: C): Promise<void> => withId(options.idOf(check), () => drafts.save(check)),
		/** The same for a filed check that was open again: what was put back is noted beside it. */
		finishAgain: (id: string, remark: M): Promise<void> =>
			withId(id, async () => {
				await remarks.write(id, remark);
				await clearing(id, () => drafts.save(null));
			}),
		/** Puts the open check away without finishing it. */
		clearDraft: (): Promise<void> => saving(() => drafts.save(null)),
		/** Writes the record once, then clears the draft of the same id. Doing it twice does nothing. */
		finish: (id: string, record: R): Promise<void> =>
			withId(id, async () => {
				await records.write(id, record);
				await clearing(id, () => clearFinished(id));
				// The check is safe by now, and a list that lacks it is made good when it is shown.
				await history.add(id).catch(() => {});
			}),
		list: history.list,
		/** Whether listing had to make something good, which `tidy` would write. */
		isListPending: history.isPending,
		/** Keeps what was worked out of all checks, for `readView`. */
		keepView: (name: ViewName, view: View): Promise<void> => saving(async () => writeView(dataDir, name, view)),
		/** A finished check, or the reason why there is none. */
		record(id: string): R | StoreError {
			const found = filed(id);
			return found instanceof StoreError ? found : found.record;
		},
		ids: records.ids,
		filed,
		/** Writes a finished check that was recorded elsewhere, once. The list finds it when it is shown next. */
		add: (id: string, json: unknown): Promise<void> => withId(id, () => records.write(id, json)),
		/**
		 * Removes finished checks for good, then what is noted beside them, so that a check that is left never lacks it. Whoever
		 * calls it has made sure that all of it is kept elsewhere.
		 */
		remove: (ids: readonly string[]): Promise<void> =>
			saving(async () => {
				const fault = ids.map(idFault).find((one) => one !== undefined);
				if (fault) throw fault;
				records.remove(ids);
				remarks.remove(ids);
				// The list goes by the files; what the index keeps too long does no harm.
				await history.remove(ids).catch(() => {});
			}),
		remark(id: string): M | StoreError | undefined {
			const fault = idFault(id);
			if (fault !== undefined) return fault;
			const found = remarks.find(id);
			if (found.state === 'missing') return undefined;
			if (found.state === 'sound') return found.value;
			if (found.state === 'closed') return found.error;
			const {thing, file} = remarks.placeOf(id);
			return new StoreError('damaged', {id: 'remark-damaged', values: {thing, file, damage: found.damage}});
		},
		/** Ids of the checks that have a remark. @throws StoreError */
		remarked: (): ReadonlySet<string> => new Set(remarks.ids()),
		saveRemark: (id: string, remark: M): Promise<void> => withId(id, () => remarks.write(id, remark)),
		profiles: profiles.load,
		saveProfiles: (value: P): Promise<void> => saving(() => profiles.save(value)),
		settings: settings.load,
		saveSettings: (value: S): Promise<void> => saving(() => settings.save(value)),
		lock: lock.take,
		/** Loads what the first save needs, when there is time for it. */
		prepare: writer.prepare,
		/** Puts away what a crash left half done and writes what listing made good; for a quiet moment, and safe to leave out. */
		async tidy(): Promise<void> {
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
