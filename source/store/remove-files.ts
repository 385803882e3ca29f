import fs from 'node:fs';
import {codeOf, removeFault} from './describe-fault.js';
import {syncFolder} from './folder.js';
import type {Place} from './read-document.js';
import {StoreError} from './store-error.js';

type Found =
	| {readonly state: 'sound' | 'missing'}
	| {readonly state: 'damaged'; readonly why: string}
	| {readonly state: 'closed'; readonly error: StoreError};

/** Makes sure that a file is what was kept elsewhere, before anything is removed. @throws StoreError */
export const removable = ({what, file}: Place, found: Found): void => {
	if (found.state === 'closed') throw found.error;
	if (found.state !== 'damaged') return;
	const sentence = `${what} was not removed from "${file}": ${found.why}. Move that file away, then try again.`;
	throw new StoreError('damaged', file, sentence);
};

/**
 * Removes files of one folder for good, and makes that last. One that is gone already is no fault.
 * @throws StoreError; then some of them may be left
 */
export const removeFiles = (places: readonly Place[], folder: string): void => {
	for (const {what, file} of places) {
		try {
			fs.unlinkSync(file);
		} catch (error) {
			if (codeOf(error) !== 'ENOENT') throw removeFault(what, file, error);
		}
	}
	try {
		syncFolder(folder);
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw removeFault('What was to go', folder, error);
	}
};
