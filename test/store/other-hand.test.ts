import fs from 'node:fs';
import path from 'node:path';
import {beforeEach, describe, expect, it} from 'vitest';
import {check, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let folder: string;
beforeEach(() => {
	folder = newFolder();
});

/** As a hand does that takes another copy for gone. */
const removeLock = () => fs.rmSync(path.join(folder, 'lock'), {force: true});

const asides = () =>
	fs
		.readdirSync(folder)
		.filter((name) => name.includes('.other-'))
		.map((name) => ({name, answer: JSON.parse(fs.readFileSync(path.join(folder, name), 'utf8')).content.answer}));

const told = (store: ReturnType<typeof openTestStore>) =>
	store.notices.map(({id, values}) => [id, 'damage' in values && values.damage.id, 'aside' in values && values.aside]);

describe('A check that somebody else saved meanwhile, past the lock', () => {
	it.each([1, 2, 3])('%i times is kept and named before the next save, which writes over none of it', async (times) => {
		const store = openTestStore(folder);
		await store.saveDraft(check(1));
		store.lock();
		store.draft();
		removeLock();
		const other = openTestStore(folder);
		for (let count = 1; count <= times; count++) await other.saveDraft(check(100 + count));
		await store.saveDraft(check(2));
		const wanted = times === 1 ? [101] : [100 + times - 1, 100 + times];
		expect(asides().map(({answer}) => answer)).toEqual(expect.arrayContaining(wanted));
		expect(asides()).toHaveLength(wanted.length);
		expect(told(store)).toHaveLength(wanted.length);
		expect(told(store)).toEqual(expect.arrayContaining(asides().map(({name}) => ['set-aside', 'other-hand', name])));
		expect(openTestStore(folder).draft().check).toEqual(check(2));
		await store.saveDraft(check(3));
		expect(asides()).toHaveLength(wanted.length);
		expect(openTestStore(folder).draft().check).toEqual(check(3));
	});

	it('is kept too where files were put back from an older copy', async () => {
		const store = openTestStore(folder);
		await store.saveDraft(check(1));
		const older = fs.readFileSync(path.join(folder, 'draft-a.json'));
		for (const answer of [2, 3, 4]) await store.saveDraft(check(answer));
		for (const letter of ['a', 'b']) fs.writeFileSync(path.join(folder, `draft-${letter}.json`), older);
		await store.saveDraft(check(5));
		expect(asides().map(({answer}) => answer)).toEqual([1, 1]);
		expect(openTestStore(folder).draft().check).toEqual(check(5));
	});

	it('is no matter where it was read before the save', async () => {
		const store = openTestStore(folder);
		await store.saveSettings({bell: true});
		await openTestStore(folder).saveSettings({bell: false});
		expect(store.settings().value).toEqual({bell: false});
		await store.saveSettings({bell: true});
		expect(told(store)).toEqual([]);
	});

	it('is kept where the check of this copy is put away', async () => {
		const store = openTestStore(folder);
		await store.saveDraft(check(1));
		await openTestStore(folder).saveDraft(check(7));
		await store.finish(check(1).id, check(1));
		expect(asides().map(({answer}) => answer)).toEqual([7]);
		expect(store.draft().check).toBeUndefined();
	});
});
