import fs from 'node:fs';
import path from 'node:path';
import {codeOf, saveFault} from './describe-fault.js';
import {closeQuietly} from './read-plain-file.js';
import type {Thing} from './store-fault.js';

const FOLDER_MODE = 0o700;
const DAY_MS = 86_400_000;
/** What conf leaves behind when it is killed in the middle of a save, for the names that are ours. */
const LEFT_OVER = /^(?:(?:draft|profiles|settings)-[ab]|part)\.json\.tmp-[0-9a-f]{16}$/;
const LOCK_LEFT_OVER = /^lock\.(?:new|clearing)-[0-9a-f]+$/;
/** What goes out has such a name until it is whole (`target-file.ts`). */
const PART_LEFT_OVER = /\.part-\d+-[0-9a-z]+$/;
/** Folders of what goes out, in the data folder. */
const OUTGOING = ['reports', 'backups'];

/** One folder after the other: Node's own way of making all at once turns for ever where the system makes none (/proc). */
const makeFolder = (folder: string): void => {
	if (fs.existsSync(folder)) return;
	makeFolder(path.dirname(folder));
	try {
		fs.mkdirSync(folder, {mode: FOLDER_MODE});
	} catch (error) {
		// Another copy may have made it meanwhile.
		if (codeOf(error) !== 'EEXIST' || !fs.existsSync(folder)) throw error;
	}
};

/**
 * Makes the folder where it is missing, for this user alone, and sees that it can be written. Asked before conf, which
 * would try again in a busy loop for a second where permission is missing.
 */
export const readyFolder = (thing: Thing, folder: string): void => {
	try {
		makeFolder(folder);
		fs.accessSync(folder, fs.constants.W_OK | fs.constants.X_OK);
	} catch (error) {
		throw saveFault(thing, folder, error);
	}
};

/** Makes a rename in the folder outlast a power cut, where the system can do that for folders. */
export const syncFolder = (folder: string): void => {
	let descriptor: number | undefined;
	try {
		descriptor = fs.openSync(folder, fs.constants.O_RDONLY);
		fs.fsyncSync(descriptor);
	} catch (error) {
		if (!['EINVAL', 'EPERM', 'EISDIR', 'EBADF', 'ENOTSUP'].includes(codeOf(error) ?? '')) throw error;
	} finally {
		if (descriptor !== undefined) closeQuietly(descriptor);
	}
};

const removeIfOld = (file: string, now: Date): void => {
	const stats = fs.lstatSync(file);
	if (stats.isFile() && now.getTime() - stats.mtimeMs > DAY_MS) fs.unlinkSync(file);
};

/** Removes our own left-over files that are more than a day old. What can't be removed does no harm, so it is no fault. */
export const sweepLeftOvers = (dataDir: string, now: Date): void => {
	sweep(dataDir, (name) => LEFT_OVER.test(name) || LOCK_LEFT_OVER.test(name), now);
	for (const name of OUTGOING) sweep(path.join(dataDir, name), (file) => PART_LEFT_OVER.test(file), now);
};

const sweep = (folder: string, isOurs: (name: string) => boolean, now: Date): void => {
	try {
		for (const name of fs.readdirSync(folder).filter(isOurs)) removeIfOld(path.join(folder, name), now);
	} catch {}
};
