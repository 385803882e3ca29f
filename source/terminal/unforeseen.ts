import {terminalWords} from '../words/command-line.js';
import {printable} from './printable.js';

/**
 * What is said of an error that nobody foresaw, on one line.
 * @returns `isOurs` where it is a fault of the program; else the system refused something, and the way out is in it
 */
export function unforeseen(error: unknown): {readonly sentence: string; readonly isOurs: boolean} {
	const of = (sentence: string, isOurs = false) => ({sentence: printable(sentence), isOurs});
	if (error instanceof Error && 'syscall' in error && 'code' in error) {
		if (error.syscall === 'uv_cwd') return of(terminalWords.folderGone);
		const file = 'path' in error && typeof error.path === 'string' ? error.path : undefined;
		return of(terminalWords.systemFault({file, code: String(error.code)}));
	}
	if (error instanceof RangeError && /call stack/.test(error.message)) return of(terminalWords.tooDeep);
	const message = error instanceof Error ? error.message : String(error);
	return of(terminalWords.ownFault({message: printable(message, 300)}), true);
}
