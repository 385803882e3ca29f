import fs from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {afterAll, expect} from 'vitest';
import * as z from 'zod/mini';
import type {PastCheck as Summary} from '../../source/check/past-check.js';
import type {Codec} from '../../source/store/context.js';
import {openStore} from '../../source/store/open-store.js';
import type {StoreFault} from '../../source/store/store-fault.js';
import type {Versions} from '../../source/store/upgrades.js';

/** Invented content: the store does not mind what it keeps. */
const checkSchema = z.looseObject({id: z.string(), answer: z.number(), note: z.string()});
const listSchema = z.array(z.string());
export type Check = z.infer<typeof checkSchema>;

export const codec = <T>(schema: z.ZodMiniType<T>): Codec<T> => ({
	parse(json) {
		const parsed = schema.safeParse(json);
		return parsed.success ? {ok: true, value: parsed.data} : {ok: false, misfit: {at: 'an entry', why: 'wrong shape'}};
	},
});

export const summaryOf = (record: Check): Summary => ({
	id: record.id,
	date: '2026-11-25',
	startedAt: '2026-11-25T09:00:00.000Z',
	arm: record.note,
	outcome: 'complete',
	verdict: 'good',
	atWorst: null,
	probe: [
		{
			place: 'inner',
			radiusMm: 68,
			pullPct: record.answer,
			pullUncertaintyPct: 0.5,
			bandPct: 2,
			bandUncertaintyPct: null,
			tiltPct: -0.2,
			tiltUncertaintyPct: 0.03,
		},
	],
	measuredWith: {
		playingMn: 21,
		effectiveLengthMm: 233,
		loading: 'gravity',
		guard: 'included',
		tools: 'bench set',
		temperatureC: null,
		withoutSettingUp: true,
	},
	doneSince: ['levelled', 'other'],
	doneNote: 'a new belt',
	tookMinutes: 31,
	nextDate: null,
});

const folders: string[] = [];

export const newFolder = (): string => {
	const folder = fs.mkdtempSync(path.join(tmpdir(), 'armdrift-store-'));
	folders.push(folder);
	return folder;
};

/** To be called once in each file that uses `newFolder`. */
export const removeFoldersAfterwards = (): void => {
	afterAll(() => {
		for (const folder of folders) fs.rmSync(folder, {recursive: true, force: true});
	});
};

export const openTestStore = (dataDir: string, versions?: Versions) => {
	const notices: StoreFault[] = [];
	const store = openStore({
		dataDir,
		check: codec(checkSchema),
		record: codec(checkSchema),
		remark: codec(z.looseObject({void: z.boolean()})),
		profiles: codec(listSchema),
		settings: codec(z.looseObject({bell: z.boolean()})),
		idOf: ({id}) => id,
		isReopened: ({reopened}) => reopened === true,
		summaryOf,
		now: () => new Date(),
		onNotice: (fault) => notices.push(fault),
		...(versions && {versions}),
	});
	return Object.assign(store, {notices});
};

export const ID = '20261125-090000-invented';
export const check = (answer: number, id = ID): Check => ({id, answer, note: 'an arm of our own invention'});

/** An error of the store that tells just this, for `toThrow` and `toMatchObject`. */
export const faulty = <Id extends StoreFault['id']>(id: Id, values: object = {}) =>
	expect.objectContaining({fault: {id, values: expect.objectContaining(values)}});
