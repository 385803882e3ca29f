import {execFileSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {beforeAll, describe, expect, onTestFinished, test} from 'vitest';
import {freshFolder} from '../helpers/program-environment.js';
import {type ProgramOptions, startProgram} from '../helpers/pty.js';

const BUNDLER = fileURLToPath(new URL('../../source/build/bundle.mjs', import.meta.url));
const SAMPLE = fileURLToPath(new URL('sample-program.ts', import.meta.url));
const folder = freshFolder();
const sample = path.join(folder, 'armdrift.cjs');

beforeAll(() => {
	execFileSync(process.execPath, [BUNDLER, SAMPLE, folder]);
});

const start = (options: ProgramOptions = {}) => {
	const program = startProgram({command: [process.execPath, sample], ...options});
	onTestFinished(() => program.stop());
	return program;
};

/** Under a plain shell, which restores nothing by itself and then tells the state of the terminal. */
const startInShell = (options: ProgramOptions = {}) =>
	start({...options, command: ['sh', '-c', `"${process.execPath}" "${sample}"; echo "status=$?"; stty -a; read line`]});

const expectTerminalRestored = (normalScreen: string, raw: string) => {
	// Local modes of POSIX termios: line editing, echo, and signals from keys.
	for (const mode of ['icanon', 'echo', 'isig']) expect(normalScreen).toMatch(new RegExp(`(?<![-\\w])${mode}\\b`));
	for (const mode of ['25', '2004', '1049']) {
		const last = raw.match(new RegExp(`\\u001B\\[\\?${mode}[hl]`, 'g'))?.at(-1);
		expect(last).toBe(`\u001B[?${mode}${mode === '25' ? 'h' : 'l'}`);
	}
	expect(raw).not.toContain('\u001B[3J');
};

describe('Typing', () => {
	test('keys before the first frame, a run in one write and keys one by one all arrive', async () => {
		const program = start();
		program.type('1\r2\r');
		await program.waitFor('Answers: 1|2');
		program.type('3.5\r4,5\r');
		await program.waitFor('Answers: 1|2|3.5|4,5');
		for (const key of '12.345\r') program.type(key);
		await program.waitFor('4,5|12.345');
	});

	test('a paste of 100 KB is cut and submits nothing', async () => {
		const program = start();
		await program.waitFor('value >');
		program.type(`\u001B[200~${'word '.repeat(20_000)}\rmore\r\u001B[201~`);
		await program.waitFor('word word');
		expect(program.screen()).toContain('Answers: ');
		expect(program.screen()).not.toContain('more');
	});
});

describe('The screen', () => {
	test('is drawn although CI is set', async () => {
		const program = start({env: {CI: 'true', CONTINUOUS_INTEGRATION: '1'}});
		await program.waitFor('Sample at 80 x 24');
		expect(program.isOnAlternateScreen()).toBe(true);
	});

	test('follows every resize without leaving copies, and keeps what is typed', async () => {
		const program = start();
		await program.waitFor('Sample at 80 x 24');
		program.type('12.5');
		await program.waitFor('value > 12.5');
		for (const [columns, rows] of [
			[60, 24],
			[40, 20],
			[80, 24],
			[80, 30],
			[120, 40],
			[44, 20],
		] as const) {
			program.resize(columns, rows);
			const size = `Sample at ${columns} x ${rows}`;
			await program.waitFor(
				(screen) =>
					screen.endsWith('value > 12.5') &&
					screen.split(size).length === 2 &&
					screen.split('Sample at').length === 2 &&
					screen.split('Answers:').length === 2 &&
					program.usedRows() === rows - 1,
			);
		}
		program.resize(20, 5);
		await program.waitFor('Please enlarge');
		program.resize(80, 24);
		await program.waitFor('Sample at 80 x 24');
		expect(program.raw()).not.toContain('\u001B[3J');
	});
});

describe('Leaving', () => {
	test.each([
		['the last answer', 0, 'end\r', 'Ended as asked.'],
		['Ctrl+C', 130, '\u0003', 'Kept 1 answers.'],
		['Ctrl+C twice in one read', 130, '\u0003\u0003', 'Kept 1 answers.'],
		['Ctrl+C behind text', 130, '12\u0003', 'Kept 1 answers.'],
		['an error in a key handler', 70, 'throw\r', 'broken while answering'],
		['an error while drawing', 70, 'draw\r', 'broken while drawing'],
		['an error that comes later', 70, 'reject\r', 'broken later'],
	])('by %s ends with %i, the terminal as it was and one sentence', async (_, status, keys, sentence) => {
		const program = startInShell();
		await program.waitFor('value >');
		program.type('1\r');
		await program.waitFor('Answers: 1');
		program.type(keys);
		await program.waitFor(`status=${status}`);
		await program.waitFor('-tostop');
		expect(program.normalScreen()).toContain(sentence);
		expect(program.normalScreen()).not.toMatch(/^\s+at /m);
		expect(program.normalScreen()).not.toContain('Sample at');
		expectTerminalRestored(program.normalScreen(), program.raw());
	});

	test.each([
		['SIGINT', 130],
		['SIGTERM', 143],
		['SIGHUP', 129],
		['SIGQUIT', 131],
	] as const)('by %s from outside ends with %i and the parting line', async (signal, status) => {
		const program = start();
		await program.waitFor('value >');
		program.kill(signal);
		program.kill(signal);
		expect(await program.exited).toEqual({exitCode: status, signal: 0});
		expect(program.normalScreen()).toBe('Kept 0 answers.');
		expect(program.isOnAlternateScreen()).toBe(false);
	});

	test('by closing the terminal ends at once, by the signal and without a crash', async () => {
		const program = start();
		await program.waitFor('value >');
		program.closeTerminal();
		// Death by SIGHUP, number 1; a failed assertion would be 6 (SIGABRT) or 11.
		expect(await program.exited).toEqual({exitCode: 0, signal: 1});
	});
});

test('Stopped and continued, it draws itself again and takes keys', async () => {
	const program = start();
	await program.waitFor('value >');
	program.kill('SIGTSTP');
	await program.waitFor(() => !program.isOnAlternateScreen());
	await expect.poll(() => readFileSync(`/proc/${program.pid}/stat`, 'utf8').split(') ')[1]?.[0]).toBe('T');
	program.kill('SIGCONT');
	await program.waitFor('Sample at 80 x 24');
	program.type('7\r');
	await program.waitFor('Answers: 7');
});
