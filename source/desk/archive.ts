import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import type {Profile} from '../procedure/facts.js';
import {isTakenBy} from '../results/profiles.js';
import {checksOfArm, historyOf} from '../results/years/arms.js';
import {type DueArm, dueArms} from '../results/years/due.js';
import {StoreError} from '../store/store-error.js';
import {words} from '../words/index.js';
import type {Archive, Saved} from '../workbench.js';
import {didYouMean} from './did-you-mean.js';
import {countingAgain, markedVoid} from './filing.js';
import {Hindrance, hindranceOf} from './hindrance.js';
import type {Shelf} from './shelf.js';

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
	checkNamed(id: string): ReturnType<Shelf['checkNamed']> {
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

	markVoid(id: string, reason: string): Promise<Saved> {
		return this.#shelf.note(id, (remark) => markedVoid(remark, reason, this.#now()));
	}

	countAgain(id: string): Promise<Saved> {
		return this.#shelf.note(id, (remark) => countingAgain(remark, this.#now()));
	}

	checkedArms(): readonly string[] {
		const open = this.#openCheck()?.answers['arm-name']?.value;
		return [...new Set([...this.#shelf.all().map(({arm}) => arm), ...(typeof open === 'string' ? [open] : [])])];
	}

	isTakenOver(profile: Profile): boolean {
		const open = this.#openCheck();
		return open !== undefined && isTakenBy(open, profile);
	}

	changeProfiles(change: Parameters<Archive['changeProfiles']>[0]): Promise<Saved> {
		return this.#shelf.changeProfiles(change);
	}

	#openCheck(): Check | undefined {
		try {
			return this.#shelf.noted(this.#shelf.store.draft()).check;
		} catch (error) {
			this.#shelf.notice(hindranceOf(error).sentence);
			return;
		}
	}

	/** The last check of an arm that counts; of the arm that is due first where none is named. @throws StoreError, Hindrance */
	lastOf(armName: string | undefined): Check {
		const named = armName === undefined ? this.due()[0]?.last : this.ofArm(armName)[0];
		const record = named && this.#shelf.store.record(named.id);
		if (record instanceof StoreError) throw record;
		if (record) return record.check;
		throw new Hindrance('missing', this.#shelf.dataDir, nothingToRepeat(armName, this.checkedArms()));
	}
}

/** That an arm, or any arm, has no past check to repeat, with the way out. */
export function nothingToRepeat(armName: string | undefined, known: readonly string[]): string {
	const {nothingToRepeat: none, nothingToRepeatOf} = words.commands.desk;
	return armName === undefined ? none : nothingToRepeatOf({arm: armName, meant: didYouMean(armName, known)});
}
