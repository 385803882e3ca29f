import fs from 'node:fs';
import {closeQuietly, readPlainFile} from './read-plain-file.js';

const FILE_MODE = 0o600;
const DIGITS = 16;

/**
 * Notes the number of the last confirmed save in a small file of its own, overwritten in place. After a power cut that
 * undid the last rename it tells that a newer save has been there. Only a hint, so a failure is no fault.
 */
export const noteLastNumber = (file: string, number: number): void => {
	let descriptor: number | undefined;
	try {
		const {O_WRONLY, O_CREAT, O_NOFOLLOW = 0, O_NONBLOCK = 0} = fs.constants;
		descriptor = fs.openSync(file, O_WRONLY | O_CREAT | O_NOFOLLOW | O_NONBLOCK, FILE_MODE);
		fs.writeSync(descriptor, `${String(number).padStart(DIGITS, '0')}\n`, 0);
	} catch {
	} finally {
		if (descriptor !== undefined) closeQuietly(descriptor);
	}
};

/** The number noted last, 0 where there is none. */
export const readLastNumber = (file: string): number => {
	const read = readPlainFile({id: 'last-number', values: {}}, file);
	const digits = read.state === 'bytes' ? /^\d{16}\n$/.exec(read.bytes.toString('latin1'))?.[0] : undefined;
	return digits === undefined ? 0 : Number(digits);
};
