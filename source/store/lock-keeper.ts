import {localTime} from './local-time.js';
import {lockFileOf, releaseLock, stillHeld, type Taken, takeLock} from './lock-file.js';
import {fileMark} from './read-plain-file.js';
import {StoreError} from './store-error.js';
import type {StoreFault} from './store-fault.js';

export type Lock =
	| {readonly held: true; readonly notices: readonly StoreFault[]; readonly release: () => void}
	/** Another copy has it: the error says which, and since when. */
	| {readonly held: false; readonly error: StoreError};

export type LockKeeper = ReturnType<typeof createLockKeeper>;

type Refused = Extract<Taken, {holder: unknown}>;

const refusal = (dataDir: string, refused: Refused, now: Date): Extract<Lock, {held: false}> => {
	const {state, holder} = refused;
	const since = localTime(new Date(holder.since), now);
	const other = state === 'elsewhere' ? {host: holder.host} : {isSure: refused.isSure};
	const values = {file: lockFileOf(dataDir), dataDir, pid: holder.pid, since, ...other};
	return {held: false, error: new StoreError('locked', {id: 'locked', values})};
};

export const createLockKeeper = (dataDir: string, now: () => Date, onNotice: (fault: StoreFault) => void) => {
	let identity: string | undefined;
	let mark = '';
	let kept = false;
	let depth = 0;
	const release = () => {
		if (identity !== undefined && releaseLock(dataDir, identity)) identity = undefined;
	};
	/** Somebody may have removed the lock file under a running copy; then it must be taken anew or nothing is written. */
	const isOurs = (): boolean =>
		identity !== undefined && (fileMark(lockFileOf(dataDir)) === mark || stillHeld(dataDir, identity));
	const take = (): Lock => {
		if (isOurs()) return {held: true, notices: [], release};
		const taken = takeLock(dataDir, now());
		if (taken.state !== 'taken') return refusal(dataDir, taken, now());
		identity = taken.identity;
		mark = fileMark(lockFileOf(dataDir));
		return {held: true, notices: taken.notices, release};
	};
	const enter = (): (() => void) => {
		const lock = take();
		if (!lock.held) throw lock.error;
		for (const notice of lock.notices) onNotice(notice);
		depth++;
		return () => {
			depth--;
			if (!kept && depth === 0) release();
		};
	};
	return {
		/** Takes the lock until it is released. */
		take(): Lock {
			const lock = take();
			if (!lock.held) return lock;
			kept = true;
			const giveBack = () => {
				kept = false;
				// A save under way goes on under the lock and gives it back itself.
				if (depth === 0) release();
			};
			return {...lock, release: giveBack};
		},
		/** Runs `work` under the lock: the one held, or else one taken for it alone. @throws StoreError 'locked' */
		async within<T>(work: () => Promise<T>): Promise<T> {
			const leave = enter();
			try {
				return await work();
			} finally {
				leave();
			}
		},
		/** The same for a small repair in the middle of reading; `undefined` where the lock is not to be had. */
		tryWithin<T>(work: () => T): T | undefined {
			try {
				const leave = enter();
				try {
					return work();
				} finally {
					leave();
				}
			} catch {
				return undefined;
			}
		},
	};
};
