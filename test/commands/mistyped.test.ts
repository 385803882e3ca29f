import {spawnSync} from 'node:child_process';
import {expect, it} from 'vitest';
import {didYouMean} from '../../source/desk/did-you-mean.js';
import {commandLine} from '../../source/words/command-line.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';
import {anything} from '../helpers/said.js';

const run = (...args: readonly string[]) =>
	spawnSync(process.execPath, [PROGRAM, ...args], {env: cleanEnvironment(freshFolder()), encoding: 'utf8'});

it.each([
	['lsit', 'list'],
	['lits', 'list'],
	['ilst', 'list'],
	['reprot', 'report'],
	['duee', 'due'],
	['comp', 'compute'],
	['practise', 'practice'],
])('%s is refused with 2, and %s is named', (command, meant) => {
	const {status, stdout, stderr} = run(command);
	const sentence = commandLine.unknownCommand({command, meant, known: []});
	expect([status, stdout, stderr]).toEqual([2, '', `${sentence}\n`]);
});

it('Where none is near, all are named', () => {
	const {status, stderr} = run('xyzzy');
	const [said = ''] = commandLine
		.unknownCommand({command: 'xyzzy', meant: undefined, known: [anything]})
		.split(anything);
	expect(status).toBe(2);
	expect(stderr).toContain(said);
	for (const name of ['list', 'paths', 'completion']) expect(stderr).toContain(name);
});

it('Two letters that changed places are one slip, two that are wrong in so short a word are too many', () => {
	expect(didYouMean('lsit', ['list'])).toBe('list');
	expect(didYouMean('lxxt', ['list'])).toBeUndefined();
	expect(didYouMean('tsil', ['list'])).toBeUndefined();
});

it('--man prints the manual page, as help --man does, and with a command too', () => {
	const {status, stdout} = run('--man');
	expect(status).toBe(0);
	expect(stdout).toMatch(/^\.TH "ARMDRIFT" "1" /);
	for (const words of [
		['help', '--man'],
		['list', '--man'],
		['--man', 'due'],
	]) {
		const other = run(...words);
		expect([other.status, other.stdout, other.stderr]).toEqual([0, stdout, '']);
	}
});

const long = 'x'.repeat(300);
it.each([
	['report', long, '--as', 'html'],
	['report', '--arm', long, '--as', 'html'],
	['list', '--arm', long],
	['list', '--verdict', long],
	['list', '--limit', long],
	['list', `--as=${long}`],
	['list', `--${long}`],
	['due', '--arm', long],
	['help', long],
	['delete', '--arm', long],
	['practice', '--on', long],
	['compute', '--id', long],
	['completion', long],
])('No more than 80 letters of what was typed are said back: %s', (...args) => {
	const {status, stderr} = run(...args);
	expect(status).toBe(2);
	expect(stderr).toMatch(/x{77,80}…/);
	expect(stderr).not.toMatch(/x{81}/);
});

it('What would steer the terminal is said back so that it is seen', () => {
	expect(run('list', '--as', '\u001B[31mred').stderr).not.toContain('\u001B');
});
