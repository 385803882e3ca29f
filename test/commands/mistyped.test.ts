import {spawnSync} from 'node:child_process';
import {expect, it} from 'vitest';
import {nothingToRepeat} from '../../source/desk/archive.js';
import {didYouMean} from '../../source/desk/did-you-mean.js';
import {commandLine} from '../../source/words/command-line.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';
import {anything, words} from '../helpers/said.js';

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

it.each<[string, readonly string[], string]>([
	['a word that is missing', ['import'], commandLine.missingArgument({command: 'import', argument: 'file'})],
	['a value that is missing', ['list', '--arm'], commandLine.missingValue({flags: '--arm <name>'})],
	['an option that must be there', ['export'], commandLine.missingOption({option: '--as', choices: ['json', 'csv']})],
	['a word too many', ['recheck', 'north', 'deck'], commandLine.tooManyWords({word: 'deck'})],
	[
		'an option that is near another one',
		['list', '--veridct', 'good'],
		commandLine.unknownOption({option: '--veridct', meant: '--verdict', command: 'list'}),
	],
	[
		'an option that is near one of the program',
		['--plian'],
		commandLine.unknownOption({option: '--plian', meant: '--plain', command: undefined}),
	],
	[
		'an option that is near none',
		['list', '-x'],
		commandLine.unknownOption({option: '-x', meant: undefined, command: 'list'}),
	],
	[
		'a choice that is none',
		['list', '--as', 'xml'],
		commandLine.notTaken({
			name: '--as',
			typed: 'xml',
			because: commandLine.choiceWanted({choices: ['text', 'json']}),
		}),
	],
	[
		'an argument that is no choice',
		['completion', 'tcsh'],
		commandLine.notTaken({
			name: '<shell>',
			typed: 'tcsh',
			because: commandLine.choiceWanted({choices: ['bash', 'zsh', 'fish']}),
		}),
	],
	[
		'a number that is none',
		['list', '--limit', '0\u001b[2J'],
		commandLine.notTaken({name: '--limit', typed: '0?[2J', because: commandLine.wholeNumber({least: 1})}),
	],
])('%s is refused with 2 and one sentence of this program', (_, args, sentence) => {
	const {status, stdout, stderr} = run(...args);
	expect([status, stdout, stderr]).toEqual([2, '', `${sentence}\n`]);
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
	expect(stderr).toMatch(/x{38}/);
	expect(stderr).not.toMatch(/x{81}/);
});

it('What would steer the terminal is said back so that it is seen', () => {
	expect(run('list', '--as', '\u001B[31mred').stderr).not.toContain('\u001B');
});

it('An arm without a check that counts is not taken for a slip of its own name, nor of another one', () => {
	const said = (arm: string, meant?: string) => words.commands.desk.nothingToRepeatOf({arm, meant});
	expect(nothingToRepeat('north deck', ['north deck', 'north deck 2'])).toBe(said('north deck'));
	expect(nothingToRepeat('north dekc', ['north deck'])).toBe(said('north dekc', 'north deck'));
});
