import fs from 'node:fs';
import path from 'node:path';
import {saveFault} from './describe-fault.js';
import {readyFolder} from './folder.js';
import {StoreError} from './store-error.js';

/** Tells people, and this program, that nothing in the folder is real. */
const MARK = 'PRACTICE.txt';
const markText =
	'Checks of invented tonearms, made with "armdrift practice". No reading in this folder is real.\nIt can be removed at any time; nothing else depends on it.\n';

export const isPracticeFolder = (folder: string): boolean => fs.existsSync(path.join(folder, MARK));

/** Full path of the folder of practice data, within the folder of real data but apart from it. */
export const practiceFolderIn = (dataDir: string): string => path.join(dataDir, 'practice');

/**
 * Makes the folder of practice data where it is missing, and marks it.
 * @returns its full path
 * @throws StoreError where it cannot be made, or holds something else
 */
export function readyPracticeFolder(dataDir: string): string {
	const folder = practiceFolderIn(dataDir);
	if (isPracticeFolder(folder)) return folder;
	readyFolder('Practice', folder);
	try {
		if (fs.readdirSync(folder).length > 0)
			throw new StoreError(
				'blocked',
				folder,
				`Practice data would go into "${folder}", but something else is kept there: rename that folder, or name another one with --data.`,
			);
		fs.writeFileSync(path.join(folder, MARK), markText, {mode: 0o600});
	} catch (error) {
		throw error instanceof StoreError ? error : saveFault('Practice', folder, error);
	}
	return folder;
}

/** @throws StoreError for a folder of practice data, where real data was to be read or kept */
export function refusePractice(folder: string): string {
	if (!isPracticeFolder(folder)) return folder;
	throw new StoreError(
		'blocked',
		folder,
		`"${folder}" holds practice checks of invented arms only: name the folder in which it lies, or another one, with --data.`,
	);
}
