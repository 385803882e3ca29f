import fs from 'node:fs';
import path from 'node:path';
import {codeOf, saveFault} from './describe-fault.js';
import {readyFolder} from './folder.js';
import {type Holder, type LockEntry, newHolder, readLockEntry} from './lock-entry.js';
import {moveAside} from './move-aside.js';
import type {StoreFault, Thing} from './store-fault.js';

const thing: Thing = {id: 'lock', values: {}};
const ATTEMPTS = 50;
const FILE_MODE = 0o600;

export type Taken =
	| {readonly state: 'taken'; readonly identity: string; readonly notices: readonly StoreFault[]}
	| {readonly state: 'held'; readonly holder: Holder; readonly isSure: boolean}
	| {readonly state: 'elsewhere'; readonly holder: Holder};

/** Where the lock of a data folder is. */
export const lockFileOf = (dataDir: string): string => path.join(dataDir, 'lock');

/** Gives `file` the content of `ready` in one step, unless it is there already; whole at once, so nobody sees it empty. */
const claim = (ready: string, file: string): boolean => {
	try {
		fs.linkSync(ready, file);
		return true;
	} catch (error) {
		if (codeOf(error) === 'EEXIST') return false;
		if (!['EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK'].includes(codeOf(error) ?? '')) throw error;
	}
	// A disk without hard links.
	try {
		fs.copyFileSync(ready, file, fs.constants.COPYFILE_EXCL);
		return true;
	} catch (error) {
		if (codeOf(error) === 'EEXIST') return false;
		throw error;
	}
};

/** A left-over is swept later, so failing to remove it must not undo what was achieved. */
const removeQuietly = (file: string): boolean => {
	try {
		fs.unlinkSync(file);
		return true;
	} catch (error) {
		return codeOf(error) === 'ENOENT';
	}
};

type Clearing = {readonly lock: string; readonly ready: string; readonly now: Date; readonly notices: StoreFault[]};

/**
 * Clears a lock file whose owner is dead, or which is garbage. Of several processes that see the same one, only the one
 * that could set up the marker named after it may remove it, and only after looking again; a marker whose own owner died
 * is cleared in the same way. Gives the living owner of the marker where another process is at it.
 */
const clear = (file: string, entry: Extract<LockEntry, {identity: string}>, clearing: Clearing): Holder | undefined => {
	const marker = `${clearing.lock}.clearing-${entry.identity}`;
	if (!claim(clearing.ready, marker)) {
		const other = readLockEntry(marker);
		if (other.state === 'held' || other.state === 'elsewhere') return other.holder;
		if (other.state === 'dead' || other.state === 'garbage') return clear(marker, other, clearing);
		return undefined;
	}
	try {
		const again = readLockEntry(file);
		if (!('identity' in again) || again.identity !== entry.identity) return undefined;
		if (again.state === 'garbage')
			clearing.notices.push(moveAside(thing, file, {id: 'unreadable', values: {}}, clearing.now));
		else fs.unlinkSync(file);
		return undefined;
	} finally {
		removeQuietly(marker);
	}
};

const attempt = (clearing: Clearing, own: Holder): Taken => {
	let other: Holder | undefined;
	for (let count = 0; count < ATTEMPTS; count++) {
		if (claim(clearing.ready, clearing.lock)) return {state: 'taken', identity: own.nonce, notices: clearing.notices};
		const entry = readLockEntry(clearing.lock);
		if (entry.state === 'blocked') throw entry.error;
		if (entry.state === 'held' || entry.state === 'elsewhere') return entry;
		if (entry.state !== 'free') other = clear(clearing.lock, entry, clearing) ?? other;
	}
	if (other !== undefined) return {state: 'held', holder: other, isSure: false};
	throw saveFault(thing, clearing.lock, Object.assign(new Error('busy'), {code: 'EBUSY'}));
};

/**
 * Tries to take the lock of a data folder. There is no heartbeat: a process that sleeps or is stopped keeps it, a dead one
 * loses it at the next try.
 * @throws StoreError where the folder can't be written, or no plain file stands in the lock's place
 */
export const takeLock = (dataDir: string, now: Date): Taken => {
	readyFolder(thing, dataDir);
	const own = newHolder(now);
	const lock = lockFileOf(dataDir);
	const ready = `${lock}.new-${own.nonce}`;
	try {
		fs.writeFileSync(ready, JSON.stringify(own), {flag: 'wx', mode: FILE_MODE});
		return attempt({lock, ready, now, notices: []}, own);
	} catch (error) {
		throw saveFault(thing, lock, error);
	} finally {
		removeQuietly(ready);
	}
};

/** Whether the lock file is still the one that was taken. */
export const stillHeld = (dataDir: string, identity: string): boolean => {
	const entry = readLockEntry(lockFileOf(dataDir));
	return 'identity' in entry && entry.identity === identity;
};

/** Gives the lock back; one that is no longer ours is left alone. Says whether it is not ours any more. */
export const releaseLock = (dataDir: string, identity: string): boolean =>
	!stillHeld(dataDir, identity) || removeQuietly(lockFileOf(dataDir));
