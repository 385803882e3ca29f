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
import {check, ID, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

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
