import fs from 'node:fs';
import path from 'node:path';
import {saveFault} from './describe-fault.js';
import type {FilePlace} from './documents.js';
import {readyFolder} from './folder.js';
import {isJson, jsonAt} from './json.js';
import {readPlainFile} from './read-plain-file.js';
import {StoreError} from './store-error.js';
import type {Thing} from './store-fault.js';

/** Tells people, and this program, that nothing in the folder is real. */
const MARK = 'PRACTICE.txt';
const practice: Thing = {id: 'practice', values: {}};

const isMarked = (folder: string): boolean => fs.existsSync(path.join(folder, MARK));

/** Whether a folder is one of practice: by its mark, or, where that is gone, because nothing but practice is in it. */
export const isPracticeFolder = (folder: string): boolean => isMarked(folder) || holdsOnlyPractice(folder);

/** Whether a check in its stored form, or the record of one, is of an invented arm. */
const isOfPractice = (stored: unknown): boolean =>
	isJson(stored) && (stored.practice !== undefined || jsonAt(stored, 'check').practice !== undefined);

/** The error for practice in a folder of real data. @param stored a check in its stored form, or the record of one */
export const practiceFault = (
	{thing, file}: Pick<FilePlace, 'thing' | 'file'>,
	stored: unknown,
	dataDir: string,
): StoreError | undefined => {
	if (!isOfPractice(stored) || isPracticeFolder(dataDir)) return undefined;
	return new StoreError('blocked', {id: 'practice-among-real', values: {thing, file}});
};

/** Goes through the checks of a folder as far as the first real one; what cannot be read tells nothing. */
const holdsOnlyPractice = (folder: string): boolean => {
	let isFound = false;
	for (const file of checksIn(folder)) {
		const stored = storedIn(file);
		if (stored === undefined) continue;
		if (!isOfPractice(stored)) return false;
		isFound = true;
	}
	return isFound;
};

function* checksIn(folder: string): Generator<string> {
	for (const letter of ['a', 'b']) yield path.join(folder, `draft-${letter}.json`);
	const checks = path.join(folder, 'checks');
	let opened: fs.Dir | undefined;
	try {
		opened = fs.opendirSync(checks);
		for (let entry = opened.readSync(); entry; entry = opened.readSync())
			if (entry.name.endsWith('.json')) yield path.join(checks, entry.name);
	} catch {
		// Whoever reads the checks says why they cannot be had.
	} finally {
		opened?.closeSync();
	}
}

/** The check that is open, or the record of a filed one; undefined where it cannot be read, or nothing is open. */
const storedIn = (file: string): unknown => {
	const read = readPlainFile(practice, file);
	if (read.state !== 'bytes') return undefined;
	try {
		const document: unknown = JSON.parse(read.bytes.toString());
		return isJson(document) ? (document.record ?? document.content ?? undefined) : undefined;
	} catch {
		return undefined;
	}
};

/** Full path of the folder of practice data, within the folder of real data but apart from it. */
export const practiceFolderIn = (dataDir: string): string => path.join(dataDir, 'practice');

/**
 * Makes the folder of practice data where it is missing, and marks it where it is not marked.
 * @param markText what the mark says to people
 * @returns its full path
 * @throws StoreError where it cannot be made, or holds something else
 */
export function readyPracticeFolder(dataDir: string, markText: string): string {
	const folder = practiceFolderIn(dataDir);
	if (isMarked(folder)) return folder;
	readyFolder(practice, folder);
	try {
		if (fs.readdirSync(folder).length > 0 && !holdsOnlyPractice(folder))
			throw new StoreError('blocked', {id: 'practice-blocked', values: {file: folder}});
		fs.writeFileSync(path.join(folder, MARK), markText, {mode: 0o600});
	} catch (error) {
		throw saveFault(practice, folder, error);
	}
	return folder;
}

/** @throws StoreError for a folder of practice data, where real data was to be read or kept */
export function refusePractice(folder: string): string {
	if (!isPracticeFolder(folder)) return folder;
	throw new StoreError('blocked', {id: 'practice-only', values: {file: folder}});
}
