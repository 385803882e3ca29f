import {meaningOf} from './system.js';

/** The terminal: why a face cannot be shown, and how the program stopped. */
export const terminal = {
	noTerminal:
		'This needs a terminal for both input and output. Without one, use --plain: you answer line by line, or from a file.',
	folderGone: 'The folder that you work in is gone. Change to another one, then try again.',
	tooDeep: 'What was read is nested too deeply: this program did not write it. Put a sound copy in its place.',
	/** An error of the system that came unforeseen. */
	systemFault: ({file, code}: {readonly file: string | undefined; readonly code: string}) =>
		`${file === undefined ? 'Something' : `"${file}"`} could not be used: ${meaningOf(code)}`,
	tooOldNode: ({wanted, found}: {readonly wanted: string; readonly found: string}) =>
		`armdrift needs Node ${wanted} or newer; this is Node ${found}.`,
	ownFault: ({message}: {readonly message: string}) => `armdrift stopped by a fault of its own: ${message}`,
};
