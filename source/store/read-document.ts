import type {StoreContext} from './context.js';
import {type Body, openDocument} from './document.js';
import {readPlainFile} from './read-plain-file.js';
import {setAside} from './set-aside.js';
import {StoreError} from './store-error.js';

/** Where a document lives: `what` names it at the beginning of a sentence. */
export type Place = {readonly what: string; readonly kind: string; readonly file: string};

export type Reading =
	| {readonly state: 'missing'}
	| {
			readonly state: 'sound';
			readonly body: Body;
			readonly mark: string;
			readonly sizeBytes: number;
			readonly changedMs: number;
	  }
	| {readonly state: 'damaged'; readonly why: string}
	/** Newer than this program, or no plain file that may be read: left alone, and an error for whoever needs it. */
	| {readonly state: 'closed'; readonly error: StoreError};

const newer = ({what, file}: Place, version: number): StoreError => {
	const sentence = `${what} in "${file}" was written by a newer armdrift: it needs one that reads version ${version} of its files. It was left as it is; use that newer armdrift.`;
	return new StoreError('newer', file, sentence);
};

/** Reads a document without changing anything on the disk. */
export const readDocument = (place: Place, {versions}: Pick<StoreContext, 'versions'>): Reading => {
	const read = readPlainFile(place.what, place.file);
	if (read.state === 'missing' || read.state === 'damaged') return read;
	if (read.state === 'blocked') return {state: 'closed', error: read.error};
	const opened = openDocument(read.bytes, place.kind, versions);
	if (opened.state === 'newer') return {state: 'closed', error: newer(place, opened.version)};
	if (opened.state === 'damaged') return opened;
	return {state: 'sound', body: opened.body, mark: read.mark, sizeBytes: read.bytes.length, changedMs: read.changedMs};
};

/** Moves a damaged file aside where the lock can be had, and says in any case what was found. */
export const reportDamage = ({what, file}: Place, why: string, {lock, writer, now}: StoreContext): string => {
	const sentence = lock.tryWithin(() => {
		writer.forget(file);
		return setAside(what, file, why, now());
	});
	return (
		sentence ?? `${what} could not be used from "${file}": ${why}. It was left there, since nothing can be written now.`
	);
};
