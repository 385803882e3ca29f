import fs from 'node:fs';
import path from 'node:path';
import type {StoreContext} from './context.js';
import {codeOf, saveFault} from './describe-fault.js';
import {type DocumentBody, sealDocument} from './document.js';
import {readyFolder, syncFolder} from './folder.js';
import type {FilePlace} from './read-document.js';
import type {Thing} from './store-fault.js';

const removeScratch = (thing: Thing, file: string): void => {
	try {
		fs.unlinkSync(file);
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw saveFault(thing, file, error);
	}
};

/**
 * Writes a document through conf under a name of its own, reads it back, and only then gives it its place, so that nothing
 * unverified is ever found there. To be called under the lock, one at a time.
 * @throws StoreError
 */
export const placeDocument = async (
	place: FilePlace,
	body: DocumentBody,
	{dataDir, versions, writer}: StoreContext,
): Promise<void> => {
	const {thing, kind, file} = place;
	const scratch = path.join(dataDir, 'part.json');
	removeScratch(thing, scratch);
	readyFolder(thing, path.dirname(file));
	await writer.write(thing, scratch, sealDocument({kind, version: versions.current, ...body}));
	try {
		fs.renameSync(scratch, file);
		syncFolder(path.dirname(file));
	} catch (error) {
		throw saveFault(thing, file, error);
	}
};
