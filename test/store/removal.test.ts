import fs from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {StoreError} from '../../source/store/store-error.js';
import {bundleChild, leftByKills, startNode} from './child-process.js';
import {openBareStore} from './children/bare-store.js';
import {check, ID, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const SLOW_MS = 60_000;
const OTHER = '20261126-090000-another';
const LATER = '20261226-090000-another';
const contents = (folder: string) =>
	fs
		.readdirSync(folder, {recursive: true, encoding: 'utf8'})
		.filter((name) => /^(checks|remarks)./.test(name))
		.sort();

const folderOfThree = async () => {
	const folder = newFolder();
	const store = openTestStore(folder);
	for (const id of [ID, OTHER, LATER]) {
		await store.finish(id, check(3, id));
		await store.saveRemark(id, {void: true});
	}
	return {folder, store};
};

describe('Removing finished checks', () => {
	it('takes their files, their remarks and their rows away, and leaves every other file as it is', async () => {
		const {folder, store} = await folderOfThree();
		const others = path.join(folder, 'checks', `${OTHER}.json`);
		const bytes = fs.readFileSync(others);
		await store.remove([ID, LATER]);
		expect(contents(folder)).toEqual([`checks/${OTHER}.json`, `remarks/${OTHER}.json`]);
		expect(fs.readFileSync(others).equals(bytes)).toBe(true);
		const again = openTestStore(folder);
		expect(again.list({offset: 0, limit: 9})).toMatchObject({total: 1, rows: [{id: OTHER}], notices: []});
		expect(again.remarked()).toEqual(new Set([OTHER]));
		expect(fs.readFileSync(path.join(folder, 'index', '2026-12.json'), 'utf8')).not.toContain(LATER);
	});

	it('of one that is gone already is no fault, and one that was added again is there', async () => {
		const {store} = await folderOfThree();
		await store.remove([ID]);
		await store.remove([ID, OTHER]);
		await store.add(ID, check(3));
		expect(store.record(ID)).toEqual(check(3));
		expect(store.list({offset: 0, limit: 9}).total).toBe(2);
	});

	it.each(['../../etc/passwd', '', ID.toUpperCase()])('removes nothing at all where %j is among them', async (id) => {
		const {folder, store} = await folderOfThree();
		const before = contents(folder);
		await expect(store.remove([ID, id])).rejects.toBeInstanceOf(StoreError);
		expect(contents(folder)).toEqual(before);
	});

	it('leaves alone what is no sound file of ours: damaged, newer, a link, a folder', async () => {
		const {folder, store} = await folderOfThree();
		const file = path.join(folder, 'checks', `${ID}.json`);
		const elsewhere = path.join(newFolder(), 'precious.json');
		fs.copyFileSync(file, elsewhere);
		const newer = fs.readFileSync(file, 'utf8').replace(/"version":\d+/, '"version":99');
		const replace = {
			damaged: () => fs.writeFileSync(file, 'x'),
			newer: () => fs.writeFileSync(file, newer),
			link: () => fs.symlinkSync(elsewhere, file),
			folder: () => fs.mkdirSync(file),
		};
		for (const put of Object.values(replace)) {
			fs.rmSync(file, {recursive: true});
			put();
			await expect(store.remove([OTHER, ID])).rejects.toBeInstanceOf(StoreError);
			expect(fs.lstatSync(file, {throwIfNoEntry: false})).toBeDefined();
			expect(store.record(OTHER)).toEqual(check(3, OTHER));
		}
		expect(fs.existsSync(elsewhere)).toBe(true);
	});

	it('is refused while another copy is writing', async () => {
		const {folder} = await folderOfThree();
		const other = openTestStore(folder);
		const lock = other.lock();
		// This process holds it, so to this process it looks held by a copy that lives.
		await expect(openTestStore(folder).remove([ID])).rejects.toMatchObject({code: 'locked'});
		expect(other.record(ID)).toEqual(check(3));
		if (lock.held) lock.release();
	});
});

describe('Removing that goes wrong at any file call', () => {
	const [kept, ...gone] = ['20261123-090000-invented', '20261124-090000-invented', '20261225-090000-invented'];
	const judge = async (folder: string) => {
		const store = openBareStore(folder);
		expect(store.record(kept ?? '')).toMatchObject({answer: 0});
		const left = gone.filter((id) => !(store.record(id) instanceof StoreError));
		// A check that is left still has what was noted beside it.
		for (const id of left) expect(store.remark(id)).toMatchObject({answer: gone.indexOf(id) + 1});
		expect(store.list({offset: 0, limit: 9})).toMatchObject({total: 1 + left.length, notices: []});
		await store.remove(gone);
		expect(openBareStore(folder).list({offset: 0, limit: 9})).toMatchObject({total: 1, notices: []});
		expect(contents(folder)).toEqual([`checks/${kept}.json`, `remarks/${kept}.json`]);
	};

	it(
		'leaves each check whole with its remark or gone when it is killed there, and can be done again',
		async () => {
			const left = await leftByKills(bundleChild('remover'));
			expect(left.length).toBeGreaterThan(6);
			for (const folder of left) await judge(folder);
		},
		SLOW_MS,
	);

	it(
		'does the same with a fault of the disk, and says it in a sentence',
		async () => {
			const root = newFolder();
			const {output, errors} = await startNode(bundleChild('remover'), [root]).ended;
			expect(errors).toBe('');
			const told: readonly string[] = JSON.parse(output);
			expect(told.length).toBeGreaterThan(20);
			expect(new Set(told)).toEqual(new Set(['sentence', '']));
			for (const at of told.keys()) await judge(path.join(root, String(at + 1)));
		},
		SLOW_MS,
	);
});
