import {execFileSync} from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import {beforeEach, describe, expect, it} from 'vitest';
import {StoreError} from '../../source/store/store-error.js';
import {check, faulty, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let folder: string;
const at = (name: string): string => path.join(folder, name);
const asides = (): string[] => fs.readdirSync(folder).filter((entry) => entry.includes('.damaged-'));
const start = () => openTestStore(folder);

/** Answer 3 is in file a, answer 2 in file b. */
const NEWEST = 'draft-a.json';
const OLDER = 'draft-b.json';

beforeEach(async () => {
	folder = newFolder();
	const store = start();
	for (const answer of [1, 2, 3]) await store.saveDraft(check(answer));
});

describe('after a power cut', () => {
	it('the older check is offered, and said to be the older, when the last rename was undone', async () => {
		const before = fs.readFileSync(at(OLDER));
		await start().saveDraft(check(4));
		fs.writeFileSync(at(OLDER), before);
		const {check: found, notices} = start().draft();
		expect(found).toEqual(check(3));
		expect(notices).toHaveLength(1);
		const savedAt = expect.stringMatching(/^\d\d:\d\d$/);
		expect(notices[0]).toMatchObject({id: 'older-copy', values: {newest: 'lost', savedAt}});
		const store = start();
		await store.saveDraft(check(5));
		expect(start().draft()).toMatchObject({check: check(5), notices: []});
	});

	it('a missing file of the two is said', () => {
		fs.rmSync(at(NEWEST));
		const {check: found, notices} = start().draft();
		expect(found).toEqual(check(2));
		expect(notices).toMatchObject([{id: 'older-copy', values: {file: at(OLDER)}}]);
	});
});

describe('a file harmed or gone between two saves', () => {
	const harms = {
		harmed: (file: string) => fs.appendFileSync(file, 'x'),
		gone: (file: string) => fs.rmSync(file),
	};

	it.each(['harmed', 'gone'] as const)('%s: the save is whole, so no older copy is said to be used', async (harm) => {
		const store = start();
		expect(store.draft().check).toEqual(check(3));
		harms[harm](at(NEWEST));
		await store.saveDraft(check(4));
		expect(store.notices.map(({id}) => id)).toEqual(harm === 'harmed' ? ['set-aside'] : []);
		expect(start().draft()).toMatchObject({check: check(4), notices: []});
	});
});

describe('something else where the file should be', () => {
	it.each([
		['a folder', (file: string) => fs.mkdirSync(file)],
		['a pipe', (file: string) => execFileSync('mkfifo', [file])],
		['an endless device', (file: string) => fs.symlinkSync('/dev/zero', file)],
		['a link to nowhere', (file: string) => fs.symlinkSync('/nowhere/at/all', file)],
		['a link to itself', (file: string) => fs.symlinkSync(file, file)],
	])('%s gives one sentence, and the save works once it is gone', async (_, put) => {
		const store = start();
		await store.saveDraft(check(4));
		fs.rmSync(at(NEWEST));
		put(at(NEWEST));
		const error = await store.saveDraft(check(5)).catch((caught: unknown) => caught);
		expect(error).toEqual(faulty('not-plain', {file: at(NEWEST)}));
		expect(() => start().draft()).toThrow(StoreError);
		fs.rmSync(at(NEWEST), {recursive: true});
		await store.saveDraft(check(5));
		expect(start().draft()).toMatchObject({check: check(5), notices: []});
	});

	it('a file in the place of the data folder gives one sentence', async () => {
		const file = at('not-a-folder');
		fs.writeFileSync(file, 'mine');
		const store = openTestStore(file);
		const error = await store.saveDraft(check(1)).catch((caught: unknown) => caught);
		expect(error).toBeInstanceOf(StoreError);
		expect(error).toMatchObject({file});
		expect(fs.readFileSync(file, 'utf8')).toBe('mine');
	});

	it('links round in a circle on the way give one sentence', async () => {
		fs.symlinkSync(at('circle'), at('circle'));
		await expect(openTestStore(at('circle/data')).saveDraft(check(1))).rejects.toMatchObject({code: 'unwritable'});
	});

	it('a link to the data folder is followed', async () => {
		const link = path.join(newFolder(), 'link');
		fs.symlinkSync(folder, link);
		await openTestStore(link).saveDraft(check(4));
		expect(start().draft().check).toEqual(check(4));
	});
});

describe('files changed under a running copy', () => {
	it('everything is written again when the whole folder was removed', async () => {
		const store = start();
		await store.saveDraft(check(4));
		fs.rmSync(folder, {recursive: true});
		await store.saveDraft(check(5));
		expect(start().draft().check).toEqual(check(5));
	});

	it('a file changed by hand is set aside, not overwritten', async () => {
		const store = start();
		await store.saveDraft(check(4));
		fs.writeFileSync(at(NEWEST), '{"by":"hand"}');
		await store.saveDraft(check(5));
		expect(store.notices).toContainEqual(expect.objectContaining({id: 'set-aside'}));
		expect(store.notices[0]?.values.file).toBe(at(NEWEST));
		expect(fs.readFileSync(at(asides()[0] ?? ''), 'utf8')).toBe('{"by":"hand"}');
		expect(start().draft().check).toEqual(check(5));
	});
});
