import {formatDistanceStrict} from 'date-fns/formatDistanceStrict';
import {formatISO} from 'date-fns/formatISO';
import * as z from 'zod/mini';
import {type Check, checkSchema} from '../check/check.js';
import {type Dialogue, startDialogue} from '../check/dialogue.js';
import {progressOf} from '../check/progress.js';
import {newCheck, reduce} from '../check/reduce.js';
import {profilesSchema, profilesWith} from '../findings/profiles.js';
import {type FinishedCheck, finishedCheck, recordSchema, summaryOf} from '../findings/record.js';
import type {Profile} from '../procedure/facts.js';
import {type Settings, usualSettings} from '../procedure/settings.js';
import {newCheckId} from '../store/check-id.js';
import type {Codec} from '../store/context.js';
import type {Lock} from '../store/lock-keeper.js';
import {openStore} from '../store/open-store.js';
import {StoreError} from '../store/store-error.js';
import type {Opened, Saved, Workbench} from '../workbench.js';

/** Turns a schema into what the store asks of its contents. */
const codec = <S extends z.core.$ZodType>(schema: S): Codec<z.output<S>> => ({
	parse: (json) => {
		const parsed = z.safeParse(schema, json);
		if (parsed.success) return {ok: true, value: parsed.data};
		const [issue] = parsed.error.issues;
		return {
			ok: false,
			sentence: `${issue?.path.map(String).join('.') || 'its content'} is not what is wanted here (${issue?.message ?? 'unreadable'}).`,
		};
	},
});

const settingsSchema = z.looseObject({
	pullGoodPct: z.number().check(z.positive()),
	pullUsablePct: z.number().check(z.positive()),
	bandGoodPct: z.number().check(z.positive()),
	bandUsablePct: z.number().check(z.positive()),
	settleSeconds: z.number().check(z.positive()),
	bell: z.boolean(),
});

/** A list has to be wrapped: the store keeps objects. */
const profilesFile = z.looseObject({profiles: profilesSchema});
const remarkSchema = z.looseObject({putBackAt: z.optional(z.string())});

export type OpenWorkbench = Workbench & {
	/** Reads what the first screen needs. @throws StoreError for a data folder that must be left alone */
	readonly look: () => void;
	/** Gives the lock back; for every way out. */
	readonly release: () => void;
	/** Loads what the first save needs and puts left-overs away, while nobody waits. */
	readonly settleIn: () => Promise<void>;
	/** A check is open that this copy has worked on. */
	readonly isOpen: () => boolean;
	/** The latest state of the check that this copy works on. */
	readonly openCheck: () => Check | undefined;
	/** A filed check, or the one in progress, by its id. */
	readonly checkNamed: (
		id: string,
	) => {readonly ok: true; readonly check: Check} | {readonly ok: false; readonly sentence: string};
	/** What this copy came to, in one line, when no check is open. */
	readonly farewell: () => string;
};

type Options = {readonly dataDir: string; readonly version: string; readonly clock?: () => Date};

/** The workbench on the real disk and clock. */
export function openWorkbench({dataDir, version, clock = () => new Date()}: Options): OpenWorkbench {
	const notices: string[] = [];
	const store = openStore({
		dataDir,
		check: codec(checkSchema),
		record: codec(recordSchema),
		remark: codec(remarkSchema),
		profiles: codec(profilesFile),
		settings: codec(settingsSchema),
		idOf: (check) => check.id,
		isReopened: (check) => check.reopened === true,
		summaryOf,
		now: clock,
		onNotice: (sentence) => notices.push(sentence),
	});
	const noted = <T extends {readonly notices: readonly string[]}>(read: T): T => {
		for (const sentence of read.notices) if (!notices.includes(sentence)) notices.push(sentence);
		return read;
	};
	const now = (): string => formatISO(clock());
	let lock: Lock | undefined;
	let open: Check | undefined;
	let filed: FinishedCheck | undefined;
	let profiles: readonly Profile[] | undefined;
	let settings: Settings | undefined;

	const profilesNow = (): readonly Profile[] => {
		profiles ??= noted(store.profiles()).value?.profiles ?? [];
		return profiles;
	};
	const settingsNow = (): Settings => {
		settings ??= {...usualSettings, ...noted(store.settings()).value};
		return settings;
	};
	const takeLock = (): string | undefined => {
		if (lock?.held) return;
		lock = store.lock();
		return lock.held ? undefined : lock.sentence;
	};
	const attempt = async <T>(
		work: () => Promise<T>,
	): Promise<{readonly ok: true; readonly value: T} | {readonly ok: false; readonly sentence: string}> => {
		try {
			return {ok: true, value: await work()};
		} catch (error) {
			if (error instanceof StoreError) return {ok: false, sentence: error.sentence};
			throw error;
		}
	};
	/** Opens a check under the lock, or says why not. */
	const opening = async (work: () => Promise<Dialogue>): Promise<Opened> => {
		const refusal = takeLock();
		if (refusal !== undefined) return {ok: false, sentence: refusal, locked: true};
		const done = await attempt(work);
		if (!done.ok) return {ok: false, sentence: done.sentence, locked: false};
		open = done.value.check;
		return {ok: true, dialogue: done.value};
	};
	/** One check is open at a time: the one that is open is filed as interrupted. */
	const fileOpenOne = async (): Promise<void> => {
		const {check} = noted(store.draft());
		if (!check) return;
		if (check.reopened || Object.keys(check.answers).length === 0) await store.clearDraft();
		else await store.finish(check.id, finishedCheck(check, now()));
	};
	const fileFinished = async (check: Check): Promise<FinishedCheck> => {
		const record = finishedCheck(check, now());
		if (check.reopened) {
			if (record.outcome !== 'interrupted') await store.saveRemark(check.id, {putBackAt: now()});
			await store.clearDraft();
		} else await store.finish(check.id, record);
		open = undefined;
		filed = record;
		return record;
	};
	const saveProfilesOf = async (check: Check): Promise<void> => {
		const next = profilesWith(profilesNow(), check, now());
		if (next === profilesNow()) return;
		await store.saveProfiles({profiles: next.map((one) => ({...one, answers: {...one.answers}}))});
		profiles = next;
	};

	return {
		version,
		now,
		notices: () => notices,
		unfinished: () => {
			const {check, savedAt} = noted(store.draft());
			if (!check) return;
			const {facts, current} = progressOf(check, profilesNow());
			return {
				arm: facts.text('arm-name') ?? 'a new arm',
				step: current?.title ?? 'the end',
				ago: formatDistanceStrict(savedAt ?? check.startedAt, clock(), {addSuffix: true}),
			};
		},
		start: (armName) =>
			opening(async () => {
				await fileOpenOne();
				const {bell: _bell, settleSeconds: _settle, ...limits} = settingsNow();
				const at = now();
				const check = newCheck({id: newCheckId(clock()), at, program: version, limits});
				const known = profilesNow().find((one) => one.kind === 'arm' && one.name === armName);
				const arm = known
					? {'arm-profile': {value: known.id, typed: known.name}, ...known.answers}
					: armName
						? {'arm-name': {value: armName, typed: armName}}
						: {};
				return startDialogue(reduce(check, {type: 'fill', answers: arm, at}), profilesNow());
			}),
		resume: () =>
			opening(async () => {
				const {check} = noted(store.draft());
				if (!check)
					throw new StoreError('unreadable', dataDir, `There is no unfinished check in "${dataDir}"; start a new one.`);
				const resumed = reduce(check, {type: 'resume', at: now()});
				await store.saveDraft(resumed);
				return startDialogue(resumed, profilesNow());
			}),
		reopen: (id) =>
			opening(async () => {
				const record = store.record(id);
				if (record instanceof StoreError) throw record;
				await fileOpenOne();
				const left = Object.entries(record.check.answers).flatMap(([id, answer]) =>
					id.startsWith('back-') && answer.override ? [id] : [],
				);
				const open: Check = {...record.check, reopened: true, stopped: {at: now()}, doubts: []};
				const check = reduce(open, {type: 'ask-again', steps: left, at: now()});
				await store.saveDraft(check);
				return startDialogue(check, profilesNow());
			}),
		save: async ({check}): Promise<Saved> => {
			const done = await attempt(async () => {
				await store.saveDraft(check);
				await saveProfilesOf(check);
				open = check;
				return progressOf(check, profilesNow()).current ? undefined : await fileFinished(check);
			});
			if (!done.ok) return done;
			return done.value ? {ok: true, finished: done.value} : {ok: true};
		},
		past: (page) => store.list(page),
		record: (id) => {
			const found = store.record(id);
			if (found instanceof StoreError) return {ok: false, sentence: found.sentence};
			const remark = store.remark(id);
			const putBackAt = remark instanceof StoreError ? undefined : remark?.putBackAt;
			return putBackAt === undefined ? {ok: true, record: found} : {ok: true, record: found, putBackAt};
		},
		profiles: profilesNow,
		settings: settingsNow,
		saveSettings: async (next) => {
			const done = await attempt(() => store.saveSettings({...next}));
			if (!done.ok) return done;
			settings = next;
			return {ok: true};
		},
		look: () => {
			profilesNow();
			settingsNow();
			noted(store.draft());
		},
		release: () => {
			if (lock?.held) lock.release();
			lock = undefined;
		},
		settleIn: async () => {
			await attempt(() => store.prepare());
			await attempt(() => store.tidy());
		},
		isOpen: () => open !== undefined,
		openCheck: () => open,
		checkNamed: (id) => {
			const draft = store.draft().check;
			if (draft?.id === id) return {ok: true, check: draft};
			const found = store.record(id);
			return found instanceof StoreError ? {ok: false, sentence: found.sentence} : {ok: true, check: found.check};
		},
		farewell: () => {
			if (!filed) return 'Left; nothing is open.';
			const deck =
				filed.outcome === 'interrupted'
					? 'Deck NOT ready to play: see its put-back list under past checks.'
					: 'Deck ready to play; volume down for the first record.';
			return `Filed as ${filed.check.id}: ${summaryOf(filed).verdict ?? 'no verdict'}. ${deck}`;
		},
	};
}
