import {execFileSync} from 'node:child_process';
import {mkdirSync, writeFileSync} from 'node:fs';
import path from 'node:path';

// Each under the name that its reader looks for.
const FILES = [
	['man/armdrift.1', ['--man']],
	['completions/armdrift.bash', ['completion', 'bash']],
	['completions/_armdrift', ['completion', 'zsh']],
	['completions/armdrift.fish', ['completion', 'fish']],
];

/** Has the program print its manual page and its scripts for shells into files beside it. */
export const writeBesideProgram = (program) => {
	for (const [name, args] of FILES) {
		const file = path.join(path.dirname(program), name);
		mkdirSync(path.dirname(file), {recursive: true});
		writeFileSync(file, execFileSync(process.execPath, [program, ...args]));
	}
};
