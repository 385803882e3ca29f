import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import type {Profile} from '../procedure/facts.js';
import {type Settings, usualSettings} from '../procedure/settings.js';
import {profilesWith} from '../results/profiles.js';
import {filtered} from '../results/years/past-filter.js';
import {orThrow, StoreError} from '../store/store-error.js';
import type {StoreFault} from '../store/store-fault.js';
import {profileRefusalText} from '../words/results-text.js';
import {storeText} from '../words/store-text.js';
import type {Archive, Saved} from '../workbench.js';
import {type Marked, withRemark} from './filing.js';
import {attempt, hindranceOf} from './hindrance.js';
import {unknownFor, withRemarks} from './remarks.js';
import {type CheckStore, type Remark, storeOf} from './stored-forms.js';

/** Why a check cannot be had. */
type NoCheck = {
	readonly ok: false;
	readonly sentence: string;
	/** It is not the disk: no check has that id. */
	readonly isUnknown: boolean;
};

const noCheck = ({code, fault}: StoreError): NoCheck => ({
	ok: false,
	sentence: storeText(fault),
	isUnknown: code === 'missing',
});

/** What stands beside the check in progress: past checks, profiles, settings, and what was noticed on reading them. */
export class Shelf {
	readonly dataDir: string;
	readonly store: CheckStore;
	#profiles: readonly Profile[] | undefined;
	#settings: Settings | undefined;
	readonly #noticed: string[] = [];
	#all: ReturnType<Archive['past']> | undefined;

	constructor(dataDir: string, clock: () => Date) {
		this.dataDir = dataDir;
		this.store = storeOf(dataDir, clock, (sentence) => this.notice(sentence));
	}

	/** Keeps what a read has to say, once. */
	noted<T extends {readonly notices: readonly StoreFault[]}>(read: T): T {
		for (const fault of read.notices) this.notice(storeText(fault));
		return read;
	}

	/** Keeps something to be said, once. */
	readonly notice = (sentence: string): void => {
		if (!this.#noticed.includes(sentence)) this.#noticed.push(sentence);
	};

	/** What there is to say: what reading found, and what is wrong with past checks as they were listed last. */
	get notices(): readonly string[] {
		return [...new Set([...this.#noticed, ...(this.#all?.notices ?? [])])];
	}

	/** What a look at the disk finds; where it cannot be read, that is to be said. */
	asFarAsRead<T>(look: () => T): T | undefined {
		try {
			return look();
		} catch (error) {
			this.notice(hindranceOf(error).sentence);
			return undefined;
		}
	}

	past({only, ...page}: Parameters<Archive['past']>[0]): ReturnType<Archive['past']> {
		if (only) {
			const wanted = filtered(this.all(), only);
			const notices = this.#all?.notices ?? [];
			return {total: wanted.length, rows: wanted.slice(page.offset, page.offset + page.limit), notices};
		}
		try {
			const {total, rows, notices} = this.store.list(page);
			const noted = withRemarks(rows, this.store);
			// A file that was set aside is not met again.
			for (const fault of notices) if (fault.id === 'set-aside') this.notice(storeText(fault));
			return {total, rows: noted.rows, notices: [...notices.map(storeText), ...noted.notices]};
		} catch (error) {
			return {total: 0, rows: [], notices: [hindranceOf(error).sentence]};
		}
	}

	record(id: string): Extract<ReturnType<Archive['record']>, {ok: true}> | NoCheck {
		const record = this.store.record(id);
		if (record instanceof StoreError) return noCheck(record);
		const remark = this.store.remark(id);
		if (remark instanceof StoreError) return {ok: true, record, unknownBecause: unknownFor(remark)};
		const whole = {...record, check: withRemark(record.check, remark)};
		const {putBackAt, void: voided, formerVoids} = remark ?? {};
		return {ok: true, record: whole, voided, formerVoids, ...(putBackAt === undefined ? {} : {putBackAt})};
	}

	checkNamed(id: string): {readonly ok: true; readonly value: Check} | NoCheck {
		const draft = this.store.draft().check;
		if (draft?.id === id) return {ok: true, value: draft};
		const found = this.store.record(id);
		return found instanceof StoreError ? noCheck(found) : {ok: true, value: found.check};
	}

	profiles(): readonly Profile[] {
		return this.#profiles ?? this.rereadProfiles();
	}

	/** Another copy may have changed some. Where they cannot be read the ones known stay. @throws StoreError */
	rereadProfiles(): readonly Profile[] {
		this.#profiles = this.noted(this.store.profiles()).value?.profiles ?? [];
		return this.#profiles;
	}

	/** Profiles are a convenience: where they cannot be kept the answer counts all the same, and a notice says so. */
	async keepProfilesOf(check: Check, at: string): Promise<void> {
		if (profilesWith(this.profiles(), check, at) === this.profiles()) return;
		// Another copy may have noted something meanwhile.
		const kept = await this.changeProfiles((now) => ({ok: true, profiles: profilesWith(now, check, at)}));
		if (!kept.ok) this.notice(kept.sentence);
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
		const kept = await attempt(() => this.store.saveProfiles({profiles: plain}));
		if (!kept.ok) return kept;
		this.#profiles = next;
		return {ok: true};
	}

	/** Changes what is noted beside a filed check, whose own file stays as it is. */
	async note(id: string, change: (remark: Remark | undefined, isKnown: boolean) => Marked): Promise<Saved> {
		const done = await attempt(async () => {
			orThrow(this.store.record(id));
			const noted = this.store.remark(id);
			// One that is damaged is put aside when the new one is saved; any other trouble would lose it.
			if (noted instanceof StoreError && noted.code !== 'damaged') throw noted;
			const isKnown = !(noted instanceof StoreError);
			const marked = change(isKnown ? noted : undefined, isKnown);
			if (marked.ok) await this.store.saveRemark(id, marked.remark);
			return marked;
		});
		this.forget();
		if (!done.ok) return done;
		return done.value.ok ? {ok: true} : done.value;
	}

	settings(): Settings {
		this.#settings ??= {...usualSettings, ...this.noted(this.store.settings()).value};
		return this.#settings;
	}

	async saveSettings(settings: Settings): Promise<Saved> {
		const done = await attempt(() => this.store.saveSettings({...settings}));
		if (!done.ok) return done;
		this.#settings = settings;
		return {ok: true};
	}

	/** Whether nothing was wrong with any check when all were listed last. */
	get isListSound(): boolean {
		return this.#all?.notices.length === 0;
	}

	/** All checks on file, newest first, with what was noted later; read once, until the next one is filed. */
	all(): readonly PastCheck[] {
		this.#all ??= this.past({offset: 0, limit: Number.POSITIVE_INFINITY});
		return this.#all.rows;
	}

	/** Makes sure that no check passes for missing because the folder cannot be read. @throws StoreError */
	assertListed(): void {
		this.store.ids();
	}

	/** Something was filed or noted: the next look at past checks reads them anew. */
	forget(): void {
		this.#all = undefined;
	}
}
