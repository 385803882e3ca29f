import {spawnSync} from 'node:child_process';
import {cpSync, mkdirSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {describe, expect, test} from 'vitest';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';

const REJECTIONS = fileURLToPath(new URL('rejections.cjs', import.meta.url));

type LoadedFile = {readonly isKept: boolean; readonly isRejected: boolean};

/** Lists the checks of an empty folder with the program in `folder`. */
const listed = (folder: string, ...flags: readonly string[]) => {
	const args = [...flags, '-r', REJECTIONS, path.join(folder, 'armdrift.cjs'), 'list'];
	const {status, stdout, stderr, output} = spawnSync(process.execPath, args, {
		env: cleanEnvironment(freshFolder()),
		stdio: ['ignore', 'pipe', 'pipe', 'pipe'],
		encoding: 'utf8',
	});
	const files: readonly LoadedFile[] = JSON.parse(output[3] ?? '');
	return {said: {status, stdout, stderr: stderr.replaceAll(/\/[^ ]*/g, '')}, files};
};

const copyOfProgram = () => {
	const folder = freshFolder();
	cpSync(path.dirname(PROGRAM), folder, {recursive: true});
	return folder;
};

const keptIn = (folder: string): readonly string[] => {
	const names = readdirSync(folder).filter((name) => name.includes(`.cjs.${process.version}-${process.arch}-`));
	return names.map((name) => path.join(folder, name));
};

/** Does something to each file that was compiled ahead, in a copy of the program. */
const harmed = (harm: (file: string) => void) => {
	const folder = copyOfProgram();
	const kept = keptIn(folder);
	expect(kept.length).toBeGreaterThan(10);
	for (const file of kept) harm(file);
	return folder;
};

describe('What V8 compiled when the program was built', () => {
	const sound = listed(path.dirname(PROGRAM));

	test('is taken for every file', () => {
		expect(sound.files.length).toBeGreaterThan(5);
		expect(sound.files.filter(({isKept, isRejected}) => !isKept || isRejected)).toEqual([]);
	});

	test.for([
		['empty', (file: string) => truncateSync(file)],
		['cut in the middle', (file: string) => truncateSync(file, Math.floor(readFileSync(file).length / 2))],
		['something else', (file: string) => writeFileSync(file, 'something else')],
		['not there', (file: string) => rmSync(file)],
		[
			'a folder',
			(file: string) => {
				rmSync(file);
				mkdirSync(file);
			},
		],
	] as const)('is not missed where it is %s', ([, harm]) => {
		const {said, files} = listed(harmed(harm));
		expect(said).toEqual(sound.said);
		expect(files.every(({isKept, isRejected}) => !isKept || isRejected)).toBe(true);
	});

	test('is not taken under other flags of V8, and the program runs', () => {
		const {said, files} = listed(path.dirname(PROGRAM), '--max-old-space-size=500');
		expect(said).toEqual(sound.said);
		expect(files.every(({isRejected}) => isRejected)).toBe(true);
	});
});
