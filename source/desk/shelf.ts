import type {Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import type {Profile} from '../procedure/facts.js';
import {type Settings, usualSettings} from '../procedure/settings.js';
import {profilesWith} from '../results/profiles.js';
import {filtered} from '../results/years/past-filter.js';
import {StoreError} from '../store/store-error.js';
import type {StoreFault} from '../store/store-fault.js';
import {profileRefusalText} from '../words/results-text.js';
import {storeText} from '../words/store-text.js';
import type {Archive, Saved} from '../workbench.js';
import {type Marked, withRemark} from './filing.js';
import {attempt, hindranceOf} from './hindrance.js';
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
	readonly notices: string[] = [];
	readonly dataDir: string;
	readonly store: CheckStore;
	#profiles: readonly Profile[] | undefined;
	#settings: Settings | undefined;
	#all: readonly PastCheck[] | undefined;

	constructor(dataDir: string, clock: () => Date) {
		this.dataDir = dataDir;
		this.store = storeOf(dataDir, clock, (sentence) => this.notices.push(sentence));
	}

	/** Keeps what a read has to say, once. */
	noted<T extends {readonly notices: readonly StoreFault[]}>(read: T): T {
		for (const fault of read.notices) this.notice(storeText(fault));
		return read;
	}

	/** Keeps something to be said, once. */
	notice(sentence: string): void {
		if (!this.notices.includes(sentence)) this.notices.push(sentence);
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
			return {total: wanted.length, rows: wanted.slice(page.offset, page.offset + page.limit), notices: []};
		}
		try {
			const {total, rows, notices} = this.store.list(page);
			return {total, rows: this.#withRemarks(rows), notices: notices.map(storeText)};
		} catch (error) {
			return {total: 0, rows: [], notices: [hindranceOf(error).sentence]};
		}
	}

	record(id: string): Extract<ReturnType<Archive['record']>, {ok: true}> | NoCheck {
		const record = this.store.record(id);
		if (record instanceof StoreError) return noCheck(record);
		const remark = this.remark(id);
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
	async note(id: string, change: (remark: Remark | undefined) => Marked): Promise<Saved> {
		const done = await attempt(async () => {
			const filed = this.store.record(id);
			if (filed instanceof StoreError) throw filed;
			const noted = this.store.remark(id);
			// One that is damaged is put aside when the new one is saved; any other trouble would lose it.
			if (noted instanceof StoreError && noted.code !== 'damaged') throw noted;
			const marked = change(noted instanceof StoreError ? undefined : noted);
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
	#withRemarks(rows: readonly PastCheck[]): readonly PastCheck[] {
		const remarked = this.store.remarked();
		if (remarked.size === 0) return rows;
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
		const remark = this.store.remark(id);
		return remark instanceof StoreError ? undefined : remark;
	}
}
