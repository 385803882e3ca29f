import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import {describe, expect, it, vi} from 'vitest';
import {isCheckId, monthOf, newCheckId} from '../../source/store/check-id.js';
import {StoreError} from '../../source/store/store-error.js';
import {check, ID, newFolder, openTestStore, removeFoldersAfterwards, summaryOf} from './support.js';

removeFoldersAfterwards();

const modes = (folder: string): string[] =>
	fs.readdirSync(folder, {recursive: true, withFileTypes: true}).map((entry) => {
		const file = path.join(entry.parentPath, entry.name);
		return `${entry.isDirectory() ? 'folder' : 'file'} ${(fs.lstatSync(file).mode & 0o777).toString(8)}`;
	});

describe('the check in progress', () => {
	it('is not there before the first save, and looking for it makes no folder', () => {
		const folder = path.join(newFolder(), 'data');
		expect(openTestStore(folder).draft()).toEqual({notices: []});
		expect(fs.existsSync(folder)).toBe(false);
	});

	it('comes back whole in another store after every save', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		for (let answer = 1; answer <= 5; answer++) {
			await store.saveDraft(check(answer));
			const found = openTestStore(folder).draft();
			expect(found.check).toEqual(check(answer));
			expect(found.notices).toEqual([]);
			expect(Number.isNaN(Date.parse(found.savedAt ?? ''))).toBe(false);
		}
	});

	it('keeps any text and any finite number as it was', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		const content = fc.record({
			answer: fc.double({noNaN: true, noDefaultInfinity: true}),
			note: fc.string({unit: 'binary'}),
		});
		await fc.assert(
			fc.asyncProperty(content, fc.jsonValue(), async (fields, extra) => {
				const saved = {id: ID, ...fields, extra};
				await store.saveDraft(saved);
				// JSON knows no negative zero (RFC 8259 leaves it to the reader; JSON.stringify writes 0).
				expect(openTestStore(folder).draft().check).toEqual(JSON.parse(JSON.stringify(saved)));
			}),
			{numRuns: 60},
		);
	});

	it.each([Number.NaN, Number.POSITIVE_INFINITY])(
		'refuses %s aloud, where JSON would silently write null',
		async (answer) => {
			const store = openTestStore(newFolder());
			await store.saveDraft(check(1));
			await expect(store.saveDraft(check(answer))).rejects.toMatchObject({code: 'refused'});
			await expect(store.saveDraft({...check(2), deep: [{value: answer}]})).rejects.toThrow('content.deep[0].value');
			expect(store.draft().check).toEqual(check(1));
		},
	);

	it('keeps the order of saves that were not waited for', async () => {
		const store = openTestStore(newFolder());
		await Promise.all([1, 2, 3, 4, 5, 6].map((answer) => store.saveDraft(check(answer))));
		expect(store.draft().check?.answer).toBe(6);
	});

	it('is written beside the old file and renamed, even with SNAP set, which makes conf overwrite in place', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		const inode = () => fs.lstatSync(path.join(folder, 'draft-a.json')).ino;
		await store.saveDraft(check(1));
		const before = inode();
		process.env.SNAP = '/snap/invented';
		try {
			await store.saveDraft(check(2));
			await store.saveDraft(check(3));
		} finally {
			delete process.env.SNAP;
		}
		expect(inode()).not.toBe(before);
	});

	it('outlasts a power cut: its folder is made safe too, not the file alone', async () => {
		const store = openTestStore(newFolder());
		const synced: boolean[] = [];
		const fsync = fs.fsyncSync;
		const spy = vi.spyOn(fs, 'fsyncSync').mockImplementation((descriptor) => {
			synced.push(fs.fstatSync(descriptor).isDirectory());
			fsync(descriptor);
		});
		await store.saveDraft(check(1));
		spy.mockRestore();
		expect(synced.at(-1)).toBe(true);
	});

	it('can be put away', async () => {
		const store = openTestStore(newFolder());
		await store.saveDraft(check(1));
		await store.clearDraft();
		expect(store.draft()).toEqual({notices: []});
	});

	it('is kept from other users, whatever the umask is', async () => {
		const folder = path.join(newFolder(), 'data');
		const before = process.umask(0);
		try {
			const store = openTestStore(folder);
			await store.saveDraft(check(1));
			await store.saveDraft(check(2));
			await store.finish(ID, check(2));
			await store.saveRemark(ID, {void: true});
		} finally {
			process.umask(before);
		}
		expect(fs.lstatSync(folder).mode & 0o777).toBe(0o700);
		expect(new Set(modes(folder))).toEqual(new Set(['folder 700', 'file 600']));
	});
});

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

describe('ids', () => {
	it('sort by start and have the form of a file name', () => {
		const early = newCheckId(new Date('2026-11-25T09:51:16.999Z'), () => 0.9999);
		const late = newCheckId(new Date('2026-11-25T09:51:17.000Z'), () => 0);
		expect(early < late).toBe(true);
		expect([early, late].every(isCheckId)).toBe(true);
		expect(monthOf(early)).toBe('2026-11');
	});

	it('differ where two checks start in the same second', () => {
		const start = new Date();
		expect(new Set(Array.from({length: 500}, () => newCheckId(start))).size).toBe(500);
	});
});

describe('profiles and settings', () => {
	it('come back, with fields that this program does not know', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		expect(store.settings()).toEqual({notices: []});
		await store.saveSettings({bell: false, fromALaterProgram: {x: 1}});
		await store.saveProfiles(['first', 'arm "Ω" ../.. [31m', '手', 'constructor', '__proto__', 'a.b[0]']);
		await store.saveSettings({...store.settings().value, bell: true});
		const again = openTestStore(folder);
		expect(again.settings().value).toEqual({bell: true, fromALaterProgram: {x: 1}});
		expect(again.profiles().value?.[1]).toBe('arm "Ω" ../.. [31m');
		expect(again.profiles().value).toHaveLength(6);
	});
});
