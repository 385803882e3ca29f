import fs from 'node:fs';
import path from 'node:path';
import {codeOf} from './describe-fault.js';
import {fileMarkOf, readPlainFile} from './read-plain-file.js';

/** The bundler puts a sum over the whole program in its place: another program may say the same otherwise. */
const PROGRAM = 'SUM-OVER-THE-PROGRAM';
const KIND = 'armdrift-view';
const LINE_END = 0x0a;
const FILE_MODE = 0o600;

/** What is worked out of all past checks and kept for the next time. */
const viewNames = ['list', 'arms'] as const;
export type ViewName = (typeof viewNames)[number];

const fileOf = (dataDir: string, name: ViewName): string => path.join(dataDir, 'index', `view-${name}`);

/** The names in a folder as the system hands them out, none where it is missing. */
const namesIn = (folder: string): readonly string[] => {
	try {
		return fs.readdirSync(folder);
	} catch (error) {
		if (codeOf(error) === 'ENOENT') return [];
		throw error;
	}
};

/**
 * All that the list of past checks is taken from: which checks there are, which of their months have an index (whoever
 * writes one drops what is kept), and how each file noted beside a check stands: also when the system last changed it,
 * which nobody can set back. One text while none of it has changed; undefined where some of it cannot be seen.
 */
export const markOfList = (dataDir: string): string | undefined => {
	try {
		const checks = namesIn(path.join(dataDir, 'checks'));
		const months = namesIn(path.join(dataDir, 'index')).filter((name) => name.endsWith('.json'));
		const remarks = namesIn(path.join(dataDir, 'remarks')).map((name) => {
			return `${name} ${fileMarkOf(fs.lstatSync(path.join(dataDir, 'remarks', name)))}`;
		});
		return [checks, months, remarks].map((names) => names.join('\n')).join('\n\n');
	} catch {
		return undefined;
	}
};

const sumOf = (bytes: Uint8Array): number => process.getBuiltinModule('node:zlib').crc32(bytes);

const headOf = (mark: Buffer, rest: Buffer): string =>
	JSON.stringify({kind: KIND, program: PROGRAM, markBytes: mark.length, checksum: sumOf(rest)});

/**
 * What was kept under the same mark by the same program, byte for byte; undefined where it was kept under another one, or
 * is damaged, or is not there.
 */
export const readView = (dataDir: string, name: ViewName, mark: string): Buffer | undefined => {
	const read = readPlainFile({id: 'checks', values: {}}, fileOf(dataDir, name));
	if (read.state !== 'bytes') return undefined;
	const headEnd = read.bytes.indexOf(LINE_END);
	const rest = read.bytes.subarray(headEnd + 1);
	const wanted = Buffer.from(mark);
	if (!wanted.equals(rest.subarray(0, wanted.length))) return undefined;
	if (read.bytes.toString('utf8', 0, headEnd) !== headOf(wanted, rest)) return undefined;
	return rest.subarray(wanted.length);
};

/** Keeps what was worked out under a mark. To be called under the lock. @throws what the system throws */
export const writeView = (dataDir: string, name: ViewName, {mark, content}: View): void => {
	const file = fileOf(dataDir, name);
	const marked = Buffer.from(mark);
	const rest = Buffer.concat([marked, Buffer.from(content)]);
	const part = `${file}.part`;
	fs.rmSync(part, {force: true});
	fs.writeFileSync(part, `${headOf(marked, rest)}\n`, {mode: FILE_MODE, flag: 'wx'});
	fs.appendFileSync(part, rest);
	fs.renameSync(part, file);
};

export type View = {readonly mark: string; readonly content: string};

/** Takes away what was kept: it holds what may be gone from the disk. */
export const dropViews = (dataDir: string): void => {
	try {
		for (const name of viewNames) fs.rmSync(fileOf(dataDir, name), {force: true});
	} catch {
		// Something else of that name; it is not read either.
	}
};
