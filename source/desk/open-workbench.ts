import {formatISO} from 'date-fns/formatISO';
import type {Check} from '../check/check.js';
import {type Dialogue, startDialogue} from '../check/dialogue.js';
import {takenUp} from '../check/entry.js';
import {progressOf} from '../check/progress.js';
import {newCheck, reduce} from '../check/reduce.js';
import type {Profile} from '../procedure/facts.js';
import {limitsOf, type Settings} from '../procedure/settings.js';
import type {FinishedCheck} from '../results/record.js';
import {newCheckId} from '../store/check-id.js';
import type {Lock} from '../store/lock-keeper.js';
import {orThrow} from '../store/store-error.js';
import {words} from '../words/index.js';
import {names} from '../words/step-text.js';
import {storeText} from '../words/store-text.js';
import type {Opened, Reports, Saved, Unfinished, Workbench} from '../workbench.js';
import {OpenArchive} from './archive.js';
import {apartFromFiled, fileCheck, holdsNothing, isEmpty, newsIn, reopened, withRemark} from './filing.js';
import {attempt, Hindrance} from './hindrance.js';
import {answersFor, recheckAction, unfinishedOf} from './starting-answers.js';

type Options = {readonly dataDir: string; readonly version: string; readonly clock?: () => Date};

/** The workbench on the real disk and clock: the check in progress, its lock, and the shelf of what is kept. */
export class OpenWorkbench implements Workbench {
	readonly version: string;
	readonly archive: OpenArchive;
	/** Given by whoever has reports written. */
	reports?: Reports;
	readonly #clock: () => Date;
	/** Taken with the first check and kept until the program is left: one copy works on a check at a time. */
	#lock: Lock | undefined;
	#open: Check | undefined;
	#filed: FinishedCheck | undefined;

	constructor({dataDir, version, clock = () => new Date()}: Options) {
		this.version = version;
		this.#clock = clock;
		this.archive = new OpenArchive(dataDir, clock);
	}

	/** Reads what the first screen needs. @throws StoreError for a data folder that must be left alone */
	look(): void {
		this.profiles();
		this.settings();
		this.#draft();
	}

	/** Gives the lock back; for every way out. */
	readonly release = (): void => {
		if (this.#lock?.held) this.#lock.release();
		this.#lock = undefined;
	};

	/** Loads what the first save needs and puts left-overs away, while nobody waits. */
	async settleIn(): Promise<void> {
		await attempt(() => this.#store.prepare());
		await this.archive.settle();
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
		return this.archive.notices;
	}

	unfinished(): Unfinished | undefined {
		return this.archive.asFarAsRead(() => {
			const {check, savedAt} = this.#draft();
			if (!check || isEmpty(check)) return;
			return unfinishedOf(check, this.profiles(), savedAt ?? check.startedAt, this.#clock());
		});
	}

	start(armName?: string): Promise<Opened> {
		return this.#opening(async () => {
			await this.#fileOpenOne();
			const answers = answersFor(armName, this.archive.rereadProfiles());
			const check = reduce(this.blankCheck(), {type: 'fill', answers, at: this.now()});
			return isEmpty(check) ? this.#dialogue(check) : this.#taken(check);
		});
	}

	recheck(armName?: string): Promise<Opened> {
		return this.#opening(async () => {
			const last = this.archive.lastOf(armName);
			await this.#fileOpenOne();
			return this.#taken(reduce(this.blankCheck(), recheckAction(last, this.archive.rereadProfiles(), this.now())));
		});
	}

	resume(): Promise<Opened> {
		return this.#opening(async () => {
			const {check} = this.#draft();
			if (!check) throw new Hindrance('missing', this.archive.dataDir, words.commands.desk.nothingOpen);
			if (progressOf(check, this.archive.rereadProfiles()).current)
				return this.#taken(check, takenUp(this.#dialogue(check), this.now()));
			await this.#file(check);
			throw new Hindrance('missing', this.archive.dataDir, words.commands.desk.cameToEnd);
		});
	}

	reopen(id: string): Promise<Opened> {
		return this.#opening(async () => {
			const {check} = orThrow(this.#store.record(id));
			const remark = orThrow(this.#store.remark(id));
			await this.#fileOpenOne();
			return this.#taken(reopened(withRemark(check, remark), this.now()));
		});
	}

	async save({check: answered}: Dialogue): Promise<Saved> {
		const known = [...this.notices()];
		const check = apartFromFiled(this.archive, answered, () => newCheckId(this.#clock()));
		const done = await attempt(async () => {
			await this.#store.saveDraft(check);
			this.#open = check;
			// What a filed check knew of its arm may be outdated; an invented arm is known anyway.
			if (!check.reopened && !check.practice) await this.archive.keepProfilesOf(check, this.now());
		});
		if (!done.ok) return done;
		if (progressOf(check, this.profiles()).current) return {ok: true, kept: check, ...newsIn(this.notices(), known)};
		const filed = await attempt(() => this.#file(check));
		if (!filed.ok) return {...filed, answerSaved: true};
		return {ok: true, finished: filed.value, ...newsIn(this.notices(), known)};
	}

	profiles(): readonly Profile[] {
		return this.archive.profiles();
	}

	settings(): Settings {
		return this.archive.settings();
	}

	saveSettings(settings: Settings): Promise<Saved> {
		return this.archive.saveSettings(settings);
	}

	get #store() {
		return this.archive.store;
	}

	readonly #draft = () => this.archive.noted(this.#store.draft());

	/** Opens a check under the lock, or says why not. */
	async #opening(work: () => Promise<Dialogue>): Promise<Opened> {
		const locking = await attempt(() => {
			if (!this.#lock?.held) this.#lock = this.#store.lock();
			return this.#lock;
		});
		if (!locking.ok) return {...locking, locked: false};
		if (!locking.value.held) return {ok: false, sentence: storeText(locking.value.error.fault), locked: true};
		const done = await attempt(work);
		if (!done.ok) return {...done, locked: false};
		this.#open = done.value.check;
		return {ok: true, dialogue: done.value};
	}

	/** A check that is taken up, saved as it is now. */
	async #taken(check: Check, dialogue = this.#dialogue(check)): Promise<Dialogue> {
		await this.#store.saveDraft(dialogue.check);
		return dialogue;
	}

	protected blankCheck(): Check {
		const [id, settings] = [newCheckId(this.#clock()), this.settings()];
		return newCheck({...settings, id, at: this.now(), program: this.version, limits: limitsOf(settings)});
	}

	readonly #dialogue = (check: Check): Dialogue =>
		startDialogue(check, this.profiles(), this.archive.history(check), names, this.settings().brisk);

	/** One check is open at a time: the one that is open is filed as interrupted. */
	async #fileOpenOne(): Promise<void> {
		const {check} = this.#draft();
		if (check && holdsNothing(check)) await this.#store.clearDraft();
		else if (check) await fileCheck(this.#store, check, this.now(), this.archive.history(check));
	}

	async #file(check: Check): Promise<FinishedCheck> {
		const record = await fileCheck(this.#store, check, this.now(), this.archive.history(check));
		this.#open = undefined;
		this.#filed = record;
		this.archive.forget();
		return record;
	}
}
