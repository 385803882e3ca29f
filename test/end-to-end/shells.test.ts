import {spawnSync} from 'node:child_process';
import {symlinkSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, onTestFinished, test} from 'vitest';
import {commandLine} from '../../source/words/command-line.js';
import {topics} from '../../source/words/help-topics.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {run} from '../helpers/plain-run.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM, startProgram} from '../helpers/pty.js';

// Tests of a shell are left out where it is not installed.
const has = (shell: string): boolean => spawnSync('sh', ['-c', `command -v ${shell}`]).status === 0;
const shells = (['bash', 'zsh', 'fish'] as const).map((shell) => ({shell, missing: !has(shell)}));

let dataDir = '';
let PATH = '';
beforeAll(async () => {
	const bin = freshFolder();
	symlinkSync(PROGRAM, path.join(bin, 'armdrift'));
	PATH = `${bin}:${process.env.PATH}`;
	dataDir = await folderWith(
		[
			filed({at: '2026-05-25T10:00:00Z'}),
			filed({at: '2026-05-26T10:00:00Z', arm: `bob's "best" $arm: *`}),
			filed({at: '2026-05-27T10:00:00Z', arm: 'not to be typed \u0007'}),
		],
		{profiles: [armProfile('south deck')]},
	);
});

const inShell = (shell: string, args: readonly string[]) =>
	spawnSync(shell, args, {env: cleanEnvironment(dataDir, {PATH}), cwd: dataDir, encoding: 'utf8'});

describe.each(shells)('The script for $shell', ({shell, missing}) => {
	test.skipIf(missing)('is sound to the shell itself', () => {
		const file = path.join(freshFolder(), 'script');
		writeFileSync(file, run(dataDir, ['completion', shell]).out);
		const {status, stderr} = spawnSync(shell, ['-n', file], {encoding: 'utf8'});
		expect([status, stderr]).toEqual([0, '']);
	});
});

describe.skipIf(shells[0]?.missing)('bash', () => {
	/** Completes as readline does: the line and its words as bash parts them, at = and : too. */
	function completed(line: string, words: readonly string[]): string[] {
		const word = words.at(-1) ?? '';
		const list = ['armdrift', ...words].map((one) => `'${one.replaceAll("'", "'\\''")}'`).join(' ');
		const script = `eval "$(armdrift completion bash)"; complete -p armdrift >/dev/null || exit 9
			COMP_WORDS=(${list}) COMP_CWORD=${words.length} COMP_LINE=$1 COMP_POINT=\${#1}
			_armdrift armdrift "$2" ''; printf '%s\\n' "\${COMPREPLY[@]}"`;
		const {stdout, stderr, status} = inShell('bash', ['--norc', '-c', script, 'bash', line, word.replace(/^['"]/, '')]);
		expect([status, stderr]).toEqual([0, '']);
		return stdout.split('\n').filter((reply) => reply !== '');
	}

	test('is given commands, options and topics', () => {
		expect(completed('armdrift com', ['com'])).toEqual(['compute', 'completion']);
		expect(completed('armdrift due --wi', ['due', '--wi'])).toEqual(['--within']);
		expect(completed('armdrift completion z', ['completion', 'z'])).toEqual(['zsh']);
		const topic = topics[2]?.name ?? '';
		const begun = topic.slice(0, 3);
		expect(completed(`armdrift help ${begun}`, ['help', begun])).toEqual([topic]);
		expect(completed(`X=1 armdrift help ${begun}`, ['help', begun])).toEqual([topic]);
		expect(completed('armdrift compute ./', ['compute', './'])).toEqual([]);
	});

	test('is given arms, also those that have no check yet, quoted as the line is', () => {
		expect(completed('armdrift list --arm ', ['list', '--arm', ''])).toEqual([
			'south\\ deck',
			`bob\\'s\\ \\"best\\"\\ \\$arm:\\ \\*`,
			'north\\ deck',
		]);
		expect(completed('armdrift recheck "nor', ['recheck', '"nor'])).toEqual(['north deck']);
		expect(completed('armdrift list --arm=nor', ['list', '--arm', '=', 'nor'])).toEqual(['north\\ deck']);
	});

	test('is given ids of the folder that the line names', async () => {
		const other = await folderWith([filed({at: '2025-01-01T10:00:00Z'})]);
		const ids = (option: string) => completed(`armdrift ${option}compute --id 2`, ['compute', '--id', '2']);
		expect(ids('')).toHaveLength(3);
		expect(ids(`--data ${other} `)).toEqual(['20250101-100000-invented']);
		expect(ids(`--data ${path.join(other, 'checks')} `)).toEqual([]);
	});
});

describe.skipIf(shells[2]?.missing)('fish', () => {
	const completed = (line: string): string[] =>
		inShell('fish', ['--no-config', '-c', 'armdrift completion fish | source; complete -C $argv[1]', line])
			.stdout.split('\n')
			.slice(0, -1);

	test('is given commands, options and arms with what they are', () => {
		expect(completed('armdrift due --wi')).toEqual([`--within\t${commandLine.due.within}`]);
		expect(completed('armdrift list --arm nor')).toEqual(['north deck']);
		expect(completed('armdrift list --arm=nor')).toEqual(['--arm=north deck']);
		expect(completed('armdrift compute --id 2')).toHaveLength(3);
	});
});

describe('At a terminal', () => {
	const start = {
		bash: ['bash', '--norc', '--noprofile', '-i'],
		zsh: ['zsh', '-f', '-i'],
		fish: ['fish', '--no-config', '-i'],
	} as const;
	const load = {
		bash: 'eval "$(armdrift completion bash)"',
		zsh: 'autoload -Uz compinit; compinit -u; source <(armdrift completion zsh)',
		fish: 'armdrift completion fish | source',
	} as const;

	for (const {shell, missing} of shells)
		test.skipIf(missing)(`the Tab key of ${shell} completes and quotes`, async () => {
			const program = startProgram({command: [...start[shell]], dataDir, cols: 120, env: {PATH, PS1: '$ '}});
			onTestFinished(() => program.stop());
			await program.answer(`${load[shell]}; echo load''ed`, 'loaded');
			program.type('armdrift due --wi\t');
			await program.waitFor('due --within');
			await program.answer('0 --help', commandLine.helpOption);
			program.type('armdrift recheck no\t');
			await program.waitFor('recheck north\\ deck');
			program.type('\u0015armdrift recheck "no\t');
			await program.waitFor('recheck "north deck"');
		});
});
