import fs from 'node:fs';
import path from 'node:path';
import {beforeEach, describe, expect, it} from 'vitest';
import {probes} from '../../source/store/process-probes.js';
import {deadProcess, entry, held} from './lock-support.js';
import {check, faulty, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let folder: string;
const lockFile = (): string => path.join(folder, 'lock');
const asides = (): string[] => fs.readdirSync(folder).filter((name) => name.includes('.damaged-'));

beforeEach(() => {
	folder = newFolder();
});

describe('the lock against a second copy', () => {
	it('refuses a second copy with one sentence that says who and since when, and lets it read', async () => {
		const store = openTestStore(folder);
		await store.saveDraft(check(1));
		const lock = store.lock();
		const second = openTestStore(folder);
		const refused = second.lock();
		const since = expect.stringMatching(/^\d\d:\d\d$/);
		const told = faulty('locked', {dataDir: folder, file: lockFile(), pid: process.pid, since});
		expect(refused).toMatchObject({held: false, error: told});
		expect(refused).not.toMatchObject({error: faulty('locked', {host: expect.anything()})});
		await expect(second.saveDraft(check(2))).rejects.toMatchObject({code: 'locked', file: lockFile()});
		expect(second.draft().check).toEqual(check(1));
		expect(second.list({offset: 0, limit: 5}).total).toBe(0);
		if (lock.held) lock.release();
		await second.saveDraft(check(2));
		expect(fs.existsSync(lockFile())).toBe(false);
	});

	it('given back in the middle of a save, is held until the save is done', async () => {
		const store = openTestStore(folder);
		const lock = store.lock();
		const saving = store.saveDraft(check(1));
		if (lock.held) lock.release();
		await saving;
		expect(fs.existsSync(lockFile())).toBe(false);
		expect(store.draft().check).toEqual(check(1));
	});

	it('removed by hand is taken again at the next save', async () => {
		const store = openTestStore(folder);
		store.lock();
		fs.rmSync(lockFile());
		await store.saveDraft(check(1));
		expect(held(openTestStore(folder).lock())).toBe(false);
	});

	it('removed by hand and taken by another copy stops the first one from writing', async () => {
		const store = openTestStore(folder);
		store.lock();
		await store.saveDraft(check(1));
		fs.rmSync(lockFile());
		openTestStore(folder).lock();
		await expect(store.saveDraft(check(2))).rejects.toMatchObject({code: 'locked'});
		expect(store.draft().check).toEqual(check(1));
	});

	it('of a dead process clears itself', async () => {
		fs.writeFileSync(lockFile(), entry({pid: await deadProcess(), start: ''}));
		expect(held(openTestStore(folder).lock())).toBe(true);
		expect(fs.readdirSync(folder)).toEqual([]);
	});

	it.runIf(process.platform === 'linux')('of a dead process is seen through when its number is in use again', () => {
		fs.writeFileSync(lockFile(), entry({start: `${probes.startOf(process.pid)}0`}));
		expect(held(openTestStore(folder).lock())).toBe(true);
	});

	it('of another computer is refused, with the way out', () => {
		fs.writeFileSync(lockFile(), entry({host: 'elsewhere', pid: 1}));
		const lock = openTestStore(folder).lock();
		const told = faulty('locked', {host: 'elsewhere', pid: 1, file: lockFile()});
		expect(lock).toMatchObject({held: false, error: told});
	});

	it.each([
		['empty', ''],
		['no JSON', 'nonsense'],
		['of another shape', '{"pid": "x"}'],
		['far too long', 'x'.repeat(100_000)],
		['without a sound process number', entry({pid: -1})],
	])('is set aside, never removed, when it is %s', (_, text) => {
		fs.writeFileSync(lockFile(), text);
		const lock = openTestStore(folder).lock();
		expect(held(lock)).toBe(true);
		const damage = expect.objectContaining({id: 'unreadable'});
		const values = expect.objectContaining({file: lockFile(), damage, aside: asides()[0]});
		if (lock.held) expect(lock.notices).toEqual([{id: 'set-aside', values}]);
		expect(asides().map((name) => fs.readFileSync(path.join(folder, name), 'utf8'))).toEqual([text]);
	});

	it('gives a sentence where a folder stands in its place', () => {
		fs.mkdirSync(lockFile());
		expect(() => openTestStore(folder).lock()).toThrow(faulty('not-plain', {file: lockFile(), found: 'folder'}));
	});

	it('left to be cleared by a process that died over it is cleared all the same', async () => {
		const pid = await deadProcess();
		fs.writeFileSync(lockFile(), entry({pid, start: ''}));
		const second = entry({pid, start: '', nonce: 'fedcba9876543210'});
		fs.writeFileSync(`${lockFile()}.clearing-0123456789abcdef`, second);
		fs.writeFileSync(`${lockFile()}.clearing-fedcba9876543210`, entry({pid, start: '', nonce: 'aaaaaaaaaaaaaaaa'}));
		expect(held(openTestStore(folder).lock())).toBe(true);
		expect(fs.readdirSync(folder)).toEqual([]);
	});
});
