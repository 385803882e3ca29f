import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import {describe, expect, it, vi} from 'vitest';
import {forbiddenKeyIn} from '../../source/store/forbidden-key.js';
import {check, ID, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

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

	it('keeps any text and any finite number as it was, and refuses a key that it would not read again', async () => {
		const folder = newFolder();
		const store = openTestStore(folder);
		const content = fc.record({
			answer: fc.double({noNaN: true, noDefaultInfinity: true}),
			note: fc.string({unit: 'binary'}),
		});
		await fc.assert(
			fc.asyncProperty(content, fc.jsonValue(), async (fields, extra) => {
				const saved = {id: ID, ...fields, extra};
				if (forbiddenKeyIn(JSON.stringify(saved), saved) !== undefined) {
					await expect(store.saveDraft(saved)).rejects.toMatchObject({code: 'refused'});
					return;
				}
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
