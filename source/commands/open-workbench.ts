import {formatDistanceStrict} from 'date-fns/formatDistanceStrict';
import {formatISO} from 'date-fns/formatISO';
import type {Check} from '../check/check.js';
import {type Dialogue, startDialogue} from '../check/dialogue.js';
import {progressOf} from '../check/progress.js';
import {newCheck, reduce} from '../check/reduce.js';
import {profilesWith} from '../findings/profiles.js';
import {type FinishedCheck, finishedCheck, summaryOf} from '../findings/record.js';
import type {Profile} from '../procedure/facts.js';
import {type Settings, usualSettings} from '../procedure/settings.js';
import {newCheckId} from '../store/check-id.js';
import type {Lock} from '../store/lock-keeper.js';
import {openStore} from '../store/open-store.js';
import {StoreError} from '../store/store-error.js';
import type {Opened, PastCheck, Saved, Unfinished, Workbench} from '../workbench.js';
import {storedForms} from './stored-forms.js';

type Options = {readonly dataDir: string; readonly version: string; readonly clock?: () => Date};

const storeOf = (dataDir: string, now: () => Date, onNotice: (sentence: string) => void) =>
	openStore({
		dataDir,
		...storedForms,
		idOf: (check) => check.id,
		isReopened: (check) => check.reopened === true,
		summaryOf,
		now,
		onNotice,
	});

type Attempt<T> = {readonly ok: true; readonly value: T} | {readonly ok: false; readonly sentence: string};

/** Errors of the disk become sentences; anything else is a fault of the program. */
async function attempt<T>(work: () => Promise<T>): Promise<Attempt<T>> {
	try {
		return {ok: true, value: await work()};
	} catch (error) {
		if (error instanceof StoreError) return {ok: false, sentence: error.sentence};
		throw error;
	}
}

/** The workbench on the real disk and clock. */
export class OpenWorkbench implements Workbench {
	readonly version: string;
	readonly #dataDir: string;
	readonly #clock: () => Date;
	readonly #store: ReturnType<typeof storeOf>;
	readonly #notices: string[] = [];
	#lock: Lock | undefined;
	#open: Check | undefined;
	#filed: FinishedCheck | undefined;
	#profiles: readonly Profile[] | undefined;
	#settings: Settings | undefined;

	constructor({dataDir, version, clock = () => new Date()}: Options) {
		this.version = version;
		this.#dataDir = dataDir;
		this.#clock = clock;
		this.#store = storeOf(dataDir, clock, (sentence) => this.#notices.push(sentence));
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
		await attempt(() => this.#store.tidy());
	}

	/** The check that this copy works on, as it was last saved. */
	get openCheck(): Check | undefined {
		return this.#open;
	}

	/** The check that this copy has filed last. */
	get filed(): FinishedCheck | undefined {
		return this.#filed;
	}

	/** A filed check, or the one in progress, by its id. */
	checkNamed(id: string): Attempt<Check> {
		const draft = this.#store.draft().check;
		if (draft?.id === id) return {ok: true, value: draft};
		const found = this.#store.record(id);
		return found instanceof StoreError ? {ok: false, sentence: found.sentence} : {ok: true, value: found.check};
	}

	now(): string {
		return formatISO(this.#clock());
	}

	notices(): readonly string[] {
		return this.#notices;
	}

	unfinished(): Unfinished | undefined {
		const {check, savedAt} = this.#draft();
		if (!check) return;
		const {facts, current} = progressOf(check, this.profiles());
		return {
			arm: facts.text('arm-name') ?? 'a new arm',
			step: current?.title ?? 'the end',
			ago: formatDistanceStrict(savedAt ?? check.startedAt, this.#clock(), {addSuffix: true}),
		};
	}

	start(armName?: string): Promise<Opened> {
		return this.#opening(async () => {
			await this.#fileOpenOne();
			const {bell: _bell, settleSeconds: _settle, ...limits} = this.settings();
			const at = this.now();
			const check = newCheck({id: newCheckId(this.#clock()), at, program: this.version, limits});
			return startDialogue(reduce(check, {type: 'fill', answers: this.#answersFor(armName), at}), this.profiles());
		});
	}

	resume(): Promise<Opened> {
		return this.#opening(async () => {
			const {check} = this.#draft();
			if (!check)
				throw new StoreError(
					'missing',
					this.#dataDir,
					`There is no unfinished check in "${this.#dataDir}"; start a new one.`,
				);
			return this.#taken(reduce(check, {type: 'resume', at: this.now()}));
		});
	}

	reopen(id: string): Promise<Opened> {
		return this.#opening(async () => {
			const record = this.#store.record(id);
			if (record instanceof StoreError) throw record;
			await this.#fileOpenOne();
			const at = this.now();
			const left = Object.entries(record.check.answers).filter(
				([step, answer]) => step.startsWith('back-') && answer.override,
			);
			const check: Check = {...record.check, reopened: true, stopped: {at}, doubts: []};
			return this.#taken(reduce(check, {type: 'ask-again', steps: left.map(([step]) => step), at}));
		});
	}

	async save({check}: Dialogue): Promise<Saved> {
		const done = await attempt(async () => {
			await this.#store.saveDraft(check);
			this.#open = check;
			await this.#saveProfilesOf(check);
			return progressOf(check, this.profiles()).current ? undefined : this.#file(check);
		});
		if (!done.ok) return done;
		return done.value ? {ok: true, finished: done.value} : {ok: true};
	}

	past(page: {readonly offset: number; readonly limit: number}): {
		total: number;
		rows: readonly PastCheck[];
		notices: readonly string[];
	} {
		return this.#store.list(page);
	}

	record(id: string): ReturnType<Workbench['record']> {
		const record = this.#store.record(id);
		if (record instanceof StoreError) return {ok: false, sentence: record.sentence};
		const remark = this.#store.remark(id);
		const putBackAt = remark instanceof StoreError ? undefined : remark?.putBackAt;
		return putBackAt === undefined ? {ok: true, record} : {ok: true, record, putBackAt};
	}

	profiles(): readonly Profile[] {
		this.#profiles ??= this.#noted(this.#store.profiles()).value?.profiles ?? [];
		return this.#profiles;
	}

	settings(): Settings {
		this.#settings ??= {...usualSettings, ...this.#noted(this.#store.settings()).value};
		return this.#settings;
	}

	async saveSettings(settings: Settings): Promise<Saved> {
		const done = await attempt(() => this.#store.saveSettings({...settings}));
		if (!done.ok) return done;
		this.#settings = settings;
		return {ok: true};
	}

	#draft() {
		return this.#noted(this.#store.draft());
	}

	#noted<T extends {readonly notices: readonly string[]}>(read: T): T {
		for (const sentence of read.notices) if (!this.#notices.includes(sentence)) this.#notices.push(sentence);
		return read;
	}

	/** Opens a check under the lock, or says why not. */
	async #opening(work: () => Promise<Dialogue>): Promise<Opened> {
		const locking = await attempt(async () => {
			if (!this.#lock?.held) this.#lock = this.#store.lock();
			return this.#lock;
		});
		if (!locking.ok) return {...locking, locked: false};
		if (!locking.value.held) return {ok: false, sentence: locking.value.sentence, locked: true};
		const done = await attempt(work);
		if (!done.ok) return {...done, locked: false};
		this.#open = done.value.check;
		return {ok: true, dialogue: done.value};
	}

	/** A check that is taken up again, saved as it is now. */
	async #taken(check: Check): Promise<Dialogue> {
		await this.#store.saveDraft(check);
		return startDialogue(check, this.profiles());
	}

	/** What is known of an arm when its check starts: its profile, or its name alone. */
	#answersFor(armName: string | undefined) {
		if (armName === undefined) return {};
		const known = this.profiles().find(({kind, name}) => kind === 'arm' && name === armName);
		if (!known) return {'arm-name': {value: armName, typed: armName}};
		return {'arm-profile': {value: known.id, typed: known.name}, ...known.answers};
	}

	/** One check is open at a time: the one that is open is filed as interrupted. */
	async #fileOpenOne(): Promise<void> {
		const {check} = this.#draft();
		if (!check) return;
		if (check.reopened || Object.keys(check.answers).length === 0) await this.#store.clearDraft();
		else await this.#store.finish(check.id, finishedCheck(check, this.now()));
	}

	async #file(check: Check): Promise<FinishedCheck> {
		const record = finishedCheck(check, this.now());
		if (check.reopened) {
			if (record.outcome !== 'interrupted') await this.#store.saveRemark(check.id, {putBackAt: this.now()});
			await this.#store.clearDraft();
		} else await this.#store.finish(check.id, record);
		this.#open = undefined;
		this.#filed = record;
		return record;
	}

	async #saveProfilesOf(check: Check): Promise<void> {
		const next = profilesWith(this.profiles(), check, this.now());
		if (next === this.profiles()) return;
		await this.#store.saveProfiles({profiles: next.map((one) => ({...one, answers: {...one.answers}}))});
		this.#profiles = next;
	}
}
