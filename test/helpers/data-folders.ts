import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {Addition} from '../../source/commands/data/addition.js';
import {jsonExport} from '../../source/commands/data/exports.js';
import {ImportFile} from '../../source/commands/data/import-file.js';
import {checkedIds, type ImportPlan, importPlan} from '../../source/commands/data/import-plan.js';
import {planLines} from '../../source/commands/data/plan-lines.js';
import {type CheckStore, storeOf} from '../../source/commands/shelf.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {profilesWith} from '../../source/results/profiles.js';
import type {FinishedCheck} from '../../source/results/record.js';
import {StoreError} from '../../source/store/store-error.js';
import {driftingArm, fullStory, played, playedInTurn} from './invented-checks.js';
import {freshFolder} from './program-environment.js';

/** A data folder with its store, and what the store had to say. */
export type DataFolder = {readonly dataDir: string; readonly store: CheckStore; readonly notices: string[]};

export const dataFolder = (dataDir = path.join(freshFolder(), 'data')): DataFolder => {
	const notices: string[] = [];
	return {
		dataDir,
		store: storeOf(
			dataDir,
			() => new Date('2026-11-25T14:00:00Z'),
			(one) => notices.push(one),
		),
		notices,
	};
};

/** Invented checks: an arm over the years, one with everything in it, and one that was left in the middle. */
export const inventedRecords: readonly FinishedCheck[] = [
	...playedInTurn(driftingArm).map(({record}) => record),
	played(fullStory),
	played({at: '2026-03-02T09:00:00+01:00', script: fullStory.script, leftAt: 'probe-outer'}),
];

/** Ids of the invented checks: a plain one, one with everything in it, and the one that was left in the middle. */
export const [plainId = '', fullId = '', leftId = ''] = [0, 5, 6].map(
	(index) => inventedRecords[index]?.check.id ?? '',
);

const putBackAt = '2026-03-03T10:00:00+01:00';

/** A data folder with all of it: checks, later notes on two of them, profiles, one of them renamed, and settings. */
export async function fullFolder(): Promise<DataFolder> {
	const folder = dataFolder();
	const {store} = folder;
	for (const record of inventedRecords) await store.finish(record.check.id, record);
	await store.saveRemark(plainId, {void: {reason: 'another arm was meant', at: '2026-06-01T08:00:00+02:00'}});
	await store.saveRemark(leftId, {putBackAt, putBack: {'back-lock': {typed: 'yes', value: true, at: putBackAt}}});
	const made = inventedRecords.reduce<ReturnType<typeof profilesWith>>(
		(list, {check, finishedAt}) => profilesWith(list, check, finishedAt),
		[],
	);
	const profiles = made.map((one) => ({
		...one,
		answers: {...one.answers},
		...(one.kind === 'arm' ? {formerNames: ['an older name'], fromALaterProgram: {x: 1}} : {}),
	}));
	await store.saveProfiles({profiles});
	await store.saveSettings({...usualSettings, settleSeconds: 7});
	return folder;
}

/** The export of a data folder as text. */
export function exported({store}: DataFolder): string {
	const faults: string[] = [];
	const tell = (sentence: string) => faults.push(sentence);
	const text = [...jsonExport({store, program: '0.0.0', at: '2026-11-25T15:00:00+01:00', tell})].join('');
	if (faults.length > 0) throw new Error(faults.join(' '));
	return text;
}

/** Writes a text to a file of its own. */
export const fileWith = (text: string | Buffer): string => {
	const file = path.join(freshFolder(), 'export.json');
	writeFileSync(file, text);
	return file;
};

export type Imported = {readonly plan: ImportPlan; readonly lines: readonly string[]};

/** What an import would come to; and, with `add`, the import itself. @throws StoreError */
export async function importing(
	file: string,
	{store}: DataFolder,
	{add = true}: {readonly add?: boolean} = {},
): Promise<Imported> {
	const opened = new ImportFile(file);
	try {
		const plan = importPlan(opened, checkedIds(opened), store);
		const lines = planLines('export.json', opened, plan);
		if (add) await new Addition(opened, store).run(plan);
		return {plan, lines};
	} finally {
		opened.close();
	}
}

/** The sentence with which an import is refused. */
export async function refusalOf(file: string, folder: DataFolder): Promise<StoreError> {
	try {
		await importing(file, folder);
	} catch (error) {
		if (error instanceof StoreError) return error;
		throw error;
	}
	throw new Error('It was not refused.');
}

/** The profile of an invented arm, by its name. */
export const inventedProfile = (name: string, more: object = {}) => ({
	id: `arm-${name}`,
	kind: 'arm' as const,
	name,
	usedAt: '2026-01-01T00:00:00Z',
	answers: {'arm-name': {typed: name, value: name}},
	...more,
});
