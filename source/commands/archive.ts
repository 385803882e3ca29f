import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {checksOfArm, historyOf} from '../findings/years/arms.js';
import {type DueArm, dueArms} from '../findings/years/due.js';
import {StoreError} from '../store/store-error.js';
import type {Archive} from '../workbench.js';
import type {Attempt, Shelf} from './shelf.js';

/** Past checks by arm, over the years. */
export class OpenArchive implements Archive {
	readonly #shelf: Shelf;
	readonly #now: () => string;

	constructor(shelf: Shelf, now: () => string) {
		this.#shelf = shelf;
		this.#now = now;
	}

	past(page: {readonly offset: number; readonly limit: number}): ReturnType<Archive['past']> {
		return this.#shelf.past(page);
	}

	record(id: string): ReturnType<Archive['record']> {
		return this.#shelf.record(id);
	}

	/** A filed check, or the one in progress, by its id. */
	checkNamed(id: string): Attempt<Check> {
		return this.#shelf.checkNamed(id);
	}

	history(check: Check): readonly PastCheck[] {
		return historyOf(check, this.#shelf.all(), this.#shelf.profiles());
	}

	ofArm(armName: string): readonly PastCheck[] {
		return checksOfArm(this.#shelf.all(), armName, this.#shelf.profiles());
	}

	due(): readonly DueArm[] {
		return dueArms(this.#shelf.all(), this.#shelf.profiles(), this.#now());
	}

	/** The last check of an arm that counts; of the arm that is due first where none is named. @throws StoreError */
	lastOf(armName: string | undefined): Check {
		const named = armName === undefined ? this.due()[0]?.last : this.ofArm(armName)[0];
		const record = named && this.#shelf.store.record(named.id);
		if (record instanceof StoreError) throw record;
		if (record) return record.check;
		const sentence =
			armName === undefined
				? 'No arm has a past check to repeat; start a full one.'
				: `There is no past check of "${armName}" to repeat; start a full one with --arm.`;
		throw new StoreError('missing', this.#shelf.dataDir, sentence);
	}
}
