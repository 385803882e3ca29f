// What V8 compiles of the program up to its first screens, kept at build: a quarter of the time to the first frame.
import {spawn} from 'node:child_process';
import {mkdtempSync, readFileSync, rmSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';
import {fileURLToPath} from 'node:url';

const KEEP = fileURLToPath(new URL('keep-compiled.cjs', import.meta.url));
const ANSWERS = fileURLToPath(new URL('../../fixtures/answers/invented-full-check.txt', import.meta.url));
// As far as a reading of the probe.
const ANSWERED = 46;
const KEYS = ['\u001B[B', '\u001B[A', '1', '\r', '1', '\u007F', '\u0003'];
const QUIET_MS = 100;
const LIMIT_MS = 20_000;

/** Runs the program, and hands it each input once it has been quiet for a while; keys wait for its first frame. */
const run = (program, {args = [], inputs = [], env, preload = []}) =>
	new Promise((resolve, reject) => {
		const child = spawn(process.execPath, [...preload, program, ...args], {
			env: {...process.env, TERM: 'xterm-256color', LC_ALL: 'C.UTF-8', ...env},
			stdio: ['pipe', 'pipe', 'ignore'],
			timeout: LIMIT_MS,
		});
		const left = [...inputs];
		let timer;
		const later = () => {
			clearTimeout(timer);
			timer = setTimeout(next, QUIET_MS);
		};
		const next = () => {
			if (left.length === 0) return child.stdin.end();
			child.stdin.write(left.shift());
			later();
		};
		child.stdout.on('data', later);
		if (inputs !== KEYS) next();
		child.stdin.on('error', () => {});
		child.on('error', reject);
		child.on('exit', () => {
			clearTimeout(timer);
			resolve();
		});
	});

/** Has the program run a little, and keeps beside each of its files, named after the build, what V8 compiled of it. */
export const compileAhead = async (program, build, languages) => {
	const folder = mkdtempSync(path.join(tmpdir(), 'armdrift-build-'));
	const KEPT_AS = `${process.version}-${process.arch}-${build}`;
	const env = {ARMDRIFT_DATA: folder, KEPT_AS};
	const answers = readFileSync(ANSWERS, 'utf8').split('\n').slice(0, ANSWERED).join('\n');
	try {
		await run(program, {args: ['--plain'], inputs: [answers], env});
		for (const language of languages)
			for (const {args = [], ...part} of [
				{inputs: KEYS, env: {...env, AS_SCREEN: '1'}},
				{args: ['list'], env},
				{args: ['--help'], env},
			])
				await run(program, {...part, args: [...args, '--language', language], preload: ['-r', KEEP]});
	} finally {
		rmSync(folder, {recursive: true, force: true});
	}
};
