import {formatISO} from 'date-fns/formatISO';
import type {Check} from '../check/check.js';
import {type Dialogue, startDialogue} from '../check/dialogue.js';
import {progressOf} from '../check/progress.js';
import {newCheck, reduce} from '../check/reduce.js';
import type {Profile} from '../procedure/facts.js';
import {limitsOf, type Settings} from '../procedure/settings.js';
import type {FinishedCheck} from '../results/record.js';
import {newCheckId} from '../store/check-id.js';
import {StoreError} from '../store/store-error.js';
import {words} from '../words/index.js';
import type {Opened, Saved, Unfinished, Workbench} from '../workbench.js';
import {OpenArchive} from './archive.js';
import {CheckLock} from './check-lock.js';
import {fileCheck, isEmpty, isIdle, reopened, withRemark} from './filing.js';
import {recheckAction} from './rechecking.js';
import {attempt, Shelf, sentenceOf} from './shelf.js';
import {answersFor, unfinishedOf} from './starting.js';

type Options = {readonly dataDir: string; readonly version: string; readonly clock?: () => Date};

/** The workbench on the real disk and clock: the check in progress, its lock, and the shelf of what is kept. */
export class OpenWorkbench implements Workbench {
	readonly version: string;
	readonly archive: OpenArchive;
	readonly #dataDir: string;
	readonly #clock: () => Date;
	readonly #shelf: Shelf;
	readonly #lock = new CheckLock(() => this.#store);
	#open: Check | undefined;
	#filed: FinishedCheck | undefined;

	constructor({dataDir, version, clock = () => new Date()}: Options) {
		this.version = version;
		this.#dataDir = dataDir;
		this.#clock = clock;
		this.#shelf = new Shelf(dataDir, clock);
		this.archive = new OpenArchive(this.#shelf, () => this.now());
	}

	/** Reads what the first screen needs. @throws StoreError for a data folder that must be left alone */
	look(): void {
		this.profiles();
		this.settings();
		this.#draft();
	}

	/** Gives the lock back; for every way out. */
	readonly release = (): void => this.#lock.release();

	/** Loads what the first save needs and puts left-overs away, while nobody waits. */
	async settleIn(): Promise<void> {
		await attempt(() => this.#store.prepare());
		await attempt(() => this.#store.tidy());
	}

	/** The check that this copy works on, as it was last saved; undefined while it holds no answer. */
	get openCheck(): Check | undefined {
		return this.#open && !isEmpty(this.#open) ? this.#open : undefined;
	}

	/** The check that this copy has filed last. */
	get filed(): FinishedCheck | undefined {
		return this.#filed;
	}

	now(): string {
		return formatISO(this.#clock());
	}

	notices(): readonly string[] {
		return this.#shelf.notices;
	}

	unfinished(): Unfinished | undefined {
		try {
			const {check, savedAt} = this.#draft();
			if (!check || isEmpty(check)) return;
			return unfinishedOf(check, this.profiles(), savedAt ?? check.startedAt, this.#clock());
		} catch (error) {
			this.#shelf.noted({notices: [sentenceOf(error)]});
			return;
		}
	}

	start(armName?: string): Promise<Opened> {
		return this.#opening(async () => {
			await this.#fileOpenOne();
			const answers = answersFor(armName, this.#shelf.rereadProfiles());
			const check = reduce(this.blankCheck(), {type: 'fill', answers, at: this.now()});
			return isEmpty(check) ? this.#dialogue(check) : this.#taken(check);
		});
	}

	recheck(armName?: string): Promise<Opened> {
		return this.#opening(async () => {
			const last = this.archive.lastOf(armName);
			await this.#fileOpenOne();
			return this.#taken(reduce(this.blankCheck(), recheckAction(last, this.#shelf.rereadProfiles(), this.now())));
		});
	}

	resume(): Promise<Opened> {
		return this.#opening(async () => {
			const {check} = this.#draft();
			if (!check) throw new StoreError('missing', this.#dataDir, 'There is no unfinished check; start a new one.');
			if (progressOf(check, this.#shelf.rereadProfiles()).current)
				return this.#taken(reduce(check, {type: 'resume', at: this.now()}));
			await this.#file(check);
			throw new StoreError(
				'missing',
				this.#dataDir,
				'That check had come to its end; it is filed now, see past checks.',
			);
		});
	}

	reopen(id: string): Promise<Opened> {
		return this.#opening(async () => {
			const record = this.#store.record(id);
			if (record instanceof StoreError) throw record;
			await this.#fileOpenOne();
			return this.#taken(reopened(withRemark(record.check, this.#shelf.remark(id)), this.now()));
		});
	}

	async save({check}: Dialogue): Promise<Saved> {
		const done = await attempt(async () => {
			await this.#store.saveDraft(check);
			this.#open = check;
			// What a filed check knew of its arm may be outdated; an invented arm is known anyway.
			if (!check.reopened && !check.practice) await this.#shelf.keepProfilesOf(check, this.now());
		});
		if (!done.ok) return done;
		if (progressOf(check, this.profiles()).current) return {ok: true};
		const filed = await attempt(() => this.#file(check));
		return filed.ok ? {ok: true, finished: filed.value} : {...filed, answerSaved: true};
	}

	profiles(): readonly Profile[] {
		return this.#shelf.profiles();
	}

	settings(): Settings {
		return this.#shelf.settings();
	}

	saveSettings(settings: Settings): Promise<Saved> {
		return this.#shelf.saveSettings(settings);
	}

	get #store() {
		return this.#shelf.store;
	}

	#draft() {
		return this.#shelf.noted(this.#store.draft());
	}

	/** Opens a check under the lock, or says why not. */
	async #opening(work: () => Promise<Dialogue>): Promise<Opened> {
		const locking = await this.#lock.take();
		if (!locking.ok) return locking;
		const done = await attempt(work);
		if (!done.ok) return {...done, locked: false};
		this.#open = done.value.check;
		return {ok: true, dialogue: done.value};
	}

	/** A check that is taken up, saved as it is now. */
	async #taken(check: Check): Promise<Dialogue> {
		await this.#store.saveDraft(check);
		return this.#dialogue(check);
	}

	protected blankCheck(): Check {
		const start = {id: newCheckId(this.#clock()), at: this.now(), program: this.version};
		const settings = this.settings();
		return newCheck({...start, limits: limitsOf(settings), setAnew: settings.setAnew});
	}

	readonly #dialogue = (check: Check): Dialogue =>
		startDialogue(check, this.profiles(), this.archive.history(check), words.options);

	/** One check is open at a time: the one that is open is filed as interrupted. */
	async #fileOpenOne(): Promise<void> {
		const {check} = this.#draft();
		if (!check) return;
		if (isIdle(check)) await this.#store.clearDraft();
		else await fileCheck(this.#store, check, this.now(), this.archive.history(check));
	}

	async #file(check: Check): Promise<FinishedCheck> {
		const record = await fileCheck(this.#store, check, this.now(), this.archive.history(check));
		this.#open = undefined;
		this.#filed = record;
		this.#shelf.forget();
		return record;
	}
}
