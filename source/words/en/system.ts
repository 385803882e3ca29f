import type {PlaceOption} from '../../store/store-fault.js';

/** System error names with what they mean at the bench and the way out. */
const meanings: Readonly<Record<string, (option: PlaceOption) => string>> = {
	ENOSPC: () => 'the disk is full. Free some space on it, then try again.',
	EDQUOT: () => 'your share of the disk is used up. Free some space, then try again.',
	EFBIG: () => 'the system allows no file of that size. Raise the limit on file sizes, then try again.',
	EROFS: (option) =>
		`the disk can only be read. Make it writable, then try again. Or choose another folder with ${option}.`,
	EACCES: () => 'this user has no permission. Put the permissions of the file and its folder right, then try again.',
	EPERM: () => 'the system does not permit it. Put the permissions of the file and its folder right, then try again.',
	EISDIR: () => 'a folder stands where the file should be. Move that folder away, then try again.',
	ENOTDIR: () => 'a file stands where a folder should be. Move that file away, then try again.',
	EEXIST: () => 'something else stands in its place. Move it away, then try again.',
	ELOOP: () => 'the links on the way lead round in a circle. Put the links right, then try again.',
	ENOENT: (option) =>
		`a folder on the way is missing. Create it, then try again. Or choose another folder with ${option}.`,
	ENAMETOOLONG: (option) => `the path is too long. Choose a folder with a shorter path with ${option}.`,
	EMFILE: () => 'too many files are open. Close other programs, then try again. Or raise the limit (ulimit -n).',
	ENFILE: () => 'too many files are open. Close other programs, then try again.',
	EBUSY: () => 'the file is in use. Close what uses it, then try again.',
	EXDEV: () => 'the folder lies on two disks. Keep it on one disk, then try again.',
	EIO: (option) =>
		`the disk reports a fault. Check the disk, then try again. Or choose a folder on another one with ${option}.`,
};

/** What an error of the system means, by its name, with the way out. */
export const meaningOf = (system: string, option: PlaceOption = '--data'): string =>
	meanings[system]?.(option) ?? `${system}. Look at the file and its folder, then try again.`;
