import {spawnSync} from 'node:child_process';
import {cpSync} from 'node:fs';
import {cleanEnvironment, freshFolder} from './program-environment.js';
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

/** A check asks again what was answered half an hour ago, so a folder that was played long ago is no longer the same. */
const MOST_AGE_MS = 120_000;
const folders = new Map<string, {readonly dataDir: string; readonly at: number}>();

/** A fresh data folder in which each sitting was played through the plain face; the same ones are played once, then copied. */
export function playedFolder(...sittings: readonly (readonly Turn[])[]): string {
	const key = JSON.stringify(sittings.map(asLines));
	let made = folders.get(key);
	if (!made || Date.now() - made.at > MOST_AGE_MS) {
		const dataDir = sittings.length > 1 ? playedFolder(...sittings.slice(0, -1)) : freshFolder();
		made = {dataDir, at: Date.now()};
		const {status, faults} = playPlain(dataDir, sittings.at(-1) ?? []);
		// Filed, or left open where the turns end.
		if (status !== 0 && status !== 3) throw new Error(`The check ended with ${status}: ${faults}`);
		folders.set(key, made);
	}
	const dataDir = freshFolder();
	cpSync(made.dataDir, dataDir, {recursive: true});
	return dataDir;
}

/** How it is said that another copy is writing, up to its folder; the time may be anything. */
export function anotherCopy(pid: number): string {
	const folder = '<folder>';
	const said = words.store.locked({file: '', dataDir: folder, pid, since: anything});
	return said.slice(0, said.indexOf(folder));
}
