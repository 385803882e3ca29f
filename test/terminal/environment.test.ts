import {describe, expect, test} from 'vitest';
import {prepareForInk, readEnvironment} from '../../source/terminal/environment.js';

const at = (variables: Record<string, string>, others: object = {}) =>
	readEnvironment({
		variables: {TERM: 'xterm-256color', LANG: 'en_GB.UTF-8', ...variables},
		inputIsTerminal: true,
		outputIsTerminal: true,
		platform: 'linux',
		...others,
	});

describe('The face', () => {
	test.each([
		['at a terminal', {}, {}, 'ink'],
		['with --plain', {}, {plain: true}, 'plain'],
		['with ACCESSIBLE=1', {ACCESSIBLE: '1'}, {}, 'plain'],
		['with ACCESSIBLE=0', {ACCESSIBLE: '0'}, {}, 'ink'],
		['at a dumb terminal', {TERM: 'dumb'}, {}, 'plain'],
		['at a terminal without a name', {TERM: ''}, {}, 'plain'],
		['at a Windows console, which has no TERM', {TERM: ''}, {platform: 'win32'}, 'ink'],
		['with piped input', {}, {inputIsTerminal: false}, 'none'],
		['with piped output', {}, {outputIsTerminal: false}, 'none'],
		['with pipes and no TERM', {TERM: ''}, {inputIsTerminal: false, outputIsTerminal: false}, 'none'],
		['with pipes and --plain', {}, {inputIsTerminal: false, plain: true}, 'plain'],
		['with pipes and TERM=dumb', {TERM: 'dumb'}, {inputIsTerminal: false}, 'plain'],
	])('%s', (_, variables, others, face) => {
		expect(at(variables, others).face).toEqual(face);
	});
});

describe('Drawings', () => {
	// Order of the variables: POSIX.1-2017, Base Definitions 8.2.
	test.each([
		[{LC_ALL: 'C', LANG: 'en_GB.UTF-8'}, false],
		[{LC_ALL: '', LC_CTYPE: 'de_DE.utf8', LANG: 'C'}, true],
		[{LC_CTYPE: 'POSIX', LANG: 'en_GB.UTF-8'}, false],
		[{LANG: 'en_GB.ISO-8859-1'}, false],
		[{LANG: ''}, false],
	])('with %j go beyond ASCII: %j', (variables, unicode) => {
		expect(at(variables).unicode).toBe(unicode);
	});
});

describe('Colours', () => {
	// NO_COLOR counts "when present and not an empty string" (no-color.org).
	test.each([
		[{}, {}, true],
		[{NO_COLOR: '1'}, {}, false],
		[{NO_COLOR: ''}, {}, true],
		[{NO_COLOR: '1', FORCE_COLOR: '1'}, {}, true],
		[{FORCE_COLOR: '0'}, {}, false],
		[{FORCE_COLOR: '1'}, {color: false}, false],
		[{}, {outputIsTerminal: false}, false],
		[{FORCE_COLOR: ''}, {outputIsTerminal: false}, true],
	])('with %j and %j: %j', (variables, others, color) => {
		expect(at(variables, others).color).toBe(color);
	});
});

test('A screen reader is announced by its variable', () => {
	expect(at({INK_SCREEN_READER: 'true'}).screenReader).toBe(true);
	expect(at({INK_SCREEN_READER: 'false'}).screenReader).toBe(false);
});

test('Nothing is left that would blank the screen or hide the cursor', () => {
	const variables = {CI: 'true', CONTINUOUS_INTEGRATION: '1', NO_COLOR: '1', FORCE_COLOR: '0', HOME: '/home/x'};
	const commandLine = ['node', 'armdrift', '--no-color', '--arm', 'x'];
	prepareForInk(variables, commandLine);
	expect(variables).toEqual({FORCE_COLOR: '1', HOME: '/home/x'});
	expect(commandLine).toEqual(['node', 'armdrift', '--arm', 'x']);
});
