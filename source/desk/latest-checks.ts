import type {PastCheck} from '../check/past-check.js';
import {latestOfNames} from '../results/years/at-a-glance.js';
import type {DatedCheck} from '../results/years/due.js';
import {COMPARED_ROWS} from '../store/history.js';
import {markOfList, readView} from '../store/kept-view.js';
import {attempt} from './hindrance.js';
import type {CheckStore} from './stored-forms.js';

/**
 * The latest checks of the arms on file. Where there are many checks, they are kept for the next time, so that the first
 * screen need not wait for all of them to be read.
 */
export class LatestChecks {
	readonly #dataDir: string;
	readonly #all: () => readonly PastCheck[];
	readonly #store: CheckStore;
	readonly #isSound: () => boolean;
	#known: readonly DatedCheck[] | undefined;
	/** What they were worked out from, while they are to be kept. */
	#mark: string | undefined;

	/** @param isSound whether nothing is wrong with any check of `all`; what is wrong is to be said the next time too */
	constructor(dataDir: string, store: CheckStore, all: () => readonly PastCheck[], isSound: () => boolean) {
		this.#isSound = isSound;
		this.#dataDir = dataDir;
		this.#store = store;
		this.#all = all;
	}

	get(): readonly DatedCheck[] {
		this.#known ??= this.#kept() ?? this.#workedOut();
		return this.#known;
	}

	forget(): void {
		this.#known = undefined;
		this.#mark = undefined;
	}

	/** Keeps them, unless something that they were worked out from has changed meanwhile; for a quiet moment. */
	async keep(): Promise<void> {
		const mark = this.#mark;
		this.#mark = undefined;
		if (mark === undefined || mark !== markOfList(this.#dataDir)) return;
		const rows = this.get().map(({arm, startedAt, verdict, voidBecause, nextDate}): Packed => {
			return [arm, startedAt, voidBecause === undefined ? verdict : null, nextDate];
		});
		await attempt(() => this.#store.keepView('arms', {mark, content: JSON.stringify(rows)}));
	}

	#kept(): readonly DatedCheck[] | undefined {
		this.#mark = markOfList(this.#dataDir);
		const kept = this.#mark === undefined ? undefined : readView(this.#dataDir, 'arms', this.#mark);
		if (!kept) return undefined;
		this.#mark = undefined;
		// Under the checksum of this very program.
		const rows: readonly Packed[] = JSON.parse(kept.toString());
		return rows.map(([arm, startedAt, verdict, nextDate]) => ({arm, startedAt, verdict, nextDate}));
	}

	#workedOut(): readonly DatedCheck[] {
		const all = this.#all();
		if (all.length <= COMPARED_ROWS || this.#store.isListPending() || !this.#isSound()) this.#mark = undefined;
		return latestOfNames(all);
	}
}

/** Name, start, verdict (none where it does not count), day of the next check. */
type Packed = readonly [string, string, string | null, string | null];
