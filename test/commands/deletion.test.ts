import fs from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import {Deletion} from '../../source/commands/delete.js';
import {armOnFile} from '../../source/desk/arm-on-file.js';
import {Shelf} from '../../source/desk/shelf.js';
import {backupPlace, writeBackUp} from '../../source/exchange/back-up.js';
import {ImportFile} from '../../source/exchange/import-file.js';
import {StoreError} from '../../source/store/store-error.js';
import {dataFolder, importing} from '../helpers/data-folders.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {freshFolder} from '../helpers/program-environment.js';
import {anything, withAnything, words} from '../helpers/said.js';
import {bundleChild, startNode} from '../store/child-process.js';

const SLOW_MS = 120_000;
const records = [
	filed({at: '2025-05-17T09:00:00Z', arm: 'old deck'}),
	filed({at: '2025-11-22T09:00:00Z'}),
	filed({at: '2026-05-16T09:00:00Z', arm: 'south deck'}),
];
const ids = records.map(({check}) => check.id);
const [first = '', second = '', other = ''] = ids;

let source: string;
beforeAll(async () => {
	source = await folderWith(records, {
		profiles: [armProfile('north deck', {formerNames: ['old deck']}), armProfile('south deck')],
		voids: {[first]: 'only tried out', [other]: 'the deck was disturbed'},
	});
});
const copy = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	fs.cpSync(source, dataDir, {recursive: true});
	return dataDir;
};
const contentOf = (dataDir: string) => {
	const {store} = dataFolder(dataDir);
	const plain = (value: unknown) => (value instanceof StoreError ? value.code : value);
	return {
		checks: ids.map((id) => [plain(store.filed(id)), plain(store.remark(id))]),
		profiles: store.profiles().value?.profiles.toSorted((one, another) => one.id.localeCompare(another.id)),
	};
};
const backupsOf = (dataDir: string): string[] => {
	const folder = path.join(dataDir, 'backups');
	if (!fs.existsSync(folder)) return [];
	return fs.readdirSync(folder).flatMap((name) => (name.endsWith('.jsonl') ? [path.join(folder, name)] : []));
};

/** What of the arm is in the back-ups: ids of checks and of profiles. */
function backedUp(dataDir: string): {readonly checks: ReadonlyMap<string, unknown>; readonly profiles: string[]} {
	const checks = new Map<string, unknown>();
	const profiles: string[] = [];
	for (const file of backupsOf(dataDir)) {
		const opened = new ImportFile(file);
		for (let index = 0; index < opened.count; index++) {
			const {id, remark} = opened.check(index);
			checks.set(id, remark);
		}
		profiles.push(...(opened.profiles?.profiles.map(({name}) => name) ?? []));
		opened.close();
	}
	return {checks, profiles};
}

/** Nothing is lost: each check with its remark, and the profile, is on file or in a back-up, or both. */
function expectNothingLost(dataDir: string): void {
	const {store} = dataFolder(dataDir);
	const kept = backedUp(dataDir);
	const onFile = (id: string) => !(store.record(id) instanceof StoreError);
	for (const id of [first, second]) {
		const remark = onFile(id) ? store.remark(id) : kept.checks.get(id);
		expect(onFile(id) || kept.checks.has(id)).toBe(true);
		expect(remark === undefined).toBe(id === second);
	}
	const names = store.profiles().value?.profiles.map(({name}) => name) ?? [];
	expect([...names, ...kept.profiles]).toContain('north deck');
	expect(names).toContain('south deck');
	expect(store.record(other)).not.toBeInstanceOf(StoreError);
	expect(store.remark(other)).toMatchObject({void: {reason: 'the deck was disturbed'}});
}

async function deleteRest(dataDir: string): Promise<void> {
	const shelf = new Shelf(dataDir, () => new Date());
	const rest = armOnFile(shelf, 'north deck');
	if (rest) await new Deletion(shelf, '0.0.0').run(rest, backupPlace(dataDir, rest.name, new Date()));
}

describe('Deleting an arm that is killed at any file call', () => {
	/** Names and bytes of all files, for a state that differs from the one before. */
	const stateOf = (dataDir: string): string =>
		JSON.stringify(
			fs
				.readdirSync(dataDir, {recursive: true, withFileTypes: true})
				.filter((entry) => entry.isFile() && !entry.name.startsWith('lock'))
				.map(({parentPath, name}) => [
					path.relative(dataDir, parentPath),
					name,
					fs.readFileSync(path.join(parentPath, name), 'latin1'),
				]),
		);

	/** What was on the disk at each file call of deleting: as a process that is killed there leaves it. */
	const stopped = async (): Promise<string[]> => {
		const root = freshFolder();
		const {errors, status} = await startNode(bundleChild('deleter'), [copy(), root]).ended;
		expect(errors).toBe('');
		expect(status).toBe(0);
		const folders = fs.readdirSync(root).sort((one, another) => Number(one) - Number(another));
		const all = folders.map((name) => path.join(root, name));
		const states = all.map(stateOf);
		return all.filter((_, index) => states[index] !== states[index - 1]);
	};

	it(
		'loses nothing: what is no longer on file is in the back-up; done again it deletes the rest, and imports bring all back',
		async () => {
			const whole = contentOf(source);
			const left = await stopped();
			expect(left.length).toBeGreaterThan(20);
			for (const dataDir of left) {
				expectNothingLost(dataDir);
				await deleteRest(dataDir);
				const {store} = dataFolder(dataDir);
				expect(store.ids()).toEqual([other]);
				expect(store.profiles().value?.profiles.map(({name}) => name)).toEqual(['south deck']);
				expectNothingLost(dataDir);
				for (const file of backupsOf(dataDir)) await importing(file, dataFolder(dataDir));
				expect(contentOf(dataDir)).toEqual(whole);
			}
		},
		SLOW_MS,
	);
});

describe('A back-up', () => {
	const writing = (dataDir: string, change: (file: string) => void) => {
		const {store} = dataFolder(dataDir);
		const only = {checkIds: [second, first], profileIds: ['arm-north deck']};
		const spoilt = {...store, filed: (id: string) => store.filed(id)};
		const file = path.join(freshFolder(), 'back-up.jsonl');
		let calls = 0;
		// Spoilt after it was written, when it is held against what is on file for the first time.
		spoilt.filed = (id) => {
			if (++calls === only.checkIds.length + 1) change(file);
			return store.filed(id);
		};
		const written = {file, dataDir, source: {store: spoilt, program: '0.0.0', at: '', only}, onLeave: () => {}};
		return {file, done: writeBackUp(written)};
	};

	it('holds the checks that are to go, what is noted beside them and the profile, and nothing else', async () => {
		const {file, done} = writing(copy(), () => {});
		await done;
		const opened = new ImportFile(file);
		expect([opened.check(0).id, opened.check(1).id, opened.count]).toEqual([first, second, 2]);
		expect(opened.check(0).remark?.void?.reason).toBe('only tried out');
		expect(opened.profiles?.profiles.map(({name}) => name)).toEqual(['north deck']);
		expect(opened.settings).toBeUndefined();
		opened.close();
	});

	it('that is not what is on file when it is read back is no back-up', async () => {
		const dataDir = copy();
		const {done} = writing(dataDir, () => {
			fs.rmSync(path.join(dataDir, 'checks', `${first}.json`));
		});
		await expect(done).rejects.toMatchObject({
			code: 'unwritable',
			sentence: expect.stringMatching(`^${withAnything(words.commands.delete.backUpBroken({file: anything})).source}`),
		});
	});
});

describe('The place of a back-up', () => {
	const now = new Date(2026, 10, 25, 14, 0);
	it.each([
		['north deck', '2026-11-25-north-deck.jsonl'],
		['../../etc/passwd', '2026-11-25-etc-passwd.jsonl'],
		['Überarm № 1', '2026-11-25-berarm-1.jsonl'],
		['腕', '2026-11-25-arm.jsonl'],
		['x'.repeat(80), `2026-11-25-${'x'.repeat(40)}.jsonl`],
	])('is a dated name of harmless letters: %j', (arm, name) => {
		expect(backupPlace('/data', arm, now)).toBe(path.join('/data', 'backups', name));
	});
});
