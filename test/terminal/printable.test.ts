import fc from 'fast-check';
import stringWidth from 'string-width';
import {describe, expect, test} from 'vitest';
import {printable} from '../../source/terminal/printable.js';

describe('A foreign text is shown safely', () => {
	test.each([
		['plain text', 'Bench 3, "left" arm', 'Bench 3, "left" arm'],
		['accents, Greek, CJK and emoji', 'Zoë µ 漢字 👩‍👩‍👧 ❤️', 'Zoë µ 漢字 👩‍👩‍👧 ❤️'],
		['Persian with its joiners', 'می‌خواهم', 'می‌خواهم'],
		['a new line, a return and a tab', 'a\nb\rc\td', 'a\\nb\\rc\\td'],
		['a colour', 'a\u001B[31mb', 'a\\x1b[31mb'],
		['a bell, a backspace and a null', '\u0007\b\u0000', '\\x07\\x08\\x00'],
		['8-bit controls', '\u009B31m\u0085', '\\x9b31m\\x85'],
		['a window title', 'a\u001B]0;title\u0007b', 'ab'],
		['a clipboard write', 'a\u001B]52;c;QQ==\u001B\\b', 'ab'],
		['a clipboard write without an end', 'a\u001B]52;c', 'a\\x1b]52;c'],
		['a device control string of 8 bits', 'a\u0090q\u009Cb', 'ab'],
		['an override of direction', 'abc\u202Etxt', 'abc\\u{202e}txt'],
		['isolates and marks of direction', '\u2066\u200F', '\\u{2066}\\u{200f}'],
		['spaces of no width', 'a\u200Bb\uFEFFc', 'a\\u{200b}b\\u{feff}c'],
		['a joiner that joins nothing', 'a\u200Db', 'a\\u{200d}b'],
		['line and paragraph separators', 'a\u2028b\u2029', 'a\\u{2028}b\\u{2029}'],
		['half a pair', 'a\uD800b', 'a\\u{d800}b'],
		['a tower of marks', `a${'\u0301'.repeat(1000)}`, `a${'\u0301'.repeat(8)}`],
	])('%s', (_, text, shown) => {
		expect(printable(text)).toBe(shown);
	});

	test.each([
		['one two three', 8, 'one two…'],
		['one two', 7, 'one two'],
		['漢字漢字', 6, '漢字…'],
		['ab👩‍👩‍👧cd', 4, 'ab…'],
		['ab👩‍👩‍👧cd', 5, 'ab👩‍👩‍👧…'],
		['abc', 1, '…'],
		['abc', 0, ''],
	])('%j cut to %j columns', (text, width, shown) => {
		expect(printable(text, width)).toBe(shown);
	});

	test('whatever it is, it has no controls and keeps to its width', () => {
		fc.assert(
			fc.property(fc.string({unit: 'binary'}), fc.integer({min: 0, max: 30}), (text, width) => {
				const shown = printable(text, width);
				expect(shown).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u202A-\u202E\u2066-\u2069]/u);
				expect(stringWidth(shown)).toBeLessThanOrEqual(width);
			}),
			{numRuns: 3000},
		);
	});
});
