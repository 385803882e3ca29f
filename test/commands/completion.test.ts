import {spawnSync} from 'node:child_process';
import {Argument, Command, Option} from 'commander';
import fc from 'fast-check';
import {describe, expect, it, test} from 'vitest';
import {candidates, type Known} from '../../source/commands/candidates.js';
import {bashReplies, quotedIn, repliesFor, splitLine} from '../../source/commands/shell-words.js';

const named = (...texts: readonly string[]) => texts.map((text) => ({text, about: ''}));
const known: Known = {
	arms: () => named('north deck', "bob's"),
	ids: (prefix) => named('20260101-100000-aaaa', '20250101-100000-bbbb').filter(({text}) => text.startsWith(prefix)),
	topics: () => named('bench'),
};

/** An invented table of commands with one of each kind of value. */
function table(): Command {
	const program = new Command('invented')
		.option('--arm <name>', 'an arm')
		.option('--folder <folder>')
		.option('-p, --plain');
	program
		.command('look')
		.description('look at one')
		.argument('[id]')
		.addOption(new Option('--as <form>').choices(['text', 'json']))
		.option('--arm <name>', 'of this arm')
		.option('-q, --quiet');
	program.command('again').argument('[arm]').argument('<file>');
	program.command('many').argument('[arm...]');
	program.command('tell').addArgument(new Argument('<shell>').choices(['one', 'two']));
	program.command('secret', {hidden: true}).argument('[arm]');
	return program;
}

const follows = (...words: readonly string[]): readonly string[] =>
	candidates(table(), words, known).map(({text}) => text);

describe('What may stand at the end of a command line', () => {
	it('are the commands that are no secret, or the options', () => {
		expect(follows('')).toEqual(['look', 'again', 'many', 'tell', 'help']);
		expect(follows('-')).toEqual(['--arm', '--folder', '--plain', '--help']);
	});

	it('are the options of a command and those of the program, each once and none that is there already', () => {
		expect(follows('look', '-')).toEqual(['--as', '--arm', '--quiet', '--help', '--folder', '--plain']);
		expect(follows('look', '-q', '--as=json', '-')).toEqual(['--arm', '--help', '--folder', '--plain']);
		expect(follows('-p', 'look', '--folder', 'look', '--')).toEqual(['--as', '--arm', '--quiet', '--help']);
	});

	it('are the values of an option: choices, arms, ids by their beginning', () => {
		expect(follows('look', '--as', '')).toEqual(['text', 'json']);
		expect(follows('look', '--as=')).toEqual(['--as=text', '--as=json']);
		expect(follows('--arm', 'n')).toEqual(['north deck', "bob's"]);
		expect(follows('--arm=', '')).not.toContain('north deck');
		expect(follows('look', '--arm=nor')).toContain('--arm=north deck');
		expect(follows('look', '2025')).toEqual(['20250101-100000-bbbb']);
	});

	it('are the values of the argument whose turn it is, and options where none is left', () => {
		expect(follows('again', '')).toEqual(['north deck', "bob's"]);
		expect(follows('again', 'north deck', '')).toEqual([]);
		expect(follows('many', 'x', 'y', '')).toEqual(['north deck', "bob's"]);
		expect(follows('tell', '')).toEqual(['one', 'two']);
		expect(follows('tell', 'one', '')).toEqual(['--help', '--arm', '--folder', '--plain']);
		expect(follows('look', '--quiet', '2026')).toEqual(['20260101-100000-aaaa']);
	});

	it('is nothing where a name of a file is wanted, or what nobody knows', () => {
		expect(follows('--folder', '')).toEqual([]);
		expect(follows('look', '--no-such=')).toEqual([]);
		expect(follows('look', '--quiet=')).toEqual([]);
	});
});

describe('Replies to the shells', () => {
	const reply = (line: string, bashWord: string, ...texts: readonly string[]) =>
		bashReplies(named(...texts), splitLine(line), bashWord)
			.split('\n')
			.slice(0, -1);

	// What bash 5.2 gives as its own word ($2) was read from it at a terminal.
	it.each([
		['list --arm nor', 'nor', 'north\\ deck'],
		['list --arm "north d', 'north d', 'north deck'],
		["list --arm 'north d", 'north d', 'north deck'],
		['list --arm north\\ d', 'north\\ d', 'north\\ deck'],
		['list --arm no"rth d', 'rth d', 'rth deck'],
	])('bash, %j: its word %j becomes %j', (line, bashWord, replaced) => {
		expect(reply(line, bashWord, 'north deck', 'south deck')).toEqual([replaced]);
	});

	it('bash ends words at = and : too, and gets only what stands behind', () => {
		expect(reply('list --arm=north\\ d', 'north\\ d', '--arm=north deck')).toEqual(['north\\ deck']);
		expect(reply('list --arm a:b', 'b', 'a:bc')).toEqual(['bc']);
		expect(reply('list --arm="north d', 'north d', '--arm=north deck')).toEqual(['north deck']);
	});

	it('zsh wants colons escaped and a description behind a bare one, fish a tab', () => {
		const found = [
			{text: 'a:b\\c', about: 'x: y'},
			{text: 'plain', about: ''},
		];
		expect(repliesFor.zsh(found)).toBe('a\\:b\\\\c:x: y\nplain\n');
		expect(repliesFor.fish(found)).toBe('a:b\\c\tx: y\nplain\n');
	});
});

describe('Words of a command line', () => {
	it('end at the cursor, with the quote that is open there', () => {
		expect(splitLine('a  b ')).toEqual({words: ['a', 'b', ''], quote: ''});
		expect(splitLine('a "b c')).toEqual({words: ['a', 'b c'], quote: '"'});
		expect(splitLine("a 'b\\")).toEqual({words: ['a', 'b\\'], quote: "'"});
		expect(splitLine('')).toEqual({words: [''], quote: ''});
	});

	const hasBash = spawnSync('bash', ['-c', 'true']).status === 0;
	test.skipIf(!hasBash)('are, however they are quoted, those that bash itself sees', () => {
		const odd = fc.array(fc.constantFrom(...'ab:=$`"\'\\!*?[](){}<>|&;~# ü…'), {minLength: 1, maxLength: 12});
		const wraps = (text: string) => [quotedIn(text, ''), `"${quotedIn(text, '"')}"`, `'${quotedIn(text, "'")}'`];
		const texts = fc.sample(odd, {numRuns: 200, seed: 5}).map((letters) => letters.join(''));
		const line = texts.flatMap(wraps).join(' ');
		const wanted = texts.flatMap((text) => [text, text, text]);
		const seen = spawnSync('bash', ['--norc', '-c', `printf '%s\\0' ${line}`], {
			encoding: 'utf8',
			env: {LC_ALL: 'C.UTF-8'},
		});
		expect(seen.stdout.split('\0').slice(0, -1)).toEqual(wanted);
		expect(splitLine(line).words).toEqual(wanted);
	});
});
