import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import {beforeEach, describe, expect, it} from 'vitest';
import {forbiddenKeyIn} from '../../source/store/forbidden-key.js';
import {LineFile} from '../../source/store/line-file.js';
import type {Damage} from '../../source/store/store-fault.js';
import {faulty, newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let file: string;
beforeEach(() => {
	file = path.join(newFolder(), 'lines.jsonl');
});

const opened = <T>(text: string | Buffer, read: (lines: LineFile) => T): T => {
	fs.writeFileSync(file, text);
	const lines = new LineFile(file);
	try {
		return read(lines);
	} finally {
		lines.close();
	}
};

/** All objects of all lines that are not blank. */
const objects = (text: string | Buffer): unknown[] =>
	opened(text, (lines) => [...lines.lines()].map((span) => lines.object(span)).filter((one) => one !== undefined));
const whole = (text: string | Buffer): unknown => opened(text, (lines) => lines.whole());

const isJsonObject = (text: string): boolean => {
	try {
		const value: unknown = JSON.parse(text);
		return typeof value === 'object' && value !== null && !Array.isArray(value);
	} catch {
		return false;
	}
};

const notObject = (line: number): Damage => ({id: 'not-object', values: {line}});
const unusable = (damage: Damage) => faulty('unusable', {file, damage});

describe('A file that is read line by line', () => {
	it('has in its lines what a parser finds in each, however they end, but for keys that are refused', () => {
		const values = fc.array(fc.dictionary(fc.string({unit: 'binary'}), fc.jsonValue()), {minLength: 1});
		fc.assert(
			fc.property(values, fc.constantFrom('\n', '\r\n', ' \n\n', '\r\n \r\n'), fc.boolean(), (list, end, isEnded) => {
				// JSON knows no negative zero.
				const text = list.map((value) => JSON.stringify(value)).join(end) + (isEnded ? end : '');
				const parsed = list.map((value) => JSON.parse(JSON.stringify(value)));
				if (list.some((value) => forbiddenKeyIn(JSON.stringify(value), value) !== undefined)) {
					expect(() => objects(text)).toThrow(unusable(expect.objectContaining({id: 'forbidden-key'})));
					return;
				}
				expect(objects(text)).toEqual(parsed);
				if (list.length === 1) expect(whole(text)).toEqual(parsed[0]);
			}),
			{numRuns: 300},
		);
	});

	it('is refused wherever a parser refuses a line, after any one letter was changed, added or lost', () => {
		const value = {kind: 'x', list: [1, 'a"]', {b: [true, null]}, [], '\\'], none: {}, text: '}{,:'};
		const text = JSON.stringify(value);
		const letters = fc.constantFrom('{', '}', '[', ']', '"', ',', ':', '\\', ' ', '1', 'x', '');
		fc.assert(
			fc.property(fc.nat(text.length), fc.nat(1), letters, (at, lost, letter) => {
				const other = text.slice(0, at) + letter + text.slice(at + lost);
				if (isJsonObject(other)) expect(objects(`{}\n${other}\n`)).toEqual([{}, JSON.parse(other)]);
				else expect(() => objects(`{}\n${other}\n`)).toThrow(unusable(notObject(2)));
			}),
			{numRuns: 2000},
		);
	});

	it('is read across the borders of the pieces that are in memory at a time', () => {
		const values = Array.from({length: 40}, (_, index) => ({text: `${'é"\\'.repeat(9000 + index)}`}));
		expect(objects(values.map((value) => `${JSON.stringify(value)}\n`).join(''))).toEqual(values);
	});

	it('has a place for every line, so that one can be read again', () => {
		opened('{"a":1}\n\n{"b":2}', (lines) => {
			const [first, , third] = [...lines.lines()];
			expect(third && lines.object(third)).toEqual({b: 2});
			expect(first && lines.object(first)).toEqual({a: 1});
			expect(third?.line).toBe(3);
		});
	});

	it('may begin with a byte order mark', () => {
		expect(objects('\uFEFF{"a":1}')).toEqual([{a: 1}]);
		expect(whole('\uFEFF{"a":1}')).toEqual({a: 1});
	});

	it.each<[string, string | Buffer, Damage]>([
		['empty', '', {id: 'empty', values: {}}],
		['a list', '[1]', notObject(1)],
		['a text in the second line', '{"a":1}\n"b"\n', notObject(2)],
		['followed by something', '{"a":1}\n{"a":1} {}', notObject(2)],
		['in UTF-16', Buffer.from('\uFEFF{"a":1}', 'utf16le'), {id: 'utf-16', values: {}}],
		['not UTF-8', Buffer.from('{}\n{"a":"\xe9"}', 'latin1'), {id: 'not-utf-8', values: {line: 2}}],
	])('is refused when it is %s', (_, text, damage) => {
		expect(() => objects(text)).toThrow(unusable(damage));
	});

	it('does not take a line into memory that is far too long', () => {
		fs.writeFileSync(file, '{}\n{');
		fs.truncateSync(file, 600 * 1024 * 1024);
		const lines = new LineFile(file);
		const [, second] = [...lines.lines()];
		expect(() => second && lines.object(second)).toThrow(unusable({id: 'part-too-large', values: {}}));
		lines.close();
	});
});

describe('A file that is read whole', () => {
	it.each<[string, string | Buffer, Damage]>([
		['cut short', '{"a":\n[1,\n2', notObject(3)],
		['wrong inside', '{"a":1,\n"b":{"c" 1}}', notObject(2)],
		['a list', '\n[1]', notObject(1)],
		['no JSON from a line on', '{"a": [\n1,\nx,\n2]}', notObject(3)],
		['not UTF-8', Buffer.from('{\n"a":"\xe9"}', 'latin1'), {id: 'not-utf-8', values: {line: 2}}],
	])('is refused when it is %s', (_, text, damage) => {
		expect(() => whole(text)).toThrow(unusable(damage));
	});

	it('is refused where it is larger than a text can be', () => {
		fs.writeFileSync(file, '{\n');
		fs.truncateSync(file, 3 * 1024 ** 3);
		const lines = new LineFile(file);
		const damage = expect.objectContaining({id: 'whole-too-large'});
		expect(() => lines.whole()).toThrow(faulty('unusable', {file, damage}));
		lines.close();
	});
});

describe('A file to be read', () => {
	it('is wanted as a plain file', () => {
		const folder = path.dirname(file);
		expect(() => new LineFile(folder)).toThrow(faulty('source-not-plain', {file: folder}));
		expect(() => new LineFile(`${file}.none`)).toThrow(faulty('no-file', {file: `${file}.none`}));
		expect(() => new LineFile('/dev/zero')).toThrow(faulty('source-not-plain', {file: '/dev/zero'}));
	});

	it('tells when it is another file by now', () => {
		opened('{"a":1}', (lines) => {
			expect(lines.isUnchanged()).toBe(true);
			fs.writeFileSync(file, '{"a":12}');
			expect(lines.isUnchanged()).toBe(false);
		});
	});
});
