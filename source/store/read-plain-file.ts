import fs from 'node:fs';
import {codeOf, readFault} from './describe-fault.js';
import {StoreError} from './store-error.js';
import type {Damage, StoreFault, Thing} from './store-fault.js';

type Odd = Extract<StoreFault, {id: 'not-plain'}>['values']['found'];

/** No document of ours comes near this; what is larger is not read into memory. */
export const SIZE_CAP_BYTES = 32 * 1024 * 1024;

export type PlainFile =
	| {readonly state: 'missing'}
	| {readonly state: 'bytes'; readonly bytes: Buffer; readonly mark: string; readonly changedMs: number}
	| {readonly state: 'damaged'; readonly damage: Damage}
	| {readonly state: 'blocked'; readonly error: StoreError};

/** Tells one state of a file from another without reading it. */
export const fileMarkOf = (stats: fs.Stats): string => `${stats.ino}:${stats.size}:${stats.mtimeMs}:${stats.ctimeMs}`;

/** The mark of what stands at `file` now, `''` where nothing can be seen. */
export const fileMark = (file: string): string => {
	try {
		return fileMarkOf(fs.lstatSync(file));
	} catch {
		return '';
	}
};

/** A file that was only read, or already made safe, has nothing to lose when closing it fails. */
export const closeQuietly = (descriptor: number): void => {
	try {
		fs.closeSync(descriptor);
	} catch {}
};

const oddKind = (stats: fs.Stats): Odd | undefined => {
	if (stats.isFile()) return undefined;
	if (stats.isDirectory()) return 'folder';
	return stats.isSymbolicLink() ? 'link' : 'device';
};

const blocked = (thing: Thing, file: string, found: Odd): PlainFile => ({
	state: 'blocked',
	error: new StoreError('blocked', {id: 'not-plain', values: {thing, file, found}}),
});

/**
 * Reads a plain file and nothing else: a pipe would hang, a device would fill the memory, a link would lead elsewhere.
 */
export const readPlainFile = (thing: Thing, file: string): PlainFile => {
	let descriptor: number | undefined;
	try {
		const odd = oddKind(fs.lstatSync(file));
		if (odd !== undefined) return blocked(thing, file, odd);
		const {O_RDONLY, O_NOFOLLOW = 0, O_NONBLOCK = 0} = fs.constants;
		descriptor = fs.openSync(file, O_RDONLY | O_NOFOLLOW | O_NONBLOCK);
		const stats = fs.fstatSync(descriptor);
		if (!stats.isFile()) return blocked(thing, file, 'other');
		if (stats.size > SIZE_CAP_BYTES) return {state: 'damaged', damage: {id: 'too-large', values: {}}};
		return {state: 'bytes', bytes: fs.readFileSync(descriptor), mark: fileMarkOf(stats), changedMs: stats.mtimeMs};
	} catch (error) {
		if (codeOf(error) === 'ENOENT') return {state: 'missing'};
		return {state: 'blocked', error: readFault(thing, file, error)};
	} finally {
		if (descriptor !== undefined) closeQuietly(descriptor);
	}
};

/** Size and time of last change, `undefined` where nothing can be seen. */
export const fileStamp = (file: string): {readonly sizeBytes: number; readonly changedMs: number} | undefined => {
	const stats = fs.lstatSync(file, {throwIfNoEntry: false});
	return stats && {sizeBytes: stats.size, changedMs: stats.mtimeMs};
};
