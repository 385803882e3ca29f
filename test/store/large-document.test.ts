import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import {beforeEach, describe, expect, it} from 'vitest';
import {LargeDocument} from '../../source/store/large-document.js';
import {newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let file: string;
beforeEach(() => {
	file = path.join(newFolder(), 'document.json');
});

const opened = <T>(text: string | Buffer, read: (document: LargeDocument) => T): T => {
	fs.writeFileSync(file, text);
	const document = new LargeDocument('The export', file);
	try {
		return read(document);
	} finally {
		document.close();
	}
};

/** All of it, put together again from its parts. */
const whole = (text: string | Buffer): Record<string, unknown> =>
	opened(text, (document) =>
		Object.fromEntries(
			document.keys.map((key) => {
				const elements = document.list(key)?.map((span) => document.element(span));
				return [key, elements ?? document.value(key)];
			}),
		),
	);

const isJsonObject = (text: string): boolean => {
	try {
		const value: unknown = JSON.parse(text);
		return typeof value === 'object' && value !== null && !Array.isArray(value);
	} catch {
		return false;
	}
};

const layouts = fc.constantFrom(undefined, 1, '\t', '\r\n ');

describe('A document read part by part', () => {
	it('has in its parts what a parser finds in the whole, however it is laid out', () => {
		fc.assert(
			fc.property(fc.dictionary(fc.string({unit: 'binary'}), fc.jsonValue()), layouts, (value, layout) => {
				// JSON knows no negative zero, and `__proto__` is a key like any other in it.
				const text =
					layout === '\r\n '
						? JSON.stringify(value, null, 1).replaceAll('\n', '\r\n ')
						: JSON.stringify(value, null, layout);
				expect(whole(text)).toEqual(JSON.parse(text));
			}),
			{numRuns: 300},
		);
	});

	it('is refused wherever a parser refuses the whole, after any one letter was changed, added or lost', () => {
		const value = {kind: 'x', list: [1, 'a"]', {b: [true, null]}, [], '\\'], none: {}, text: '}{,:'};
		const text = JSON.stringify(value);
		const letters = fc.constantFrom('{', '}', '[', ']', '"', ',', ':', '\\', ' ', '1', 'x', '');
		fc.assert(
			fc.property(fc.nat(text.length), fc.nat(1), letters, (at, lost, letter) => {
				const other = text.slice(0, at) + letter + text.slice(at + lost);
				if (isJsonObject(other)) {
					// The same key twice is JSON, and refused here.
					if (new Set(Object.keys(JSON.parse(other))).size === 4) expect(whole(other)).toEqual(JSON.parse(other));
				} else expect(() => whole(other)).toThrow(/not a whole JSON object \(line 1\)/);
			}),
			{numRuns: 2000},
		);
	});

	it('is read across the borders of the pieces that are in memory at a time', () => {
		const value = {list: Array.from({length: 40}, (_, index) => `${'é"\\'.repeat(9000 + index)}`), last: 1};
		expect(whole(JSON.stringify(value))).toEqual(value);
	});

	it('may begin with a byte order mark', () => {
		expect(whole('\uFEFF{"a":1}')).toEqual({a: 1});
	});

	it.each<[string, string | Buffer, RegExp]>([
		['empty', '', /it is empty/],
		['a list', '[1]', /not a whole JSON object \(line 1\)/],
		['cut short', '{"a":\n[1,\n2', /not a whole JSON object \(line 3\)/],
		['wrong inside', '{"a":1,\n"b":{"c" 1}}', /not a whole JSON object \(line 2\)/],
		['followed by something', '{"a":1} {}', /not a whole JSON object/],
		['twofold in a key', '{"a":1,"\\u0061":2}', /the key "a" stands in it twice/],
		['in UTF-16', Buffer.from('\uFEFF{"a":1}', 'utf16le'), /UTF-16/],
		['not UTF-8', Buffer.from([0x7b, 0x22, 0x61, 0x22, 0x3a, 0x22, 0xe9, 0x22, 0x7d]), /not UTF-8 \(line 1\)/],
	])('is refused in one sentence when it is %s', (_, text, sentence) => {
		const said = (): unknown => {
			try {
				return whole(text);
			} catch (error) {
				return error;
			}
		};
		expect(said()).toMatchObject({code: 'damaged', file, sentence: expect.stringMatching(sentence)});
	});

	it('is wanted as a plain file', () => {
		expect(() => new LargeDocument('The export', path.dirname(file))).toThrow(/wanted as a plain file/);
		expect(() => new LargeDocument('The export', `${file}.none`)).toThrow(/^There is no file/);
		expect(() => new LargeDocument('The export', '/dev/zero')).toThrow(/wanted as a plain file/);
	});

	it('tells when it is another file by now', () => {
		opened('{"a":1}', (document) => {
			expect(document.isUnchanged()).toBe(true);
			fs.writeFileSync(file, '{"a":12}');
			expect(document.isUnchanged()).toBe(false);
		});
	});
});
