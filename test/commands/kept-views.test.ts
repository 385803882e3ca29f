import fs from 'node:fs';
import path from 'node:path';
import {beforeAll, beforeEach, describe, expect, it} from 'vitest';
import {runList} from '../../source/commands/list.js';
import {printRows} from '../../source/commands/list-rows.js';
import {OpenArchive} from '../../source/desk/archive.js';
import {storeOf} from '../../source/desk/stored-forms.js';
import {sealDocument} from '../../source/store/document.js';
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
	const next = {date: `2026-${10 + (index % 3)}-15`, because: 'In some months.'};
	return filed({at, next, arm: names[index % names.length] ?? '', outcome: index === 7 ? 'interrupted' : 'complete'});
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
const keepMarker = () => store().keepView('list', {mark: markOfList(data) ?? '', content: MARKER});

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
		[
			'a mark is damaged, in a file as large and as old as before',
			async () => {
				const file = path.join(data, 'remarks', `${idOf(3)}.json`);
				const setBack = () => fs.utimesSync(file, 1_700_000_000, 1_700_000_000);
				setBack();
				await keepMarker();
				change(file, (bytes) => bytesOf(bytes.toString('latin1').replace('the wrong arm', 'the right arm')));
				setBack();
			},
		],
		['what was noted is gone', () => fs.rmSync(path.join(data, 'remarks'), {recursive: true})],
		['the index of a month is gone', () => fs.rmSync(index('2026-02'))],
		[
			'a check was changed by hand, as a page of the list has found',
			async () => {
				const {checksum: _old, ...document} = JSON.parse(fs.readFileSync(checkFile(9), 'utf8'));
				document.record.check.answers['arm-name'].value = 'another deck';
				fs.writeFileSync(checkFile(9), sealDocument(document).text);
				const page = store();
				page.list({offset: 0, limit: COMPARED_ROWS});
				await page.tidy();
			},
		],
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

describe('The arms that the first screen tells of', () => {
	const clock = () => new Date('2026-11-20T10:00:00Z');
	const opened = () => new OpenArchive(data, clock);
	/** By all checks, whatever is kept. */
	const byAll = () => {
		const archive = opened();
		const states = archive.arms();
		return {arms: states.length, due: states.filter(({due}) => due && due.inDays <= 0).length};
	};
	const firstOf = (archive: OpenArchive) => {
		const {first} = archive.atAGlance();
		return first && {arm: first.arm, date: first.date, inDays: first.inDays};
	};
	const arms = () => path.join(data, 'index', 'view-arms');
	const keepMarkerArms = () =>
		store().keepView('arms', {mark: markOfList(data) ?? '', content: JSON.stringify([['kept', '2026', 'good', null]])});

	it('are kept in a quiet moment, and told as they were kept', async () => {
		const first = opened();
		expect(first.atAGlance()).toMatchObject(byAll());
		expect(fs.existsSync(arms())).toBe(false);
		await first.settle();
		expect(fs.existsSync(arms())).toBe(true);
		const second = opened();
		expect(second.atAGlance()).toMatchObject(byAll());
		expect(firstOf(second)).toEqual(firstOf(first));
		expect(firstOf(second)?.arm).toBe(first.arms()[0]?.name);
		await keepMarkerArms();
		// The profile stands for one, the mark for the other.
		expect(opened().atAGlance()).toEqual({arms: 2, due: 0, first: undefined});
	});

	it.each<[string, () => unknown]>([
		[
			'a check is filed',
			() => store().finish('20270101-080000-invented', filed({at: '2027-01-01T08:00:00Z', arm: 'x'})),
		],
		['the latest check of an arm is void', () => store().saveRemark(idOf(200), {void: {reason: 'twice', at: '2026'}})],
		['a check is removed', () => store().remove([idOf(200)])],
		['what is kept is damaged', () => fs.truncateSync(arms(), 100)],
		['what is kept is missing', () => fs.rmSync(arms())],
	])('are worked out anew where %s', async (_, happens) => {
		await keepMarkerArms();
		await happens();
		const archive = opened();
		expect(archive.atAGlance()).toMatchObject(byAll());
		expect(firstOf(archive)?.arm).toBe(archive.arms()[0]?.name);
	});

	it('go by the day and the profiles of now', async () => {
		const archive = opened();
		archive.atAGlance();
		await archive.settle();
		await store().saveProfiles({profiles: [armProfile('north deck', {setAside: true, formerNames: ['south deck']})]});
		expect(opened().atAGlance()).toMatchObject(byAll());
		const later = new OpenArchive(data, () => new Date('2026-12-24T10:00:00Z'));
		expect(later.atAGlance().due).toBe(later.arms().filter(({due}) => due && due.inDays <= 0).length);
	});

	it('are not kept where a check was filed meanwhile', async () => {
		const archive = opened();
		archive.atAGlance();
		await store().finish('20270101-080000-invented', filed({at: '2027-01-01T08:00:00Z'}));
		await archive.settle();
		expect(fs.existsSync(arms())).toBe(false);
	});

	it('are read anew within one run where something was filed or noted', async () => {
		const archive = opened();
		archive.atAGlance();
		const noted = await archive.markVoid(idOf(200), 'twice');
		expect(noted).toEqual({ok: true});
		expect(archive.atAGlance()).toMatchObject(byAll());
	});
});

it('The list of few checks is not kept', async () => {
	const few = await folderWith(records.slice(0, 3));
	for (let turn = 0; turn < 2; turn++) await printedBy(() => runList({as: 'text', data: few}));
	expect(fs.readdirSync(path.join(few, 'index')).filter((name) => !name.endsWith('.json'))).toEqual([]);
});
