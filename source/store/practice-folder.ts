import fs from 'node:fs';
import path from 'node:path';
import {saveFault} from './describe-fault.js';
import {readyFolder} from './folder.js';
import {StoreError} from './store-error.js';
import type {Thing} from './store-fault.js';

/** Tells people, and this program, that nothing in the folder is real. */
const MARK = 'PRACTICE.txt';
const thing: Thing = {id: 'practice', values: {}};

export const isPracticeFolder = (folder: string): boolean => fs.existsSync(path.join(folder, MARK));

/** Full path of the folder of practice data, within the folder of real data but apart from it. */
export const practiceFolderIn = (dataDir: string): string => path.join(dataDir, 'practice');

/**
 * Makes the folder of practice data where it is missing, and marks it.
 * @param markText what the mark says to people
 * @returns its full path
 * @throws StoreError where it cannot be made, or holds something else
 */
export function readyPracticeFolder(dataDir: string, markText: string): string {
	const folder = practiceFolderIn(dataDir);
	if (isPracticeFolder(folder)) return folder;
	readyFolder(thing, folder);
	try {
		if (fs.readdirSync(folder).length > 0)
			throw new StoreError('blocked', {id: 'practice-blocked', values: {file: folder}});
		fs.writeFileSync(path.join(folder, MARK), markText, {mode: 0o600});
	} catch (error) {
		throw saveFault(thing, folder, error);
	}
	return folder;
}

/** @throws StoreError for a folder of practice data, where real data was to be read or kept */
export function refusePractice(folder: string): string {
	if (!isPracticeFolder(folder)) return folder;
	throw new StoreError('blocked', {id: 'practice-only', values: {file: folder}});
}
