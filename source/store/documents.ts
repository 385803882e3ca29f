import fs from 'node:fs';
import path from 'node:path';
import type {StoreContext} from './context.js';
import {codeOf, saveFault} from './describe-fault.js';
import {openDocument, sealDocument} from './document.js';
import {readyFolder, syncFolder} from './folder.js';
import type {Json} from './json.js';
import {moveAside} from './move-aside.js';
import {readPlainFile} from './read-plain-file.js';
import {StoreError} from './store-error.js';
import type {Damage, StoreFault, Thing} from './store-fault.js';

/** Where a document lives, and what it is. */
export type FilePlace = {readonly thing: Thing; readonly kind: string; readonly file: string};

export type FileReading =
	| {readonly state: 'missing'}
	| {
			readonly state: 'sound';
			readonly body: Json;
			readonly checksum: string;
			readonly sizeBytes: number;
			readonly changedMs: number;
	  }
	| {readonly state: 'damaged'; readonly damage: Damage}
	/** Newer than this program, or no plain file that may be read: left alone, and an error for whoever needs it. */
	| {readonly state: 'closed'; readonly error: StoreError};

/** Reads a document without changing anything on the disk. */
export const readDocument = (place: FilePlace, {versions}: Pick<StoreContext, 'versions'>): FileReading => {
	const {thing, file} = place;
	const read = readPlainFile(thing, file);
	if (read.state === 'missing' || read.state === 'damaged') return read;
	if (read.state === 'blocked') return {state: 'closed', error: read.error};
	const opened = openDocument(read.bytes, place.kind, versions);
	if (opened.state === 'newer') {
		const values = {thing, file, version: opened.version};
		return {state: 'closed', error: new StoreError('newer', {id: 'newer', values})};
	}
	if (opened.state === 'damaged') return opened;
	return {...opened, sizeBytes: read.bytes.length, changedMs: read.changedMs};
};

/** Moves a damaged file aside where the lock can be had, and says in any case what was found. */
export const reportDamage = (
	{thing, file}: FilePlace,
	damage: Damage,
	{lock, writer, now}: StoreContext,
): StoreFault => {
	const moved = lock.tryWithin(() => {
		writer.forget(file);
		return moveAside(thing, file, damage, now());
	});
	return moved ?? {id: 'left-there', values: {thing, file, damage}};
};

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
	body: Json,
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
