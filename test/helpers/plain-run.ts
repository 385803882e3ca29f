import {spawnSync} from 'node:child_process';
import {cleanEnvironment} from './program-environment.js';
import {PROGRAM} from './pty.js';
import {anything, words} from './said.js';
import {asLines, type Turn} from './walk.js';

export type Ended = {readonly status: number | null; readonly out: string; readonly faults: string};

/** Runs the program without a terminal, to its end. */
export function run(
	dataDir: string,
	args: readonly string[],
	{input = '', env = {}}: {readonly input?: string; readonly env?: Readonly<Record<string, string | undefined>>} = {},
): Ended {
	const {status, stdout, stderr} = spawnSync(process.execPath, [PROGRAM, ...args], {
		input,
		env: cleanEnvironment(dataDir, env),
		cwd: dataDir,
		encoding: 'utf8',
	});
	return {status, out: stdout, faults: stderr};
}

/** Plays turns through the plain face, from its first question: quick, and leaves the check where the turns end. */
export const playPlain = (
	dataDir: string,
	turns: readonly Turn[],
	env: Readonly<Record<string, string | undefined>> = {},
): Ended => run(dataDir, ['--plain'], {input: asLines(turns), env});

/** How it is said that another copy is writing, up to its folder; the time may be anything. */
export function anotherCopy(pid: number): string {
	const folder = '<folder>';
	const said = words.store.locked({file: '', dataDir: folder, pid, since: anything});
	return said.slice(0, said.indexOf(folder));
}
