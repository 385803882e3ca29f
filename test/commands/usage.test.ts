import {spawnSync} from 'node:child_process';
import {expect, it} from 'vitest';
import {commandLine} from '../../source/words/command-line.js';
import {type UsageFaultSaid, usageText} from '../../source/words/usage-text.js';
import {cleanEnvironment, freshFolder} from '../helpers/program-environment.js';
import {PROGRAM} from '../helpers/pty.js';

const run = (...args: readonly string[]) =>
	spawnSync(process.execPath, [PROGRAM, ...args], {env: cleanEnvironment(freshFolder()), encoding: 'utf8'});

const faults: readonly (readonly [string, UsageFaultSaid])[] = [
	['--arn x', {id: 'option-unknown', values: {flag: '--arn', meant: '--arm'}}],
	['list --arn x', {id: 'option-unknown', values: {flag: '--arn', meant: '--arm'}}],
	['list --xyzzy', {id: 'option-unknown', values: {flag: '--xyzzy', meant: undefined}}],
	['list --arm', {id: 'value-missing', values: {flags: '--arm <name>'}}],
	['report', {id: 'option-missing', values: {command: 'report', flags: '--as <form>'}}],
	['import', {id: 'argument-missing', values: {command: 'import', name: 'file'}}],
	['recheck north deck', {id: 'too-many', values: {command: 'recheck', most: 1, given: 2}}],
	[
		'due --as xml',
		{
			id: 'value-wrong',
			values: {of: '--as <form>', typed: 'xml', wanted: commandLine.allowed({choices: ['text', 'json']})},
		},
	],
	[
		'completion csh',
		{
			id: 'value-wrong',
			values: {of: 'shell', typed: 'csh', wanted: commandLine.allowed({choices: ['bash', 'zsh', 'fish']})},
		},
	],
	[
		'--language xx',
		{
			id: 'value-wrong',
			values: {of: '--language <code>', typed: 'xx', wanted: commandLine.allowed({choices: ['en', 'de']})},
		},
	],
];

it.each(faults)('armdrift %s is refused with 2 and one sentence', (line, fault) => {
	const {status, stdout, stderr} = run(...line.split(' '));
	expect([status, stdout, stderr]).toEqual([2, '', `${usageText(fault)}\n`]);
});

it('A word is repeated up to 80 letters, and nothing in it steers the terminal', () => {
	const {stderr} = run(`--\u001B[31m${'x'.repeat(5000)}`);
	expect(stderr.length).toBeLessThan(200);
	expect(stderr).not.toContain('\u001B');
});

it('The help has headings in the language in use, and says what the choices are', () => {
	const {stdout} = run('due', '--help');
	for (const heading of ['Usage:', 'Options:'] as const) expect(stdout).toContain(commandLine.headings[heading]);
	expect(stdout).toContain(commandLine.helpOption);
	expect(stdout.replaceAll(/\s+/g, ' ')).toContain(
		commandLine.withChoices({about: commandLine.due.as, choices: ['text', 'json']}),
	);
});
