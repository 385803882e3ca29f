import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {isText, KEYS} from '../../source/terminal/keys.js';
import {keysOfRest, SPLIT_START, type SplitState, splitKeys} from '../../source/terminal/split-keys.js';

const keysOf = (text: string): string[] => splitKeys(text).keys.map((entry) => entry.key);
const ESC = '\u001B';

/** Splits a text that arrives in parts. */
const keysOfParts = (parts: readonly string[]): string[] => {
	let state: SplitState = SPLIT_START;
	return parts.flatMap((part) => {
		const result = splitKeys(part, state);
		state = result.state;
		return result.keys.map((entry) => entry.key);
	});
};

describe('A read from the terminal is taken apart into keys', () => {
	// Sequences of the keys: xterm control sequences, "PC-Style" and "VT220-Style Function Keys".
	test.each([
		['a reading with Enter', '12.5\r', ['1', '2', '.', '5', '\r']],
		['three readings', '1\r2\r3\r', ['1', '\r', '2', '\r', '3', '\r']],
		['line ends of other systems', '1\r\n2\n', ['1', '\r', '2', '\r']],
		['two empty lines', '\r\r', ['\r', '\r']],
		['arrows and Enter', `${ESC}[B${ESC}[B\r`, [KEYS.down, KEYS.down, '\r']],
		['arrows of application mode', `${ESC}OA${ESC}OD`, [KEYS.up, KEYS.left]],
		[
			'Home and End of three terminals',
			`${ESC}[H${ESC}[1~${ESC}[7~${ESC}OF`,
			[KEYS.home, KEYS.home, KEYS.home, KEYS.end],
		],
		['F1 of three terminals', `${ESC}OP${ESC}[11~${ESC}[[A`, [KEYS.f1, KEYS.f1, KEYS.f1]],
		['a number on the keypad in application mode', `${ESC}Oq${ESC}On${ESC}Ou${ESC}OM`, ['1', '.', '5', '\r']],
		['three backspaces of both kinds', '\u007F\b\u007F', [KEYS.backspace, KEYS.backspace, KEYS.backspace]],
		['Tab and Shift+Tab', `\t${ESC}[Z`, ['\t', KEYS.shiftTab]],
		['characters outside the basic plane', '𝑥é漢', ['𝑥', 'é', '漢']],
		['Ctrl+C in the middle of text', 'ab\u0003c', ['a', 'b', KEYS.interrupt, 'c']],
		['Ctrl+C twice', '\u0003\u0003', [KEYS.interrupt, KEYS.interrupt]],
		['Ctrl+C behind an escape', `${ESC}\u0003`, [KEYS.interrupt]],
		['Ctrl+C inside an unfinished window title', `${ESC}]0;abc\u0003`, [KEYS.interrupt]],
		['Ctrl+U', '1\u0015', ['1', KEYS.clear]],
		['two escapes before a letter chord', `${ESC}${ESC}x`, [KEYS.escape]],
	])('%s', (_, text, expected) => {
		expect(keysOf(text)).toEqual(expected);
	});

	test.each([
		['the Ctrl+F1 that Ink dies of', `${ESC}[1;5P`],
		['a status reply', `${ESC}[0n`],
		['a pasted colour', `${ESC}[31m`],
		['a cursor report', `${ESC}[12;40R`],
		['focus in and out', `${ESC}[I${ESC}[O`],
		['a mouse report of each kind', `${ESC}[<0;12;7M${ESC}[M !!`],
		['a device attributes reply', `${ESC}[?62;22c`],
		['function keys of four kinds', `${ESC}OQ${ESC}[15~${ESC}[[B${ESC}O5P`],
		['arrows with modifiers', `${ESC}[1;5A${ESC}[1;2B${ESC}${ESC}[A`],
		['Delete and Insert', `${ESC}[3~${ESC}[2~`],
		['a key of the extended protocols', `${ESC}[97;5u${ESC}[27;5;13~`],
		['a window title and a clipboard write', `${ESC}]0;title\u0007${ESC}]52;c;QQ==${ESC}\\`],
		['a device control string', `${ESC}P1$r0m${ESC}\\`],
		['8-bit control sequences', '\u009B31m\u009D0;title\u0007\u0085'],
		['letters with Ctrl', '\u0001\u0004\u000B\u0017\u001A\u001C\u001F\u0000'],
		['letters with Alt', `${ESC}a${ESC}1${ESC}é${ESC}𝑥${ESC}\r`],
		['invisible and direction-changing characters', '\u200B\u202E\u2066\u2028\uFEFF\u00AD\uFFFD\uD800'],
	])('%s is dropped', (_, text) => {
		expect(keysOf(`1${text}2`)).toEqual(['1', '2']);
	});

	test('A sequence broken off by a line end loses itself only', () => {
		expect(keysOf(`${ESC}[12\r7`)).toEqual(['\r', '7']);
	});

	test('A paste is marked, its tabs are spaces, and its marks vanish', () => {
		const {keys, state} = splitKeys(`1${ESC}[200~2\t3\r\n\u007F${ESC}[A${ESC}[201~4`);
		expect(keys.map((entry) => entry.key)).toEqual(['1', '2', ' ', '3', '\r', '4']);
		expect(keys.map((entry) => entry.pasted)).toEqual([false, true, true, true, true, false]);
		expect(state.inPaste).toBe(false);
	});

	test('A carriage return and its line feed in two reads are one Enter', () => {
		expect(keysOfParts(['1\r', '\n2\r', '\n'])).toEqual(['1', '\r', '2', '\r']);
	});

	test('Escapes that nothing follows are Esc keys, half a sequence is none', () => {
		expect(keysOfRest(splitKeys(ESC).state.rest).map((entry) => entry.key)).toEqual([KEYS.escape]);
		expect(keysOfRest(splitKeys(ESC + ESC).state.rest)).toHaveLength(2);
		expect(keysOfRest(splitKeys(`${ESC}[1;`).state.rest)).toEqual([]);
	});
});

const SHAPES = fc.oneof(
	fc.constantFrom(...Object.values(KEYS).filter((key) => key !== KEYS.escape)),
	fc.string({unit: 'binary', maxLength: 4}),
	fc
		.tuple(fc.constantFrom('[', 'O', ']', 'P', '_', '^', 'X', ''), fc.string({maxLength: 6}))
		.map(([kind, body]) => ESC + kind + body),
	fc.constantFrom(`${ESC}[200~`, `${ESC}[201~`, '12.5\r', `${ESC}[1;5P`, '\u009B1m'),
);

describe('Whatever arrives', () => {
	const knownKeys = new Set<string>(Object.values(KEYS));

	test('only text and known keys come out', () => {
		fc.assert(
			fc.property(fc.array(SHAPES, {maxLength: 12}), (shapes) => {
				for (const key of keysOf(shapes.join(''))) {
					const isOneCharacter = [...key].length === 1;
					expect(knownKeys.has(key) || (isText(key) && isOneCharacter)).toBe(true);
				}
			}),
			{numRuns: 3000},
		);
	});

	test('it makes no difference where a read ends', () => {
		fc.assert(
			fc.property(fc.array(SHAPES, {maxLength: 8}), fc.array(fc.nat(40), {maxLength: 4}), (shapes, cuts) => {
				const characters = [...shapes.join('')];
				const places = [0, ...cuts.map((cut) => Math.min(cut, characters.length)), characters.length].sort(
					(a, b) => a - b,
				);
				const parts = places.slice(1).map((end, i) => characters.slice(places[i], end).join(''));
				expect(keysOfParts(parts)).toEqual(keysOf(characters.join('')));
			}),
			{numRuns: 3000},
		);
	});
});
