import fs from 'node:fs';
import path from 'node:path';
import {beforeEach, describe, expect, it} from 'vitest';
import {sealDocument} from '../../source/store/document.js';
import {StoreError} from '../../source/store/store-error.js';
import {check, ID, newFolder, openTestStore, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

let folder: string;
const at = (name: string): string => path.join(folder, name);
const asides = (name = ''): string[] => fs.readdirSync(at(name)).filter((entry) => entry.includes('.damaged-'));
const start = () => openTestStore(folder);

beforeEach(async () => {
	folder = newFolder();
	const store = start();
	for (const answer of [1, 2, 3]) await store.saveDraft(check(answer));
});

/** Answer 3 is in file a, answer 2 in file b. */
const NEWEST = 'draft-a.json';
const OLDER = 'draft-b.json';

const expectOlderOffered = (bytes: Buffer) => {
	const found = start().draft();
	expect(found.check).toEqual(check(2));
	const savedAt = expect.stringMatching(/^\d\d:\d\d$/);
	const [aside, ...more] = asides();
	expect(more).toEqual([]);
	expect(aside).toMatch(/^draft-a\.json\.damaged-\d{4}-\d\d-\d\d-1$/);
	expect(found.notices).toMatchObject([
		{id: 'set-aside', values: {file: at(NEWEST), aside}},
		{id: 'older-copy', values: {file: at(OLDER), newest: 'damaged', savedAt}},
	]);
	expect(fs.readFileSync(at(aside ?? '')).equals(bytes)).toBe(true);
	fs.rmSync(at(aside ?? ''));
};

describe('a check in progress that was damaged on the disk', () => {
	it('is set aside and the older one offered, wherever it was cut', () => {
		const bytes = fs.readFileSync(at(NEWEST));
		for (let length = 0; length < bytes.length; length++) {
			fs.writeFileSync(at(NEWEST), bytes.subarray(0, length));
			expectOlderOffered(bytes.subarray(0, length));
		}
	});

	it('never shows another answer, whichever bit was turned', () => {
		const bytes = fs.readFileSync(at(NEWEST));
		for (let offset = 0; offset < bytes.length; offset++) {
			const turned = Buffer.from(bytes);
			turned[offset] = (turned[offset] ?? 0) ^ (1 << (offset % 8));
			fs.writeFileSync(at(NEWEST), turned);
			let answer: unknown;
			try {
				answer = start().draft().check?.answer;
			} catch (error) {
				// A turned bit can make the version a higher one: refused, and left alone.
				expect(error).toMatchObject({code: 'newer'});
				expect(fs.readFileSync(at(NEWEST)).equals(turned)).toBe(true);
				answer = 2;
			}
			expect(answer).toBe(2);
			for (const aside of asides()) fs.rmSync(at(aside));
		}
	});

	it.each([
		['blank', Buffer.from(' \n')],
		['full of zero bytes', Buffer.alloc(300)],
		['null', Buffer.from('null')],
		['a number', Buffer.from('42')],
		['a list', Buffer.from('[1]')],
		['of another program', Buffer.from('{"name":"x","version":1}')],
		['in the middle of a merge', Buffer.from('<<<<<<< ours\n{}\n=======\n{}\n>>>>>>> theirs\n')],
		['not UTF-8', Buffer.from([0x7b, 0x22, 0xe9, 0x22, 0x3a, 0x31, 0x7d])],
		['nested 100,000 deep', Buffer.from('['.repeat(100_000) + ']'.repeat(100_000))],
	])('is set aside when it is %s', (_, bytes) => {
		fs.writeFileSync(at(NEWEST), bytes);
		expectOlderOffered(bytes);
	});

	it('says when it is in UTF-16', () => {
		fs.writeFileSync(at(NEWEST), `\uFEFF${fs.readFileSync(at(NEWEST), 'utf8')}`, 'utf16le');
		expect(start().draft().notices[0]).toMatchObject({values: {damage: {id: 'utf-16'}}});
	});

	it('is not read into memory when it is far too large', () => {
		fs.truncateSync(at(NEWEST), 600 * 1024 * 1024);
		const {check: found, notices} = start().draft();
		expect(found?.answer).toBe(2);
		expect(notices[0]).toMatchObject({values: {damage: {id: 'too-large'}}});
	});

	it('is still read with the marks that an editor leaves: byte order mark, line ends, indents', () => {
		const laidOut = JSON.stringify(JSON.parse(fs.readFileSync(at(NEWEST), 'utf8')), undefined, '\t').replaceAll(
			'\n',
			'\r\n',
		);
		fs.writeFileSync(at(NEWEST), `\uFEFF${laidOut}`);
		expect(start().draft()).toMatchObject({check: check(3), notices: []});
	});

	it('is never overwritten when both files are damaged: both are kept, and an answer can be saved again', async () => {
		fs.writeFileSync(at(NEWEST), 'first');
		fs.writeFileSync(at(OLDER), 'second');
		const store = start();
		await store.saveDraft(check(4));
		expect(store.notices).toHaveLength(2);
		expect(
			asides()
				.map((name) => fs.readFileSync(at(name), 'utf8'))
				.sort(),
		).toEqual(['first', 'second']);
		expect(start().draft().check).toEqual(check(4));
	});

	it('gets a name of its own at every damage of the day', async () => {
		for (const text of ['one', 'two', 'three']) {
			fs.writeFileSync(at(NEWEST), text);
			start().draft();
		}
		expect(asides().map((name) => [name.slice(-2), fs.readFileSync(at(name), 'utf8')])).toEqual([
			['-1', 'one'],
			['-2', 'two'],
			['-3', 'three'],
		]);
	});

	it('is left in its place while another copy is writing', async () => {
		const lock = start().lock();
		fs.writeFileSync(at(NEWEST), 'torn');
		const found = start().draft();
		expect(found.check).toEqual(check(2));
		expect(found.notices[0]).toMatchObject({id: 'left-there', values: {file: at(NEWEST)}});
		expect(fs.readFileSync(at(NEWEST), 'utf8')).toBe('torn');
		if (lock.held) lock.release();
	});
});

describe('a damaged finished check', () => {
	beforeEach(async () => {
		await start().finish(ID, check(3));
		await start().finish('20261124-090000-healthy', check(7, '20261124-090000-healthy'));
	});

	it('is never shown with another figure, wherever it was cut or a bit was turned', () => {
		const file = at(`checks/${ID}.json`);
		const bytes = fs.readFileSync(file);
		for (let offset = 0; offset < bytes.length; offset++) {
			const turned = Buffer.from(bytes);
			turned[offset] = (turned[offset] ?? 0) ^ (1 << (offset % 8));
			for (const damaged of [turned, bytes.subarray(0, offset)]) {
				fs.writeFileSync(file, damaged);
				expect(start().record(ID)).toBeInstanceOf(StoreError);
				for (const aside of asides('checks')) {
					expect(fs.readFileSync(at(`checks/${aside}`)).equals(damaged)).toBe(true);
					fs.rmSync(at(`checks/${aside}`));
				}
			}
		}
	});

	it('is named in the list, which shows the rest', () => {
		fs.writeFileSync(at(`checks/${ID}.json`), 'torn');
		const {total, rows, notices} = start().list({offset: 0, limit: 10});
		expect(rows.map(({id}) => id)).toEqual(['20261124-090000-healthy']);
		expect(total).toBe(1);
		expect(notices).toHaveLength(1);
		expect(notices[0]?.values.file).toBe(at(`checks/${ID}.json`));
	});

	it.each(['__proto__', 'constructor'])(
		'with a key %s, though whole by its checksum, is set aside, and the key named',
		(key) => {
			const file = at(`checks/${ID}.json`);
			const {checksum: _old, ...document} = JSON.parse(fs.readFileSync(file, 'utf8'));
			const body = JSON.parse(JSON.stringify(document).replace('"note":', `"more":[{"${key}":{"answer":9}}],"note":`));
			fs.writeFileSync(file, sealDocument(body).text);
			const {rows, notices} = start().list({offset: 0, limit: 10});
			expect(rows.map(({id}) => id)).toEqual(['20261124-090000-healthy']);
			expect(notices).toMatchObject([
				{id: 'set-aside', values: {damage: {id: 'forbidden-key', values: {at: `record.more.0.${key}`}}}},
			]);
		},
	);

	it('nested too deeply in a part that nobody reads, though whole by its checksum, is set aside by name', () => {
		const file = at(`checks/${ID}.json`);
		const {checksum: _old, ...document} = JSON.parse(fs.readFileSync(file, 'utf8'));
		const deep = `${'[{"x":'.repeat(300)}1${'}]'.repeat(300)}`;
		const body = JSON.parse(JSON.stringify(document).replace('"note":', `"more":${deep},"note":`));
		fs.writeFileSync(file, sealDocument(body).text);
		const {notices} = start().list({offset: 0, limit: 10});
		expect(notices).toMatchObject([{id: 'set-aside', values: {file, damage: {id: 'too-deep'}}}]);
	});

	it('is refused under the name of another check', () => {
		fs.copyFileSync(at(`checks/${ID}.json`), at('checks/20261125-100000-copied.json'));
		expect(start().record('20261125-100000-copied')).toBeInstanceOf(StoreError);
	});
});

describe('damaged profiles, settings and remarks', () => {
	it('fall back to the copy before, and nothing is wiped', async () => {
		const store = start();
		await store.saveSettings({bell: true});
		await store.saveSettings({bell: false});
		fs.truncateSync(at('settings-b.json'), 20);
		const found = start().settings();
		expect(found.value).toEqual({bell: true});
		expect(found.notices).toHaveLength(2);
		expect(asides()).toHaveLength(1);
	});

	it('a damaged remark is said and kept aside when a new one is saved', async () => {
		const store = start();
		await store.saveRemark(ID, {void: true});
		fs.writeFileSync(at(`remarks/${ID}.json`), 'torn');
		expect(store.remark(ID)).toBeInstanceOf(StoreError);
		await store.saveRemark(ID, {void: false});
		expect(store.remark(ID)).toEqual({void: false});
		expect(fs.readFileSync(at(`remarks/${asides('remarks')[0]}`), 'utf8')).toBe('torn');
	});
});
