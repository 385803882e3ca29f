import type {Lock} from '../store/lock-keeper.js';
import {storeText} from '../words/store-text.js';
import {attempt} from './hindrance.js';
import type {CheckStore} from './shelf.js';

type Taken = {readonly ok: true} | {readonly ok: false; readonly sentence: string; readonly locked: boolean};

/** One copy works on a check at a time: the lock is taken with the first one and kept until the program is left. */
export class CheckLock {
	readonly #store: () => CheckStore;
	#lock: Lock | undefined;

	constructor(store: () => CheckStore) {
		this.#store = store;
	}

	/** `locked` says that another copy has it. */
	async take(): Promise<Taken> {
		const locking = await attempt(() => {
			if (!this.#lock?.held) this.#lock = this.#store().lock();
			return this.#lock;
		});
		if (!locking.ok) return {...locking, locked: false};
		if (locking.value.held) return {ok: true};
		return {ok: false, sentence: storeText(locking.value.error.fault), locked: true};
	}

	/** For every way out. */
	release(): void {
		if (this.#lock?.held) this.#lock.release();
		this.#lock = undefined;
	}
}
