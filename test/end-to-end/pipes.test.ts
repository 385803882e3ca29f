import {readFileSync} from 'node:fs';
import {fileURLToPath} from 'node:url';
import {describe, expect, onTestFinished, test} from 'vitest';
import {describeArm, filed, fullCheck, leftOpen, start} from '../helpers/check-turns.js';
import {playedFolder, playPlain, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {PROGRAM, startProgram} from '../helpers/pty.js';
import {anything, bare, leftAnyTime, says, titleOf, withAnything, words} from '../helpers/said.js';
import {bareCheck, filedCheck, filedIds} from '../helpers/saved-checks.js';
import {turn, walk} from '../helpers/walk.js';

const lines = (text: string): string[] => text.trimEnd().split('\n');
const {version} = JSON.parse(readFileSync(fileURLToPath(new URL('../../package.json', import.meta.url)), 'utf8'));
const saved = withAnything(words.commands.parting.saved({arm: anything, step: anything}));
const newestCheck = (dataDir: string) => filedCheck(dataDir, filedIds(dataDir).at(-1) ?? '');

test('Without a terminal it refuses in one sentence that names the ways without one', () => {
	const {status, out, faults} = run(freshFolder(), []);
	expect([status, out]).toEqual([2, '']);
	expect(faults).toBe(`${words.terminal.noTerminal}\n`);
	expect(lines(faults)).toHaveLength(1);
	expect(faults).toContain('--plain');
});

test.each([
	['input', '< /dev/null'],
	['output', '| cat'],
])('With a terminal but for its %s it refuses too', async (_, redirection) => {
	const program = startProgram({
		command: ['sh', '-c', `"${process.execPath}" "${PROGRAM}" ${redirection}; echo "over"; read -r end`],
	});
	onTestFinished(() => program.stop());
	// The shell then waits: what it says last would else race with the news of its end.
	await program.waitFor('over');
	expect(bare(program.normalScreen())).toBe(bare(`${words.terminal.noTerminal}over`));
	expect(program.raw()).not.toContain('\u001B');
});

test('Answers from a file play the whole check, and save the same as the keys of a terminal', async () => {
	const plain = freshFolder();
	const {status, out, faults} = playPlain(plain, [start, ...fullCheck]);
	expect([status, faults]).toEqual([0, '']);
	expect(out).not.toContain('\u001B');
	expect(lines(out).slice(-3).join(' ')).toMatch(
		withAnything(words.commands.parting.filed({id: filedIds(plain)[0] ?? '', verdict: anything})),
	);

	const program = startProgram();
	onTestFinished(() => program.stop());
	await walk(program, [start, ...fullCheck]);
	await program.waitFor(filed);
	expect(bareCheck(newestCheck(plain))).toEqual(bareCheck(newestCheck(program.dataDir)));
	const profiles = [plain, program.dataDir].map(
		(folder) => run(folder, ['--plain'], {input: `${words.beside.home.profiles}\n`}).out,
	);
	expect(profiles[0]).toBe(profiles[1]);
});

describe('A pipe', () => {
	test('that gives a refused answer ends with 2 and the question, all earlier answers saved', () => {
		const dataDir = freshFolder();
		const {status, faults} = playPlain(dataDir, [start, turn('north deck'), turn('two feet'), turn('233')]);
		expect(status).toBe(2);
		expect(lines(faults)).toHaveLength(1);
		const title = titleOf('arm-length');
		const because = says.refusal({id: 'not-a-number', values: {typed: 'two feet', unit: 'mm'}});
		expect(faults).toBe(`${words.faces.plain.refused({number: 2, title, answer: 'two feet', because})}\n`);
		expect(run(dataDir, ['--plain']).out).toMatch(
			withAnything(
				leftAnyTime(words.beside.home.unfinished({arm: 'north deck', minutesAgo: 0, step: title, isReady: false})),
			),
		);
	});

	test('that ends early ends with 3, and says how to go on', () => {
		const {status, out, faults} = playPlain(freshFolder(), [start, ...describeArm]);
		expect([status, faults]).toEqual([3, '']);
		expect(lines(out).slice(-3).join(' ')).toMatch(new RegExp(`${saved.source}.*${leftOpen.source}`));
	});

	test('whose reader goes away ends quietly', async () => {
		const program = startProgram({
			command: [
				'sh',
				'-c',
				`printf '1\\nnorth deck\\n' | "${process.execPath}" "${PROGRAM}" --plain | head -c 10; echo; echo over`,
			],
		});
		onTestFinished(() => program.stop());
		await program.exited;
		expect(program.normalScreen()).not.toMatch(/EPIPE|^\s+at /m);
	});
});

describe('The command line', () => {
	test.each([
		[['--dat', 'x'], '--data'],
		[['comput'], 'compute'],
		[['--frobnicate'], '--frobnicate'],
		[['compute', '--ix', 'x'], '--id'],
	])('%j is refused with 2, one line and what may be meant', (args, meant) => {
		const {status, out, faults} = run(freshFolder(), args);
		expect([status, out]).toEqual([2, '']);
		expect(lines(faults)).toHaveLength(1);
		expect(faults).toContain(meant);
	});

	test('--help begins with examples and lists the exit statuses', () => {
		const {status, out, faults} = run(freshFolder(), ['--help']);
		expect([status, faults]).toEqual([0, '']);
		expect(out.indexOf('armdrift --plain')).toBeLessThan(out.indexOf('Usage:'));
		for (const code of ['130', '143', '129', '70', '10']) expect(out).toContain(code);
	});

	test('--version prints the version alone', () => {
		expect(run(freshFolder(), ['--version'])).toEqual({status: 0, out: `${version}\n`, faults: ''});
	});

	test('compute takes the id of a saved check by the former spelling --check too, which --help no longer names', () => {
		const dataDir = playedFolder([start, ...fullCheck]);
		const [id = ''] = filedIds(dataDir);
		const {status, out, faults} = run(dataDir, ['compute', '--check', id]);
		expect([status, faults]).toEqual([0, '']);
		expect(JSON.parse(out)).toEqual(JSON.parse(run(dataDir, ['compute', '--id', id]).out));
		const {out: help} = run(dataDir, ['compute', '--help']);
		expect(help).toContain('--id');
		expect(help).not.toContain('--check');
	});

	test('compute refuses a check that is not there with one sentence, as a fault of the command line', () => {
		const {status, out, faults} = run(freshFolder(), ['compute', '--id', 'nothing']);
		expect([status, out]).toEqual([2, '']);
		expect(lines(faults)).toHaveLength(1);
	});
});
