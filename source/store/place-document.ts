import fs from 'node:fs';
import path from 'node:path';
import type {StoreContext} from './context.js';
import {codeOf, saveFault} from './describe-fault.js';
import {type Body, sealDocument} from './document.js';
import {readyFolder, syncFolder} from './folder.js';
import type {Place} from './read-document.js';

const removeScratch = (what: string, file: string): void => {
	try {
		fs.unlinkSync(file);
	} catch (error) {
		if (codeOf(error) !== 'ENOENT') throw saveFault(what, file, error);
	}
};

/**
 * Writes a document through conf under a name of its own, reads it back, and only then gives it its place, so that nothing
 * unverified is ever found there. To be called under the lock, one at a time.
 * @throws StoreError
 */
export const placeDocument = async (
	place: Place,
	body: Body,
	{dataDir, versions, writer}: StoreContext,
): Promise<void> => {
	const {what, kind, file} = place;
	const scratch = path.join(dataDir, 'part.json');
	removeScratch(what, scratch);
	readyFolder(what, path.dirname(file));
	await writer.write(what, scratch, sealDocument({kind, version: versions.current, ...body}));
	try {
		fs.renameSync(scratch, file);
		syncFolder(path.dirname(file));
	} catch (error) {
		throw saveFault(what, file, error);
	}
};
