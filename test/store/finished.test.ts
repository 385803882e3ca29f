import fs from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {StoreError} from '../../source/store/store-error.js';
import {check, ID, newFolder, openTestStore, removeFoldersAfterwards, summaryOf} from './support.js';

removeFoldersAfterwards();

describe('a finished check', () => {
	it('is kept under its id, listed, and takes the place of the check in progress', async () => {
		const store = openTestStore(newFolder());
		await store.saveDraft(check(3));
		await store.finish(ID, check(3));
		expect(store.draft()).toEqual({notices: []});
		expect(store.record(ID)).toEqual(check(3));
		expect(store.list({offset: 0, limit: 10})).toEqual({total: 1, rows: [summaryOf(check(3))], notices: []});
	});

	it('never changes when it is finished a second time', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		await store.finish(ID, check(3));
		const file = path.join(folder, 'checks', `${ID}.json`);
		const bytes = fs.readFileSync(file);
		await store.finish(ID, check(4));
		expect(fs.readFileSync(file).equals(bytes)).toBe(true);
		expect(store.list({offset: 0, limit: 10}).total).toBe(1);
	});

	it('is filed where what was open of it cannot be cleared, and that is said', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		await store.saveDraft(check(3));
		const file = path.join(folder, 'draft-b.json');
		fs.mkdirSync(file);
		await store.finish(ID, check(3));
		expect(store.notices).toEqual([{id: 'not-cleared', values: {file, id: ID, system: undefined}}]);
		expect(store.record(ID)).toEqual(check(3));
		fs.rmdirSync(file);
		const again = openTestStore(folder);
		expect(again.draft()).toEqual({notices: []});
		await again.tidy();
		expect(JSON.parse(fs.readFileSync(file, 'utf8'))).toMatchObject({content: null});
	});

	it('leaves another check in progress alone', async () => {
		const store = openTestStore(newFolder());
		const other = '20261126-090000-another';
		await store.saveDraft(check(1, other));
		await store.finish(ID, check(3));
		expect(store.draft().check?.id).toBe(other);
	});

	it('hides a check in progress of the same id, as after a crash between the two steps of finishing', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		await store.saveDraft(check(3));
		const left = ['draft-a.json', 'draft.count'].map(
			(name) => [name, fs.readFileSync(path.join(folder, name))] as const,
		);
		await store.finish(ID, check(3));
		fs.rmSync(path.join(folder, 'draft-b.json'));
		for (const [name, bytes] of left) fs.writeFileSync(path.join(folder, name), bytes);
		const again = openTestStore(folder);
		expect(again.draft()).toEqual({notices: []});
		await again.tidy();
		expect(openTestStore(folder).draft()).toEqual({notices: []});
		expect(again.list({offset: 0, limit: 10}).total).toBe(1);
	});

	it('can be opened again for what is left to do, and that survives a restart', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		await store.saveDraft(check(3));
		await store.finish(ID, check(3));
		await store.saveDraft({...check(3), reopened: true});
		const again = openTestStore(folder);
		await again.tidy();
		expect(openTestStore(folder).draft().check).toEqual({...check(3), reopened: true});
		expect(again.record(ID)).toEqual(check(3));
		await again.clearDraft();
		expect(openTestStore(folder).draft()).toEqual({notices: []});
	});

	it('takes remarks beside it without being touched, and its remarks can be replaced', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		await store.finish(ID, check(3));
		const bytes = fs.readFileSync(path.join(folder, 'checks', `${ID}.json`));
		expect(store.remark(ID)).toBeUndefined();
		await store.saveRemark(ID, {void: true});
		await store.saveRemark(ID, {void: false, later: 'put back'});
		expect(openTestStore(folder).remark(ID)).toEqual({void: false, later: 'put back'});
		expect(fs.readFileSync(path.join(folder, 'checks', `${ID}.json`)).equals(bytes)).toBe(true);
	});

	it.each(['../../etc/passwd', '/tmp/x', 'CON', '', '.', `${ID}\0`, '__proto__', `${ID}/x`, ID.toUpperCase()])(
		'is never looked for, nor written, under the name %j',
		async (id) => {
			const folder = newFolder();
			const store = openTestStore(folder);
			expect(store.record(id)).toBeInstanceOf(StoreError);
			expect(store.remark(id)).toBeInstanceOf(StoreError);
			await expect(store.finish(id, check(1, id))).rejects.toBeInstanceOf(StoreError);
			await expect(store.saveDraft(check(1, id))).rejects.toBeInstanceOf(StoreError);
			await expect(store.saveRemark(id, {void: true})).rejects.toBeInstanceOf(StoreError);
			expect(fs.readdirSync(folder)).toEqual([]);
		},
	);
});
