import fs from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {sealDocument} from '../../source/store/document.js';
import {CURRENT_VERSION, UPGRADES, type Upgrade, upgradeDocument} from '../../source/store/upgrades.js';
import {check, faulty, ID, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const SAVED = path.join(import.meta.dirname, '../../fixtures/saved');

/** The fixtures don't end in `.json`, lest a formatter lays them out anew or stumbles over the broken ones. */
const copyOf = (name: string): string => {
	const folder = newFolder();
	for (const letter of ['a', 'b']) {
		fs.copyFileSync(path.join(SAVED, name, `draft-${letter}.saved`), path.join(folder, `draft-${letter}.json`));
	}
	return folder;
};

const contents = (folder: string) =>
	fs.readdirSync(folder).map((name) => [name, fs.readFileSync(path.join(folder, name), 'utf8')]);

describe('files kept from earlier', () => {
	it('of the version that is read and written are read, and fields that this program does not know outlive a save', async () => {
		const folder = copyOf('current');
		const store = openTestStore(folder, {current: 1, upgrades: []});
		const found = store.draft();
		expect(found).toMatchObject({
			check: {answer: 4.5, laterField: 'kept'},
			savedAt: '2026-11-24T18:32:00.000Z',
			notices: [],
		});
		if (found.check !== undefined) await store.saveDraft({...found.check, answer: 5});
		const written = JSON.parse(fs.readFileSync(path.join(folder, 'draft-a.json'), 'utf8'));
		expect(written).toMatchObject({number: 3, laterField: 'kept too', content: {answer: 5, laterField: 'kept'}});
	});

	it.each(['truncated', 'foreign'])('that are %s are set aside whole, and the other copy is used', (name) => {
		const folder = copyOf(name);
		const {check: found, notices} = openTestStore(folder).draft();
		expect(found?.answer).toBe(4);
		const aside = fs.readdirSync(folder).find((entry) => entry.includes('.damaged-')) ?? '';
		expect(notices[0]).toMatchObject({id: 'set-aside', values: {aside}});
		const bytes = fs.readFileSync(path.join(SAVED, name, 'draft-b.saved'));
		expect(fs.readFileSync(path.join(folder, aside)).equals(bytes)).toBe(true);
	});

	it('of a newer version stop every use and every save with one sentence, and stay as they are', async () => {
		const folder = copyOf('newer');
		const before = contents(folder);
		const store = openTestStore(folder);
		expect(() => store.draft()).toThrow(faulty('newer', {version: 99}));
		await expect(store.saveDraft(check(1))).rejects.toMatchObject({
			code: 'newer',
			file: path.join(folder, 'draft-b.json'),
		});
		await expect(store.clearDraft()).rejects.toMatchObject({code: 'newer'});
		expect(contents(folder)).toEqual(before);
	});

	it('of a newer version, edited without a right checksum, are left alone all the same', async () => {
		const folder = copyOf('current');
		const file = path.join(folder, 'draft-b.json');
		fs.writeFileSync(file, fs.readFileSync(file, 'utf8').replace('"version":1', `"version":${CURRENT_VERSION + 1}`));
		const before = contents(folder);
		expect(() => openTestStore(folder).draft()).toThrow(faulty('newer', {version: CURRENT_VERSION + 1}));
		expect(contents(folder)).toEqual(before);
	});

	it('a newer finished check is named in the list, and never written over', async () => {
		const folder = newFolder();
		const file = path.join(folder, 'checks', `${ID}.json`);
		fs.mkdirSync(path.dirname(file));
		const {text} = sealDocument({
			kind: 'armdrift-check',
			version: CURRENT_VERSION + 1,
			id: ID,
			record: 'in a shape to come',
		});
		fs.writeFileSync(file, text);
		const store = openTestStore(folder);
		expect(store.list({offset: 0, limit: 5}).notices[0]).toMatchObject({
			id: 'newer',
			values: {version: CURRENT_VERSION + 1},
		});
		expect(store.record(ID)).toMatchObject({code: 'newer'});
		await expect(store.finish(ID, check(1))).rejects.toMatchObject({code: 'newer'});
		expect(fs.readFileSync(file, 'utf8')).toBe(text);
	});
});

describe('upgrades', () => {
	/** Invented: version 0 is said to have kept the answer as text under another name. */
	const upgrade: Upgrade = {
		from: 0,
		apply(body) {
			const {old, ...rest} = body;
			return {...rest, content: {id: ID, answer: Number(old), note: ''}};
		},
	};
	const old = {kind: 'armdrift-draft', version: 0, number: 4, savedAt: '2026-11-25T08:00:00.000Z', old: '4.5'};
	const versions = {current: 1, upgrades: [upgrade]};

	it('bring an older file up to date in memory, and the file itself is written anew only by the next save', async () => {
		const folder = newFolder();
		const {text} = sealDocument(old);
		fs.writeFileSync(path.join(folder, 'draft-b.json'), text);
		const store = openTestStore(folder, versions);
		expect(store.draft().check).toEqual({id: ID, answer: 4.5, note: ''});
		expect(fs.readFileSync(path.join(folder, 'draft-b.json'), 'utf8')).toBe(text);
		await store.saveDraft(check(5));
		expect(fs.readFileSync(path.join(folder, 'draft-b.json'), 'utf8')).toBe(text);
		expect(JSON.parse(fs.readFileSync(path.join(folder, 'draft-a.json'), 'utf8'))).toMatchObject({
			version: 1,
			number: 5,
		});
		expect(openTestStore(folder, versions).draft().check).toEqual(check(5));
	});

	it('run one after the other, each once, and leave their input as it was', () => {
		const steps: Upgrade[] = [1, 0, 2].map((from) => ({
			from,
			apply: (body) => ({...body, path: `${body.path ?? ''}${from}`}),
		}));
		const input = Object.freeze({version: 0});
		expect(upgradeDocument(input, 0, {current: 3, upgrades: steps})).toEqual({version: 3, path: '012'});
		expect(upgradeDocument(input, 3, {current: 3, upgrades: steps})).toBe(input);
	});

	it('set an older file aside that no upgrade leads on from', () => {
		const folder = newFolder();
		fs.writeFileSync(path.join(folder, 'draft-b.json'), sealDocument(old).text);
		expect(openTestStore(folder).draft().notices[0]).toMatchObject({
			id: 'set-aside',
			values: {damage: {id: 'unknown-version', values: {version: 0}}},
		});
	});

	it('an upgrade that throws leaves the file aside, whole', () => {
		const folder = newFolder();
		fs.writeFileSync(path.join(folder, 'draft-b.json'), sealDocument(old).text);
		const broken = {
			from: 0,
			apply: () => {
				throw new Error('invented');
			},
		};
		expect(openTestStore(folder, {current: 1, upgrades: [broken]}).draft().check).toBeUndefined();
		const aside = fs.readdirSync(folder).find((entry) => entry.includes('.damaged-')) ?? '';
		expect(fs.readFileSync(path.join(folder, aside), 'utf8')).toBe(sealDocument(old).text);
	});

	it('lead up to today’s version without a gap', () => {
		expect(UPGRADES.map(({from}) => from)).toEqual(Array.from({length: CURRENT_VERSION - 1}, (_, index) => index + 1));
	});
});
