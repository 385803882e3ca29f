import fs from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {StoreError} from '../../source/store/store-error.js';
import {bundleChild, startNode} from './child-process.js';
import {openBareStore} from './children/bare-store.js';
import {newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const KILLS = 36;
const MOST_LINES = 40;
/** Against a run that hangs, not a time to wait: at a load of twenty the kills alone take minutes. */
const SLOW_MS = 600_000;

type Told = {readonly finished: string[]; readonly last: {readonly id: string; readonly answer: number} | undefined};

const read = (output: string): Told => {
	const lines = output
		.split('\n')
		.slice(0, -1)
		.map((line) => line.split(' '));
	const finished = lines.flatMap(([what, id = '']) => (what === 'finished' ? [id] : []));
	const [, id = '', answer] = lines.findLast(([what]) => what === 'saved') ?? [];
	return {finished, last: id === '' || finished.includes(id) ? undefined : {id, answer: Number(answer)}};
};

const killLoop = async (env: Readonly<Record<string, string>>): Promise<string> => {
	const saver = bundleChild('saver');
	const folder = newFolder();
	for (let round = 0; round < KILLS; round++) {
		const child = startNode(saver, [folder, String(round)], {env});
		// Killed after a number of confirmed steps that differs each time; the exact moment in a save is left to chance.
		for (let count = 0; count <= (round * 7) % MOST_LINES; count++) await child.line();
		child.process.kill('SIGKILL');
		const {output, errors} = await child.ended;
		expect(errors).toBe('');
		const {finished, last} = read(output);
		const store = openBareStore(folder);
		const {check, notices} = store.draft();
		expect(notices).toEqual([]);
		for (const id of finished) expect(store.record(id)).not.toBeInstanceOf(StoreError);
		if (last === undefined) continue;
		const later = check !== undefined && (check.id > last.id || (check.id === last.id && check.answer >= last.answer));
		expect(later || !(store.record(last.id) instanceof StoreError)).toBe(true);
	}
	return folder;
};

describe.concurrent('kill -9 in the middle of saving', () => {
	it(
		'tears no file and loses nothing that was confirmed',
		async () => {
			const folder = await killLoop({});
			const store = openBareStore(folder);
			const ids = fs.readdirSync(path.join(folder, 'checks')).map((name) => name.slice(0, -'.json'.length));
			const {total, rows, notices} = store.list({offset: 0, limit: 100_000});
			expect(notices).toEqual([]);
			expect(total).toBe(ids.length);
			expect(rows.map(({id}) => id)).toEqual(ids.sort().reverse());
		},
		SLOW_MS,
	);

	it(
		'does the same with SNAP in the environment, where conf alone would overwrite in place',
		() => killLoop({SNAP: '/snap/x'}),
		SLOW_MS,
	);
});

describe('what a killed save left behind', () => {
	const temporary = 'draft-a.json.tmp-1234567890abcdef';
	const ageBy = (file: string, hours: number) => {
		const time = Date.now() / 1000 - hours * 3600;
		fs.utimesSync(file, time, time);
	};

	it('is swept at a save when it is older than a day, never by reading, and nothing else is', async () => {
		const folder = newFolder();
		const names = [temporary, 'draft-b.json.tmp-1234567890abcdef', 'mine.json.tmp-1234567890abcdef', 'notes.txt'];
		for (const name of names) fs.writeFileSync(path.join(folder, name), 'x');
		for (const name of names) ageBy(path.join(folder, name), name.startsWith('draft-b') ? 1 : 25);
		const store = openBareStore(folder);
		store.draft();
		store.list({offset: 0, limit: 1});
		expect(fs.readdirSync(folder).sort()).toEqual([...names].sort());
		await store.saveSettings({answer: 1});
		const left = fs.readdirSync(folder);
		expect(left).not.toContain(temporary);
		expect(left).toEqual(expect.arrayContaining(names.slice(1)));
	});

	it('is swept as well where reports and back-ups lie, which themselves stay', async () => {
		const folder = newFolder();
		const part = '.part-4711-k3x9f0ab';
		const old = [`reports/a.html`, `reports/a.html${part}`, `backups/b.jsonl`, `backups/b.jsonl${part}`];
		const names = [...old, `reports/fresh.html${part}`];
		for (const name of ['reports', 'backups']) fs.mkdirSync(path.join(folder, name));
		for (const name of names) fs.writeFileSync(path.join(folder, name), 'x');
		for (const name of old) ageBy(path.join(folder, name), 25);
		await openBareStore(folder).saveSettings({answer: 1});
		const left = names.filter((name) => fs.existsSync(path.join(folder, name)));
		expect(left).toEqual(['reports/a.html', 'backups/b.jsonl', `reports/fresh.html${part}`]);
	});
});
