import {spawnSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, test} from 'vitest';
import {topics} from '../../source/words/help-topics.js';
import {filed, folderWith} from '../helpers/filed-checks.js';
import {run} from '../helpers/plain-run.js';
import {cleanEnvironment, earlier, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';
import {withAnyNumbers, words} from '../helpers/said.js';
import {filedIds} from '../helpers/saved-checks.js';
import {playPastYears} from './past-years.js';

const lines = (text: string): string[] => text.split('\n').slice(0, -1);

describe('After five invented checks over two years', () => {
	const dataDir = freshFolder();
	beforeAll(() => playPastYears(dataDir));

	test('list shows them, newest first', () => {
		const {status, out, faults} = run(dataDir, ['list']);
		expect([status, faults]).toEqual([0, '']);
		expect(lines(out).map((line) => line.split(' ').at(-1))).toEqual(filedIds(dataDir).reverse());
		const {out: json} = run(dataDir, ['list', '--arm', 'north deck', '--limit', '2', '--as', 'json']);
		expect(JSON.parse(json)).toMatchObject(
			filedIds(dataDir)
				.reverse()
				.slice(0, 2)
				.map((id) => ({id, arm: 'north deck'})),
		);
	});

	test('due tells a script by its exit status alone, and a person by day and reason', () => {
		// The last check was 175 days ago, and left something undecided: due again after a month.
		const afterDays = (days: number) => ({env: earlier((175 - days) * 24 * 60)});
		const [calm, due] = [
			{status: 0, out: '', faults: ''},
			{status: 10, out: '', faults: ''},
		];
		expect(run(dataDir, ['due', '-q'], afterDays(5))).toEqual(calm);
		expect(run(dataDir, ['due', '-q', '--within', '40'], afterDays(5))).toEqual(due);
		expect(run(dataDir, ['due', '--quiet'], afterDays(40))).toEqual(due);
		const because = words.results.nextCheck.soon({isUndecided: true, change: undefined});
		const lastCheck = words.commands.due.lastCheck({date: '2026-01-01', because});
		const wanted = withAnyNumbers(`2026-01-01  ${words.results.due({inDays: -9})}  north deck  ${lastCheck}`);
		expect(run(dataDir, ['--data', dataDir, 'due']).out).toMatch(new RegExp(`^${wanted.source}`));
	});

	test('the calendar is written, and written again over itself', () => {
		const file = path.join(dataDir, 'checks.ics');
		for (const _ of [1, 2])
			expect(run(dataDir, ['due', '--calendar', 'checks.ics'])).toMatchObject({status: 10, faults: ''});
		expect(readFileSync(file, 'utf8').match(/^BEGIN:VEVENT\r$/gm)).toHaveLength(1);
		expect(run(dataDir, ['due', '--calendar', '-']).out).toMatch(/^BEGIN:VCALENDAR\r\n[\s\S]*END:VCALENDAR/);
	});
});

describe('What is printed', () => {
	const shell = (dataDir: string, script: string) => {
		const {status, stdout, stderr} = spawnSync('bash', ['-c', script, process.execPath, PROGRAM], {
			env: cleanEnvironment(dataDir),
			encoding: 'utf8',
		});
		return {status, out: stdout, faults: stderr};
	};
	test.each(['list', 'list --as json', 'due', `help ${topics[2]?.name}`, 'help --man', 'completion zsh'])(
		'to a full disk ends %s with 1 and one sentence',
		async (line) => {
			const dataDir = await folderWith([filed({at: '2026-01-01T10:00:00Z', next: {date: '2026-07-01', because: ''}})]);
			const {status, faults} = shell(dataDir, `"$0" "$1" ${line} > /dev/full`);
			expect([status, faults]).toEqual([1, `${words.commands.outputFailed({code: 'ENOSPC'})}\n`]);
		},
	);

	test.each(['--help', '--version', 'due --help', 'compute --schema'])(
		'to a full disk ends %s with 1 and no trace of the program',
		(line) => {
			const {status, faults} = shell(freshFolder(), `"$0" "$1" ${line} > /dev/full`);
			expect([status, faults]).toEqual([1, '']);
		},
	);

	test('to a reader that goes away ends quietly', async () => {
		const dataDir = await folderWith([filed({at: '2026-01-01T10:00:00Z'})]);
		const {out, faults} = shell(dataDir, `"$0" "$1" list | true; echo "\${PIPESTATUS[0]}"`);
		expect(out).toMatch(/^[01]\n$/);
		expect(faults).toBe('');
	});
});

test('Every command that a topic names is one that the program has', () => {
	const dataDir = freshFolder();
	// Cautions say what the program does, not what to type.
	const {cautions} = words.reports;
	const told = topics.flatMap(({blocks}) => blocks).filter((block) => !cautions.some((one) => one === block));
	const named = JSON.stringify(told).matchAll(/armdrift ([a-z]+)/g);
	const known = new Set(lines(run(dataDir, ['help']).out).map((line) => /^ {2}(\w+) /.exec(line)?.[1]));
	const unknown = [...named].map(([, name]) => name).filter((name) => !known.has(name));
	expect(unknown).toEqual([]);
});

test('--help names what help explains, and help names every command that --help has', () => {
	const dataDir = freshFolder();
	const {out} = run(dataDir, ['--help']);
	const commands = [...out.slice(out.indexOf('Commands:')).matchAll(/^ {2}(\w+)[ [<]/gm)].map(([, name]) => name ?? '');
	expect(commands).toEqual(expect.arrayContaining(['recheck', 'list', 'due', 'help', 'completion']));
	expect(commands).not.toContain('complete');
	for (const name of commands)
		expect(run(dataDir, ['help', name]).out).toMatch(new RegExp(`Usage: armdrift ${name}\\b`));
});
