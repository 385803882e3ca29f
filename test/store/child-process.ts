import {type ChildProcessWithoutNullStreams, spawn} from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import {buildSync} from 'esbuild';
import {expect} from 'vitest';
import {newFolder} from './support.js';

const CHILDREN = path.join(import.meta.dirname, 'children');

/** Bundles a child's program into a file of its own, as the whole program is bundled. */
export const bundleChild = (name: string): string => {
	const outfile = path.join(newFolder(), `${name}.mjs`);
	const banner = {js: "import {createRequire} from 'node:module'; const require = createRequire(import.meta.url);"};
	const entryPoints = [path.join(CHILDREN, `${name}.ts`)];
	buildSync({entryPoints, outfile, banner, bundle: true, platform: 'node', format: 'esm', logLevel: 'error'});
	return outfile;
};

export type Ended = {
	readonly output: string;
	readonly errors: string;
	readonly status: number | null;
	readonly signal: string | null;
};

export type Child = {
	readonly process: ChildProcessWithoutNullStreams;
	/** The next whole line of its output. */
	readonly line: () => Promise<string>;
	readonly ended: Promise<Ended>;
};

export type SpawnOptions = {readonly env?: Readonly<Record<string, string>>; readonly uid?: number};

/** Starts a program; its output is gathered, and can be waited for line by line. */
export const startChild = (
	command: string,
	parameters: readonly string[],
	{env = {}, uid}: SpawnOptions = {},
): Child => {
	const child = spawn(command, parameters, {env: {...process.env, ...env}, ...(uid !== undefined && {uid, gid: uid})});
	let output = '';
	let errors = '';
	let taken = 0;
	const waiting: (() => void)[] = [];
	child.stdout.on('data', (chunk: Buffer) => {
		output += chunk.toString();
		for (const wake of waiting.splice(0)) wake();
	});
	child.stderr.on('data', (chunk: Buffer) => {
		errors += chunk.toString();
	});
	const ended = new Promise<Ended>((resolve) => {
		child.on('close', (status, signal) => {
			for (const wake of waiting.splice(0)) wake();
			resolve({output, errors, status, signal});
		});
	});
	const line = async (): Promise<string> => {
		for (;;) {
			const end = output.indexOf('\n', taken);
			if (end >= 0) {
				const text = output.slice(taken, end);
				taken = end + 1;
				return text;
			}
			if (child.exitCode !== null || child.signalCode !== null) throw new Error(`It ended: ${errors}`);
			await new Promise<void>((resolve) => waiting.push(resolve));
		}
	};
	return {process: child, line, ended};
};

export const startNode = (program: string, parameters: readonly string[], options?: SpawnOptions): Child =>
	startChild(process.execPath, [program, ...parameters], options);

/**
 * All files under a folder with what they hold, but for figures: times, checksums and names by chance; and but for who
 * holds the lock.
 */
const filesIn = (folder: string): string[] =>
	fs
		.readdirSync(folder, {recursive: true, withFileTypes: true})
		.filter((entry) => entry.isFile() && entry.name !== 'lock')
		.map(({parentPath, name}) => path.join(parentPath, name))
		.map((file) => `${path.relative(folder, file)}: ${fs.readFileSync(file, 'utf8')}`.replaceAll(/[\da-f.]+/g, '#'))
		.sort();

/**
 * Folders as a process leaves them that is killed at a file call that writes, one for each call in turn, and as it leaves
 * them in the end. They are kept by one process that is not killed; so that they are what a killed one leaves, one is
 * killed at some of the calls.
 *
 * @param program is told its parameters, then the folder to work in, the folder to keep copies in, and the call to be
 * killed at, if any
 */
export const leftByKills = async (program: string, ...parameters: readonly string[]): Promise<string[]> => {
	const [place, root] = [newFolder(), newFolder()];
	const folder = path.join(place, 'data');
	const {output, errors} = await startNode(program, [...parameters, folder, root]).ended;
	expect([output, errors]).toEqual(['done', '']);
	const kept = Array.from({length: fs.readdirSync(root).length}, (_, index) => path.join(root, String(index + 1)));
	await Promise.all(
		[1, Math.ceil(kept.length / 2), kept.length].map(async (at) => {
			const killed = newFolder();
			const parameter = [path.join(killed, 'data'), root, String(at)];
			const ended = await startNode(program, [...parameters, ...parameter]).ended;
			expect(ended).toMatchObject({output: '', errors: '', signal: 'SIGKILL'});
			expect(filesIn(killed)).toEqual(filesIn(path.join(root, String(at))));
		}),
	);
	return [...kept.map((one) => path.join(one, 'data')), folder];
};
