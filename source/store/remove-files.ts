import fs from 'node:fs';
import {codeOf, removeFault} from './describe-fault.js';
import {syncFolder} from './folder.js';
import type {FilePlace} from './read-document.js';
import {StoreError} from './store-error.js';
import type {Damage} from './store-fault.js';

type Found =
	| {readonly state: 'sound' | 'missing'}
	| {readonly state: 'damaged'; readonly damage: Damage}
	| {readonly state: 'closed'; readonly error: StoreError};

/** Makes sure that a file is what was kept elsewhere, before anything is removed. @throws StoreError */
export const removable = ({thing, file}: FilePlace, found: Found): void => {
	if (found.state === 'closed') throw found.error;
	if (found.state !== 'damaged') return;
	throw new StoreError('damaged', {id: 'not-removable', values: {thing, file, damage: found.damage}});
};

/**
 * Removes files of one folder for good, and makes that last. One that is gone already is no fault.
 * @throws StoreError; then some of them may be left
 */
export const removeFiles = (places: readonly FilePlace[], folder: string): void => {
	for (const {thing, file} of places) {
		try {
			fs.unlinkSync(file);
		} catch (error) {
			if (codeOf(error) !== 'ENOENT') throw removeFault(thing, file, error);
		}
	}
	try {
		syncFolder(folder);
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw removeFault({id: 'going', values: {}}, folder, error);
	}
};
