import fs from 'node:fs';
import path from 'node:path';
import {beforeEach, describe, expect, it} from 'vitest';
import {sealDocument} from '../../source/store/document.js';
import {check, newFolder, openTestStore, removeFoldersAfterwards, summaryOf} from './support.js';

removeFoldersAfterwards();

let folder: string;
const MONTHS = ['202609', '202610', '202611'];
const ids = MONTHS.flatMap((month) => ['03', '17'].map((day) => `${month}${day}-080000-invented`));
const newestFirst = [...ids].sort().reverse();
const all = {offset: 0, limit: 1000};
const indexFile = (month: string): string => path.join(folder, 'index', `${month}.json`);
const listed = () => openTestStore(folder).list(all);

beforeEach(async () => {
	folder = newFolder();
	const store = openTestStore(folder);
	for (const [answer, id] of ids.entries()) await store.finish(id, check(answer, id));
});

describe('the list of past checks', () => {
	it('is newest first and can be had page by page', () => {
		const store = openTestStore(folder);
		expect(listed()).toMatchObject({total: 6, notices: []});
		expect(listed().rows.map(({id}) => id)).toEqual(newestFirst);
		for (let offset = 0; offset < 8; offset += 2) {
			const page = store.list({offset, limit: 2});
			expect(page.total).toBe(6);
			expect(page.rows.map(({id}) => id)).toEqual(newestFirst.slice(offset, offset + 2));
		}
	});

	it('is the same whether it comes from the index or from the checks themselves', async () => {
		const before = listed();
		expect(before.rows).toContainEqual(summaryOf(check(3, ids[3])));
		fs.rmSync(path.join(folder, 'index'), {recursive: true});
		expect(listed()).toEqual(before);
		expect(fs.existsSync(path.join(folder, 'index'))).toBe(false);
		const store = openTestStore(folder);
		store.list(all);
		await store.tidy();
		expect(fs.readdirSync(path.join(folder, 'index')).sort()).toEqual(['2026-09.json', '2026-10.json', '2026-11.json']);
		expect(listed()).toEqual(before);
	});

	it.each([
		['damaged', '{"kind"'],
		['of another program', '{}'],
		[
			'sound but with rows of another shape',
			sealDocument({kind: 'armdrift-index', version: 1, rows: [1, [2], {}]}).text,
		],
		['of a newer version', sealDocument({kind: 'armdrift-index', version: 9, rows: 'to come'}).text],
	])('does not mind an index that is %s', (_, text) => {
		const before = listed();
		fs.writeFileSync(indexFile('2026-10'), text);
		expect(listed()).toEqual(before);
	});

	it('never believes rows that were changed, though each of them is of the right form', async () => {
		const before = listed();
		const whole = fs.readFileSync(indexFile('2026-10'), 'utf8');
		const changed = whole.replaceAll('"good"', '"beyond"');
		expect(changed).not.toBe(whole);
		fs.writeFileSync(indexFile('2026-10'), changed);
		expect(listed()).toEqual(before);
		const store = openTestStore(folder);
		store.list(all);
		await store.tidy();
		expect(fs.readFileSync(indexFile('2026-10'), 'utf8')).toBe(whole);
	});

	it('leaves an index of a newer version as it is, and still finishes checks', async () => {
		const {text} = sealDocument({kind: 'armdrift-index', version: 9, rows: 'to come'});
		fs.writeFileSync(indexFile('2026-10'), text);
		const store = openTestStore(folder);
		const id = '20261028-080000-invented';
		await store.finish(id, check(9, id));
		await store.tidy();
		expect(fs.readFileSync(indexFile('2026-10'), 'utf8')).toBe(text);
		expect(listed().rows.map((row) => row.id)).toContain(id);
	});

	it('follows the folder: a check brought back or taken away by hand is seen', () => {
		const [first = ''] = ids;
		const file = path.join(folder, 'checks', `${first}.json`);
		const bytes = fs.readFileSync(file);
		fs.rmSync(file);
		expect(listed()).toMatchObject({total: 5, notices: []});
		fs.writeFileSync(file, bytes);
		expect(listed()).toMatchObject({total: 6, notices: []});
	});

	it('passes over what is none of its files', () => {
		for (const name of ['notes.txt', '.hidden', `${ids[0]}.json.damaged-2026-11-25-1`, 'copy of a check.json']) {
			fs.writeFileSync(path.join(folder, 'checks', name), 'x');
		}
		expect(listed()).toMatchObject({total: 6, notices: []});
	});

	it('changes nothing on the disk', () => {
		const marks = () =>
			fs.readdirSync(folder, {recursive: true}).map((name) => fs.lstatSync(path.join(folder, String(name))).mtimeMs);
		fs.rmSync(indexFile('2026-09'));
		const before = marks();
		listed();
		expect(marks()).toEqual(before);
	});
});
