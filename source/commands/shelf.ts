import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import type {Profile} from '../procedure/facts.js';
import {type Settings, usualSettings} from '../procedure/settings.js';
import {profilesWith} from '../results/profiles.js';
import {summaryOf} from '../results/record.js';
import {openStore} from '../store/open-store.js';
import {StoreError} from '../store/store-error.js';
import {profileRefusalText} from '../words/results-text.js';
import type {Archive, Saved} from '../workbench.js';
import {withRemark} from './filing.js';
import {type Remark, storedForms} from './stored-forms.js';
import type {Marked} from './void-marks.js';

/** The store with the forms of this program in it. */
export const storeOf = (dataDir: string, now: () => Date, onNotice: (sentence: string) => void) =>
	openStore({
		dataDir,
		...storedForms,
		idOf: (check) => check.id,
		isReopened: (check) => check.reopened === true,
		summaryOf,
		now,
		onNotice,
	});
export type CheckStore = ReturnType<typeof storeOf>;

export type Attempt<T> = {readonly ok: true; readonly value: T} | {readonly ok: false; readonly sentence: string};

/** Why a check cannot be had. */
export type NoCheck = {
	readonly ok: false;
	readonly sentence: string;
	/** It is not the disk: no check has that id. */
	readonly isUnknown: boolean;
};

const noCheck = ({code, sentence}: StoreError): NoCheck => ({ok: false, sentence, isUnknown: code === 'missing'});

/** Errors of the disk become sentences; anything else is a fault of the program. */
export async function attempt<T>(work: () => T | Promise<T>): Promise<Attempt<T>> {
	try {
		return {ok: true, value: await work()};
	} catch (error) {
		return {ok: false, sentence: sentenceOf(error)};
	}
}

/** What an error of the disk says. @throws anything else: that is a fault of the program */
export function sentenceOf(error: unknown): string {
	if (error instanceof StoreError) return error.sentence;
	throw error;
}

/** What stands beside the check in progress: past checks, profiles, settings, and what was noticed on reading them. */
export class Shelf {
	readonly notices: string[] = [];
	readonly dataDir: string;
	readonly #store: CheckStore;
	#profiles: readonly Profile[] | undefined;
	#settings: Settings | undefined;
	#all: readonly PastCheck[] | undefined;

	constructor(dataDir: string, clock: () => Date) {
		this.dataDir = dataDir;
		this.#store = storeOf(dataDir, clock, (sentence) => this.notices.push(sentence));
	}

	get store(): CheckStore {
		return this.#store;
	}

	/** Keeps what a read has to say, once. */
	noted<T extends {readonly notices: readonly string[]}>(read: T): T {
		for (const sentence of read.notices) if (!this.notices.includes(sentence)) this.notices.push(sentence);
		return read;
	}

	past(page: {readonly offset: number; readonly limit: number}): ReturnType<Archive['past']> {
		try {
			const {rows, ...rest} = this.#store.list(page);
			return {...rest, rows: this.#withRemarks(rows)};
		} catch (error) {
			return {total: 0, rows: [], notices: [sentenceOf(error)]};
		}
	}

	record(id: string): Extract<ReturnType<Archive['record']>, {ok: true}> | NoCheck {
		const record = this.#store.record(id);
		if (record instanceof StoreError) return noCheck(record);
		const remark = this.remark(id);
		const whole = {...record, check: withRemark(record.check, remark)};
		const {putBackAt, void: voided, formerVoids} = remark ?? {};
		return {ok: true, record: whole, voided, formerVoids, ...(putBackAt === undefined ? {} : {putBackAt})};
	}

	checkNamed(id: string): {readonly ok: true; readonly value: Check} | NoCheck {
		const draft = this.#store.draft().check;
		if (draft?.id === id) return {ok: true, value: draft};
		const found = this.#store.record(id);
		return found instanceof StoreError ? noCheck(found) : {ok: true, value: found.check};
	}

	profiles(): readonly Profile[] {
		return this.#profiles ?? this.rereadProfiles();
	}

	/** Another copy may have changed some. Where they cannot be read the ones known stay. @throws StoreError */
	rereadProfiles(): readonly Profile[] {
		this.#profiles = this.noted(this.#store.profiles()).value?.profiles ?? [];
		return this.#profiles;
	}

	/** Profiles are a convenience: where they cannot be kept the answer counts all the same, and a notice says so. */
	async keepProfilesOf(check: Check, at: string): Promise<void> {
		const kept = await this.#saveProfiles(profilesWith(this.profiles(), check, at));
		if (!kept.ok) this.noted({notices: [kept.sentence]});
	}

	/** Changes the profiles as they are on the disk by now. */
	async changeProfiles(change: Parameters<Archive['changeProfiles']>[0]): Promise<Saved> {
		const read = await attempt(() => change(this.rereadProfiles()));
		if (!read.ok) return read;
		if (!read.value.ok) return {ok: false, sentence: profileRefusalText(read.value.refusal)};
		return this.#saveProfiles(read.value.profiles);
	}

	async #saveProfiles(next: readonly Profile[]): Promise<Saved> {
		if (next === this.profiles()) return {ok: true};
		const plain = next.map((one) => ({...one, answers: {...one.answers}}));
		const kept = await attempt(() => this.#store.saveProfiles({profiles: plain}));
		if (!kept.ok) return kept;
		this.#profiles = next;
		return {ok: true};
	}

	/** Changes what is noted beside a filed check, whose own file stays as it is. */
	async note(id: string, change: (remark: Remark | undefined) => Marked): Promise<Saved> {
		const done = await attempt(async () => {
			const filed = this.#store.record(id);
			if (filed instanceof StoreError) throw filed;
			const noted = this.#store.remark(id);
			// One that is damaged is put aside when the new one is saved; any other trouble would lose it.
			if (noted instanceof StoreError && noted.code !== 'damaged') throw noted;
			const marked = change(noted instanceof StoreError ? undefined : noted);
			if (marked.ok) await this.#store.saveRemark(id, marked.remark);
			return marked;
		});
		this.forget();
		if (!done.ok) return done;
		return done.value.ok ? {ok: true} : done.value;
	}

	settings(): Settings {
		this.#settings ??= {...usualSettings, ...this.noted(this.#store.settings()).value};
		return this.#settings;
	}

	async saveSettings(settings: Settings): Promise<Saved> {
		const done = await attempt(() => this.#store.saveSettings({...settings}));
		if (!done.ok) return done;
		this.#settings = settings;
		return {ok: true};
	}

	/** All checks on file, newest first, with what was noted later; read once, until the next one is filed. */
	all(): readonly PastCheck[] {
		this.#all ??= this.past({offset: 0, limit: Number.POSITIVE_INFINITY}).rows;
		return this.#all;
	}

	/** Something was filed or noted: the next look at past checks reads them anew. */
	forget(): void {
		this.#all = undefined;
	}

	/** What was noted later: an interrupted check whose deck was put back says so, and so does one that is void. */
	#withRemarks(rows: readonly PastCheck[]): PastCheck[] {
		const remarked = this.#store.remarked();
		return rows.map((row) => {
			const remark = remarked.has(row.id) ? this.remark(row.id) : undefined;
			if (!remark) return row;
			const isBack = row.outcome === 'interrupted' && remark.putBackAt !== undefined;
			return {
				...row,
				...(isBack ? {outcome: 'put back'} : {}),
				...(remark.void ? {voidBecause: remark.void.reason} : {}),
			};
		});
	}

	/** What was noted later beside a filed check. */
	remark(id: string): Remark | undefined {
		const remark = this.#store.remark(id);
		return remark instanceof StoreError ? undefined : remark;
	}
}
