import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {planLines} from '../../source/commands/import.js';
import {type Hindrance, hindranceOf} from '../../source/desk/hindrance.js';
import {type CheckStore, storeOf} from '../../source/desk/stored-forms.js';
import {Addition} from '../../source/exchange/addition.js';
import {ImportFile} from '../../source/exchange/import-file.js';
import {checkedIds, type ImportPlan, importPlan} from '../../source/exchange/import-plan.js';
import {jsonExport} from '../../source/exchange/write-export.js';
import type {Profile} from '../../source/procedure/facts.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {profilesWith} from '../../source/results/profiles.js';
import type {FinishedCheck} from '../../source/results/record.js';
import {driftingArm, fullStory, played, playedInTurn} from './invented-checks.js';
import {freshFolder} from './program-environment.js';
import {words} from './said.js';

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

/** A cartridge as an earlier version kept it beside its arm. */
const cartridge: Profile = {
	id: 'cartridge-invented',
	kind: 'cartridge',
	name: 'blue one',
	usedAt: '2026-03-02T10:00:00+01:00',
	answers: {
		'cartridge-name': {typed: 'blue one', value: 'blue one'},
		'playing-force': {typed: '21 mN', value: 21},
	},
};

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
	const profiles = [cartridge, ...made].map((one) => ({
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

/** All of an export by its outermost keys, as it stands in a single document. */
export type ExportDocument = Readonly<Record<string, unknown>> & {readonly checks: readonly unknown[]};

/** What the lines of an export hold. */
export function documentOf(text: string): ExportDocument {
	const {check: _none, end: _end, ...others} = Object.assign({}, ...lineValues(text));
	return {...others, checks: lineValues(text).flatMap(({check}) => (check === undefined ? [] : [check]))};
}

const lineValues = (text: string): Record<string, unknown>[] =>
	text
		.trimEnd()
		.split('\n')
		.map((line) => JSON.parse(line));

/** An export with one check a line. */
export function asLines({kind, version, program, exportedAt, checks, ...others}: ExportDocument): string {
	const values = [
		{kind, version, program, exportedAt},
		...Object.entries(others).map(([key, value]) => ({[key]: value})),
		...checks.map((check) => ({check})),
		{end: true},
	];
	return values.map((value) => `${JSON.stringify(value)}\n`).join('');
}

/** An export as earlier programs wrote it: a single document, laid out with one check a line. */
export function asDocument({checks, ...others}: ExportDocument): string {
	const keys = Object.entries(others).map(([key, value]) => `"${key}":${JSON.stringify(value)}`);
	return `{${keys.join(',\n')},\n"checks":[\n${checks.map((check) => JSON.stringify(check)).join(',\n')}\n]}\n`;
}

/** Both forms in which an export may come, with what a check of the sample is called in it. */
export const exportForms = [
	{
		form: 'one check a line',
		written: asLines,
		where: (index: number) => words.commands.exchange.checkInLine({line: index + 4}),
	},
	{form: 'a single document', written: asDocument, where: (index: number) => `checks[${index}]`},
] as const;

/** Writes a text to a file of its own. */
export const fileWith = (text: string | Buffer): string => {
	const file = path.join(freshFolder(), 'export.jsonl');
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
		const lines = planLines('export.jsonl', opened, plan);
		if (add) await new Addition(opened, store).run(plan);
		return {plan, lines};
	} finally {
		opened.close();
	}
}

/** The sentence with which an import is refused. */
export async function refusedImport(file: string, folder: DataFolder): Promise<Hindrance> {
	try {
		await importing(file, folder);
	} catch (error) {
		return hindranceOf(error);
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
