import {StoreError, type StoreErrorCode} from './store-error.js';

/** System error names with what they mean at the bench and the way out. */
const MEANINGS: ReadonlyMap<string, readonly [meaning: string, wayOut: string]> = new Map([
	['ENOSPC', ['the disk is full', 'Free some space on it, then try again.']],
	['EDQUOT', ['your share of the disk is used up', 'Free some space, then try again.']],
	['EFBIG', ['the system allows no file of that size', 'Raise the limit on file sizes, then try again.']],
	['EROFS', ['the disk can only be read', 'Make it writable or choose another folder with --data, then try again.']],
	['EACCES', ['this user has no permission', 'Put the permissions of the file and its folder right, then try again.']],
	['EPERM', ['the system does not permit it', 'Put the permissions of the file and its folder right, then try again.']],
	['EISDIR', ['a folder stands where the file should be', 'Move that folder away, then try again.']],
	['ENOTDIR', ['a file stands where a folder should be', 'Move that file away, then try again.']],
	['EEXIST', ['something else stands in its place', 'Move it away, then try again.']],
	['ELOOP', ['the links on the way lead round in a circle', 'Put the links right, then try again.']],
	['ENOENT', ['a folder on the way is missing', 'Put it back or choose another folder with --data, then try again.']],
	['ENAMETOOLONG', ['the path is too long', 'Choose a folder with a shorter path with --data.']],
	['EMFILE', ['too many files are open', 'Close other programs, then try again.']],
	['ENFILE', ['too many files are open', 'Close other programs, then try again.']],
	['EBUSY', ['the file is in use', 'Close what uses it, then try again.']],
	['EXDEV', ['the folder lies on two disks', 'Keep it on one disk, then try again.']],
	['EIO', ['the disk reports a fault', 'Look after the disk, then try again, or choose another one with --data.']],
]);

const ELSE_WAY_OUT = 'Look at the file and its folder, then try again.';

/** The system's short name of an error (`ENOSPC`), where it has one. */
export const codeOf = (error: unknown): string | undefined =>
	error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : undefined;

const describe = (code: StoreErrorCode, doing: string, file: string, error: unknown): StoreError => {
	if (error instanceof StoreError) return error;
	const system = codeOf(error);
	const [meaning, wayOut] = MEANINGS.get(system ?? '') ?? [system ?? String(error), ELSE_WAY_OUT];
	return new StoreError(code, file, `${doing} "${file}": ${meaning}. ${wayOut}`, error);
};

/**
 * The error for a file that could not be written.
 * @param what the thing to be saved, as it begins the sentence: 'The check in progress'
 */
export const saveFault = (what: string, file: string, error: unknown): StoreError =>
	describe('unwritable', `${what} was not saved in`, file, error);

/** The error for a file that could not be read. */
export const readFault = (what: string, file: string, error: unknown): StoreError =>
	describe('unreadable', `${what} could not be read from`, file, error);

/** The error for a file that could not be removed. */
export const removeFault = (what: string, file: string, error: unknown): StoreError =>
	describe('unwritable', `${what} was not removed from`, file, error);

type Target = {readonly what: string; readonly option?: string};

/** The error for a file outside the data folder that could not be written; its place was named with an option. */
export const targetFault = ({what, option = '--out'}: Target, file: string, error: unknown): StoreError => {
	const fault = saveFault(what, file, error);
	return new StoreError(fault.code, file, fault.sentence.replaceAll('--data', option), error);
};
