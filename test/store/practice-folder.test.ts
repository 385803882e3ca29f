import fs from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {dataDirectory} from '../../source/store/data-directory.js';
import {
	isPracticeFolder,
	practiceFolderIn,
	readyPracticeFolder,
	refusePractice,
} from '../../source/store/practice-folder.js';
import {StoreError} from '../../source/store/store-error.js';
import {type Check, check, faulty, ID, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

/** Every file under a folder with its content and the time of its last change. */
const contentsOf = (folder: string): Record<string, string> =>
	Object.fromEntries(
		fs
			.readdirSync(folder, {recursive: true, encoding: 'utf8'})
			.filter((name) => fs.statSync(path.join(folder, name)).isFile())
			.map((name) => {
				const file = path.join(folder, name);
				return [name, `${fs.statSync(file).mtimeMs} ${fs.readFileSync(file, 'utf8')}`];
			}),
	);

const refusalOf = (act: () => unknown): StoreError => {
	try {
		act();
	} catch (error) {
		if (error instanceof StoreError) return error;
		throw error;
	}
	throw new Error('It was not refused.');
};

describe('the folder of practice data', () => {
	it('is made within that of real data, and marked for people and for the program', () => {
		const dataDir = path.join(newFolder(), 'not yet there');
		const folder = readyPracticeFolder(dataDir, 'invented');
		expect(folder).toBe(path.join(dataDir, 'practice'));
		expect(folder).toBe(practiceFolderIn(dataDir));
		expect(isPracticeFolder(folder)).toBe(true);
		expect(fs.readdirSync(folder)).toEqual(['PRACTICE.txt']);
		expect(fs.readFileSync(path.join(folder, 'PRACTICE.txt'), 'utf8')).toBe('invented');
	});

	it('is for its owner alone, mark and all', () => {
		const folder = readyPracticeFolder(newFolder(), 'invented');
		expect(fs.statSync(folder).mode & 0o077).toBe(0);
		expect(fs.statSync(path.join(folder, 'PRACTICE.txt')).mode & 0o077).toBe(0);
	});

	it('is used again as it is once it is there', async () => {
		const dataDir = newFolder();
		const folder = readyPracticeFolder(dataDir, 'invented');
		await openTestStore(folder).saveDraft(check(1));
		const before = contentsOf(folder);
		expect(readyPracticeFolder(dataDir, 'invented')).toBe(folder);
		expect(contentsOf(folder)).toEqual(before);
	});

	it('is marked where an empty folder was left by a start that was cut off', () => {
		const dataDir = newFolder();
		fs.mkdirSync(practiceFolderIn(dataDir));
		expect(isPracticeFolder(readyPracticeFolder(dataDir, 'invented'))).toBe(true);
	});

	it('is refused where something else lies there, which stays as it is', () => {
		const dataDir = newFolder();
		const folder = practiceFolderIn(dataDir);
		fs.mkdirSync(folder);
		fs.writeFileSync(path.join(folder, 'notes.txt'), 'mine');
		const before = contentsOf(dataDir);
		const refusal = refusalOf(() => readyPracticeFolder(dataDir, 'invented'));
		expect(refusal.code).toBe('blocked');
		expect(refusal.fault).toEqual({id: 'practice-blocked', values: {file: folder}});
		expect(contentsOf(dataDir)).toEqual(before);
	});

	it('is refused where a file has its name', () => {
		const dataDir = newFolder();
		fs.writeFileSync(practiceFolderIn(dataDir), 'mine');
		expect(refusalOf(() => readyPracticeFolder(dataDir, 'invented')).file).toBe(practiceFolderIn(dataDir));
		expect(fs.readFileSync(practiceFolderIn(dataDir), 'utf8')).toBe('mine');
	});
});

describe('real data', () => {
	it('is never looked for in a marked folder, whichever way that is named', () => {
		const folder = readyPracticeFolder(newFolder(), 'invented');
		const named = [
			{flag: folder, env: {}},
			{env: {ARMDRIFT_DATA: folder}},
			{flag: path.relative(process.cwd(), folder), env: {}},
			{flag: `${folder}${path.sep}`, env: {}},
		];
		for (const options of named) {
			const refusal = refusalOf(() => dataDirectory({...options, platform: 'linux', home: '/home/invented'}));
			expect(refusal.code).toBe('blocked');
			expect(refusal.fault).toEqual({id: 'practice-only', values: {file: folder}});
		}
	});

	it('stays untouched by practice, and practice by it, though their checks had the same id', async () => {
		const dataDir = newFolder();
		const real = openTestStore(dataDir);
		await real.finish('20261124-090000-earlier', check(7, '20261124-090000-earlier'));
		await real.saveDraft(check(1));
		const before = contentsOf(dataDir);
		const practice = openTestStore(readyPracticeFolder(dataDir, 'invented'));
		expect(practice.draft().check).toBeUndefined();
		await practice.saveDraft(check(2));
		expect(real.draft().check).toEqual(check(1));
		await practice.finish(ID, check(3));
		expect(contentsOf(dataDir)).toMatchObject(before);
		expect(real.ids()).toEqual(['20261124-090000-earlier']);
		expect(openTestStore(dataDir).draft()).toMatchObject({check: check(1), notices: []});
		await real.finish(ID, check(4));
		expect(practice.record(ID)).toEqual(check(3));
		expect(real.record(ID)).toEqual(check(4));
	});

	it('is taken from any other folder, also from the one that the practice folder lies in', () => {
		const dataDir = newFolder();
		readyPracticeFolder(dataDir, 'invented');
		expect(refusePractice(dataDir)).toBe(dataDir);
		expect(dataDirectory({flag: dataDir, env: {}})).toBe(dataDir);
	});
});

/** As the store sees a check of an invented arm: practice is noted in it. */
const invented = (answer: number, id = ID): Check => ({...check(answer, id), practice: {arm: 'invented'}});
/** As a record holds it. */
const record = (answer: number, id: string): Check => ({...check(answer, id), check: invented(answer, id)});
const other = '20261126-090000-invented';
const page = {offset: 0, limit: 10};

describe('practice whose mark is gone', () => {
	const unmarked = async (fill: (store: ReturnType<typeof openTestStore>) => Promise<void>) => {
		const dataDir = newFolder();
		const folder = readyPracticeFolder(dataDir, 'invented');
		await fill(openTestStore(folder));
		fs.rmSync(path.join(folder, 'PRACTICE.txt'));
		return {dataDir, folder};
	};

	it.each([
		['a check in progress', (store: ReturnType<typeof openTestStore>) => store.saveDraft(invented(1))],
		['finished checks', (store: ReturnType<typeof openTestStore>) => store.finish(ID, record(1, ID))],
	])('is known by %s, refused as real data, and marked anew by practice', async (_, fill) => {
		const {dataDir, folder} = await unmarked(fill);
		const refusal = refusalOf(() => dataDirectory({flag: folder, env: {}}));
		expect(refusal.fault).toEqual({id: 'practice-only', values: {file: folder}});
		expect(
			refusalOf(() => dataDirectory({env: {XDG_CONFIG_HOME: namedArmdrift(folder)}, platform: 'linux'})).fault.id,
		).toBe('practice-only');
		expect(readyPracticeFolder(dataDir, 'invented')).toBe(folder);
		expect(fs.readFileSync(path.join(folder, 'PRACTICE.txt'), 'utf8')).toBe('invented');
	});

	/** The folder under the name that it has where no other one is named. */
	const namedArmdrift = (folder: string): string => {
		const parent = newFolder();
		fs.cpSync(folder, path.join(parent, 'armdrift'), {recursive: true});
		return parent;
	};

	it('among real checks is left out and said, also where its index came with it, and stays where it is', async () => {
		const {folder} = await unmarked((store) => store.finish(other, record(2, other)));
		const dataDir = newFolder();
		const store = openTestStore(dataDir);
		await store.finish(ID, check(1));
		for (const part of ['checks', 'index'])
			fs.cpSync(path.join(folder, part), path.join(dataDir, part), {recursive: true, preserveTimestamps: true});
		const file = path.join(dataDir, 'checks', `${other}.json`);
		const fault = {id: 'practice-among-real', values: {thing: {id: 'check', values: {id: other}}, file}};
		const {rows, notices} = store.list(page);
		expect(rows.map(({id}) => id)).toEqual([ID]);
		expect(notices).toEqual([fault]);
		await store.tidy();
		expect(openTestStore(dataDir).list(page).notices).toEqual([fault]);
		expect(store.record(other)).toMatchObject({code: 'blocked', fault});
		expect(store.record(ID)).toEqual(check(1));
		expect(fs.existsSync(file)).toBe(true);
	});

	it('is not gone on with among real checks', async () => {
		const dataDir = newFolder();
		const store = openTestStore(dataDir);
		await store.finish(ID, check(1));
		await store.saveDraft(invented(2, other));
		const file = path.join(dataDir, 'draft-a.json');
		expect(() => openTestStore(dataDir).draft()).toThrow(faulty('practice-among-real', {file}));
	});
});
