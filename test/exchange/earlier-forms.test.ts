import {cpSync, readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {
	asDocument,
	asLines,
	dataFolder,
	type ExportDocument,
	exported,
	fileWith,
	importing,
} from '../helpers/data-folders.js';
import {freshFolder} from '../helpers/program-environment.js';

const saved = path.resolve(import.meta.dirname, '../../fixtures/saved');

type Stored = Readonly<Record<string, unknown>>;
const stored = (...names: readonly string[]): Stored => JSON.parse(readFileSync(path.join(saved, ...names), 'utf8'));
const idsIn = (folder: string): string[] =>
	readdirSync(path.join(saved, folder)).map((name) => path.basename(name, '.json'));

/** What a program of that version wrote as an export of that folder: the contents of its files as they stand there. */
function exportThen(version: number): ExportDocument {
	const folder = `version-${version}`;
	const newest = (name: string): unknown => {
		const pair = ['a', 'b'].map((letter) => stored(folder, `${name}-${letter}.json`));
		return pair.sort((one, other) => Number(other.number) - Number(one.number))[0]?.content;
	};
	const remarked = idsIn(`${folder}/remarks`);
	const checks = idsIn(`${folder}/checks`).map((id) => ({
		id,
		record: stored(folder, 'checks', `${id}.json`).record,
		...(remarked.includes(id) && {remark: stored(folder, 'remarks', `${id}.json`).remark}),
	}));
	const head = {kind: 'armdrift-export', version, program: '0.1.0', exportedAt: '2026-11-25T15:00:00+01:00'};
	return {...head, settings: newest('settings'), profiles: newest('profiles'), checks};
}

describe.each([1, 2])('An export of stored form %i', (version) => {
	it.each([
		['a single document', asDocument],
		['one check a line', asLines],
	])('brings what opening the folder itself brings: %s', async (_, written) => {
		const dataDir = path.join(freshFolder(), 'data');
		cpSync(path.join(saved, `version-${version}`), dataDir, {recursive: true});
		const to = dataFolder();
		await importing(fileWith(written(exportThen(version))), to);
		expect(exported(to)).toBe(exported(dataFolder(dataDir)));
	});
});
