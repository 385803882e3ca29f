import fs from 'node:fs';
import path from 'node:path';
import {beforeAll, beforeEach, describe, expect, it} from 'vitest';
import {runList} from '../../source/commands/list.js';
import {printRows} from '../../source/commands/list-rows.js';
import {storeOf} from '../../source/desk/stored-forms.js';
import {COMPARED_ROWS} from '../../source/store/history.js';
import {markOfList} from '../../source/store/kept-view.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {printedBy} from '../helpers/printed.js';
import {freshFolder} from '../helpers/program-environment.js';

const names = ['north deck', 'south deck', '横田 arm', 'red \u001B[31m\narm', 'a longer name of an arm'];
const HOUR_MS = 3_600_000;
/** Of several arms, at times of several months, some on one day, one of them interrupted. */
const records = Array.from({length: COMPARED_ROWS + 1}, (_, index) => {
	const at = new Date(Date.UTC(2026, 0, 1) + index * 17 * HOUR_MS).toISOString();
	return filed({at, arm: names[index % names.length] ?? '', outcome: index === 7 ? 'interrupted' : 'complete'});
});
const idOf = (index: number): string => records[index]?.check.id ?? '';

let original = '';
let data = '';
beforeAll(async () => {
	original = await folderWith(records, {
		profiles: [armProfile('bench deck', {formerNames: ['north deck']})],
		voids: {[idOf(3)]: 'the wrong arm'},
	});
}, 120_000);
beforeEach(() => {
	data = freshFolder();
	fs.cpSync(original, data, {recursive: true, preserveTimestamps: true});
});

const store = () =>
	storeOf(
		data,
		() => new Date(),
		() => {},
	);
const list = () => printedBy(() => runList({as: 'text', data}));
/** The list worked out from the rows, whatever is kept. */
const workedOut = () => printedBy(() => printRows({as: 'text', data}));
const view = () => path.join(data, 'index', 'view-list');
const MARKER = 'as it was kept\n';
/** Keeps something that no list says, so that it can be told whether what is kept is printed. */
const keepMarker = () => store().keepList({mark: markOfList(data) ?? '', content: MARKER});

describe('The whole list of many checks', () => {
	it('is kept as it was printed, and printed as it was kept', async () => {
		const wanted = await workedOut();
		expect(wanted.out.split('\n')).toHaveLength(records.length + 1);
		expect(fs.existsSync(view())).toBe(false);
		expect(await list()).toEqual(wanted);
		expect(fs.existsSync(view())).toBe(true);
		expect(await list()).toEqual(wanted);
		await keepMarker();
		expect(await list()).toEqual({status: 0, out: MARKER, faults: ''});
	});

	it('is kept for this user alone', async () => {
		await list();
		expect(fs.statSync(view()).mode & 0o777).toBe(0o600);
		expect(fs.readdirSync(path.dirname(view())).filter((name) => name.includes('part'))).toEqual([]);
	});

	it.each([
		{arm: 'south deck'},
		{verdict: 'beyond'},
		{since: '2026'},
		{until: '2027'},
		{limit: 300},
		{as: 'json'},
		{as: 'json', limit: 3},
	])('is not what is kept where something else is asked for: %j', async (options) => {
		await keepMarker();
		const whole = {as: 'text', data, ...options};
		expect(await printedBy(() => runList(whole))).toEqual(await printedBy(() => printRows(whole)));
	});

	const index = (month: string) => path.join(data, 'index', `${month}.json`);
	const checkFile = (place: number) => path.join(data, 'checks', `${idOf(place)}.json`);
	const change = (file: string, how: (bytes: Buffer) => Buffer) => fs.writeFileSync(file, how(fs.readFileSync(file)));
	const bytesOf = (text: string) => Buffer.from(text, 'latin1');

	it.each<[string, () => unknown]>([
		['a check is filed', () => store().finish('20270101-080000-invented', filed({at: '2027-01-01T08:00:00Z'}))],
		['a check is brought in', () => store().add('20270101-080000-invented', filed({at: '2027-01-01T08:00:00Z'}))],
		['a check is removed', () => store().remove([idOf(9)])],
		['a check is taken away by hand', () => fs.rmSync(checkFile(9))],
		['a file of another name is put beside the checks', () => fs.writeFileSync(`${checkFile(9)}.txt`, '')],
		['a check is void', () => store().saveRemark(idOf(20), {void: {reason: 'twice', at: '2026-12-01T10:00:00Z'}})],
		['a void one counts again', () => store().saveRemark(idOf(3), {formerVoids: []})],
		['a deck was put back', () => store().saveRemark(idOf(7), {putBackAt: '2026-12-01T10:00:00Z'})],
		['what was noted is gone', () => fs.rmSync(path.join(data, 'remarks'), {recursive: true})],
		['the index of a month is gone', () => fs.rmSync(index('2026-02'))],
		['the index of a month is damaged', () => change(index('2026-02'), (bytes) => bytes.subarray(0, 99))],
		['what is kept is cut short', () => change(view(), (bytes) => bytes.subarray(0, -1))],
		['what is kept is longer', () => change(view(), (bytes) => Buffer.concat([bytes, bytesOf('x')]))],
		[
			'a letter of it is changed',
			() => change(view(), (bytes) => bytesOf(bytes.toString('latin1').replace('kept', 'held'))),
		],
		['it is empty', () => fs.writeFileSync(view(), '')],
		['it is something else', () => fs.writeFileSync(view(), '{}')],
		[
			'another program kept it',
			() => change(view(), (bytes) => bytesOf(bytes.toString('latin1').replace(/"program":"\w/, '"program":"x'))),
		],
		[
			'it is a link',
			() => {
				fs.renameSync(view(), path.join(data, 'elsewhere'));
				fs.symlinkSync(path.join(data, 'elsewhere'), view());
			},
		],
	])('is worked out anew where %s', async (_, happens) => {
		await keepMarker();
		await happens();
		const {out, ...rest} = await list();
		expect(out).not.toBe(MARKER);
		expect(out.split('\n').length).toBeGreaterThan(COMPARED_ROWS);
		expect({out, ...rest}).toEqual(await workedOut());
	});

	it('keeps nothing where a check cannot be read, and says so each time', async () => {
		fs.writeFileSync(path.join(data, 'checks', '20270101-080000-damaged.json'), '{');
		const lock = store().lock();
		const [first, second] = [await list(), await list()];
		if (lock.held) lock.release();
		expect(first.faults).not.toBe('');
		expect(second).toEqual(first);
		expect(fs.existsSync(view())).toBe(false);
	});

	it('is printed all the same where nothing can be kept', async () => {
		const wanted = await workedOut();
		fs.mkdirSync(view());
		expect(await list()).toEqual(wanted);
		const lock = store().lock();
		fs.rmdirSync(view());
		expect(await list()).toEqual(wanted);
		expect(fs.existsSync(view())).toBe(false);
		if (lock.held) lock.release();
	});

	it('leaves nothing of a check that is removed for good', async () => {
		await list();
		expect(fs.readFileSync(view(), 'utf8')).toContain(idOf(9));
		await store().remove([idOf(9)]);
		expect(fs.existsSync(view())).toBe(false);
	});
});

it('The list of few checks is not kept', async () => {
	const few = await folderWith(records.slice(0, 3));
	for (let turn = 0; turn < 2; turn++) await printedBy(() => runList({as: 'text', data: few}));
	expect(fs.readdirSync(path.join(few, 'index')).filter((name) => !name.endsWith('.json'))).toEqual([]);
});
