import {mkdirSync, readdirSync, renameSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeEach, describe, expect, it} from 'vitest';
import {runDue} from '../../source/commands/due.js';
import {runExport} from '../../source/commands/export.js';
import {runList} from '../../source/commands/list.js';
import {runReport} from '../../source/commands/report.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {StoreError} from '../../source/store/store-error.js';
import {storeText} from '../../source/words/store-text.js';
import {filed, folderWith} from '../helpers/filed-checks.js';
import {printedBy} from '../helpers/printed.js';
import {words} from '../helpers/said.js';

const dates = {early: '2026-05-20', late: '2026-11-21'};
const first = filed({at: '2025-11-20T10:00:00+01:00', next: {date: dates.early, because: 'In six months.'}});
const second = filed({
	at: '2026-05-21T10:00:00+02:00',
	outcome: 'interrupted',
	next: {date: dates.late, because: 'In six months.'},
});
const id = second.check.id;

let data = '';
const fileOf = (of = id) => path.join(data, 'remarks', `${of}.json`);
beforeEach(async () => {
	data = await folderWith([first, second], {voids: {[id]: 'the wrong arm'}});
});

const list = (options: Partial<Parameters<typeof runList>[0]> = {}) =>
	printedBy(() => runList({as: 'text', data, ...options}));
const bench = () => new OpenWorkbench({dataDir: data, version: '0.0.0'});
const {state} = words.beside.past;
const unknown = state({outcome: 'complete', verdict: 'beyond', isVoidUnknown: true});

/** What is to be said of the remark on the later check. */
const said = (): string => {
	const remark = bench().archive.store.remark(id);
	if (!(remark instanceof StoreError)) throw new Error('It can be read.');
	return words.commands.desk.countsNotKnown({sentence: storeText(remark.fault), ofAll: false});
};

const faults: readonly (readonly [string, () => void])[] = [
	['that is cut short', () => writeFileSync(fileOf(), '{"checksum":"0000')],
	[
		'in whose place a folder stands',
		() => {
			rmSync(fileOf());
			mkdirSync(fileOf());
		},
	],
	['of another check', () => writeFileSync(fileOf(), '{}')],
];

describe.each(faults)('A check beside which stands a remark %s', (_what, damage) => {
	beforeEach(damage);

	it('is in a state of its own in the list, which says why, with the way out', async () => {
		const {out, faults: told, status} = await list();
		expect([status, told]).toEqual([0, `${said()}\n`]);
		const [line = '', other = ''] = out.split('\n');
		expect(line).toContain(`  ${unknown}  `);
		expect(other).not.toContain(unknown);
		const json: unknown = JSON.parse((await list({as: 'json'})).out);
		expect(json).toMatchObject([{id, isVoidUnknown: true, voidBecause: null}, {isVoidUnknown: false}]);
	});

	it('is among none of those that came to a verdict', async () => {
		expect((await list({verdict: 'beyond'})).out).not.toContain(id);
	});

	it('gives no date for the next check, and that is said', async () => {
		const {out, faults: told} = await printedBy(() => runDue({data}));
		expect(out).toContain(dates.early);
		expect(out).not.toContain(dates.late);
		expect(told).toBe(`${said()}\n`);
	});

	it('is not the one that is reported on, and says so where it is named', async () => {
		const report = (named?: string) => printedBy(() => runReport({data, as: 'markdown', version: '0.0.0', id: named}));
		const newest = await report();
		expect(newest.out).toContain(first.check.id);
		expect(newest.faults).toBe(`${said()}\n`);
		expect((await report(id)).out).toContain(words.results.voidUnknown);
		expect((await report(first.check.id)).out).not.toContain(words.results.voidUnknown);
		const ofArm = await printedBy(() => runReport({data, as: 'markdown', version: '0.0.0', arm: 'north deck'}));
		expect(ofArm.out).toContain(words.results.voidUnknown);
	});

	it('is left out of comparisons and trend; home and its own page say why', () => {
		const workbench = bench();
		expect(workbench.archive.ofArm('north deck').map((one) => one.id)).toEqual([first.check.id]);
		expect(workbench.archive.arms()[0]?.last?.id).toBe(first.check.id);
		expect(workbench.notices()).toEqual([said()]);
		expect(workbench.archive.record(id)).toMatchObject({ok: true, unknownBecause: said()});
		expect(workbench.archive.past({offset: 0, limit: 1, only: {verdict: 'not-known'}})).toMatchObject({
			total: 1,
			rows: [{id}],
			notices: [said()],
		});
	});

	it('is neither void nor not void in an exported table', async () => {
		const {out} = await printedBy(() => runExport({data, as: 'csv', version: '0.0.0'}));
		const [header = '', ...rows] = out.split('\r\n');
		const at = (row: string, column: string) => row.split(',')[header.split(',').indexOf(column)];
		expect(at(rows.find((row) => row.startsWith(id)) ?? '', 'void')).toBe('');
		expect(at(rows.find((row) => row.startsWith(first.check.id)) ?? '', 'void')).toBe('no');
	});

	it('is not put back as long as that would take the mark away', async () => {
		expect(await bench().reopen(id)).toMatchObject({ok: false, locked: false});
		expect(readdirSync(path.join(data, 'remarks'))).toEqual([`${id}.json`]);
	});
});

describe('Where a damaged remark stands beside a check', () => {
	beforeEach(() => writeFileSync(fileOf(), '{"checksum":"0000'));

	it.each(['void', 'counting'] as const)(
		'a person can say that it is %s, and the damaged file is kept',
		async (wanted) => {
			const workbench = bench();
			workbench.archive.arms();
			const {archive} = workbench;
			const done = wanted === 'void' ? await archive.markVoid(id, 'draught') : await archive.countAgain(id);
			expect(done).toEqual({ok: true});
			const [row] = archive.past({offset: 0, limit: 1}).rows;
			expect(row?.isVoidUnknown).toBeUndefined();
			expect(row?.voidBecause).toBe(wanted === 'void' ? 'draught' : undefined);
			archive.arms();
			expect(
				workbench
					.notices()
					.some((one) => one.includes(words.commands.desk.countsNotKnown({sentence: '', ofAll: false}))),
			).toBe(false);
			expect(readdirSync(path.join(data, 'remarks')).filter((name) => name.includes('.damaged-'))).toHaveLength(1);
		},
	);
});

describe('Where a file stands in the place of the folder of remarks', () => {
	beforeEach(() => {
		renameSync(path.join(data, 'remarks'), path.join(data, 'away'));
		writeFileSync(path.join(data, 'remarks'), 'a file');
	});

	it('no check is known to count, and that is said once', async () => {
		const {out, faults: told, status} = await list();
		expect(status).toBe(0);
		expect(
			out
				.split('\n')
				.slice(0, -1)
				.every((line) => line.includes(unknown)),
		).toBe(true);
		expect(told.split('\n')).toHaveLength(2);
		expect(told).toContain(path.join(data, 'remarks'));
		const due = await printedBy(() => runDue({data}));
		expect([due.out, due.faults.split('\n')[0]]).toEqual(['', told.trim()]);
	});
});

it('Damaged profiles are said by the commands that go by them', async () => {
	for (const letter of ['a', 'b']) writeFileSync(path.join(data, `profiles-${letter}.json`), '{}');
	const {faults: told} = await printedBy(() => runDue({data}));
	expect(told).toContain('profiles-a.json');
});

describe('Where past checks cannot be read', () => {
	it('a file in the place of their folder is said at home, and nothing is repeated', async () => {
		rmSync(path.join(data, 'checks'), {recursive: true});
		writeFileSync(path.join(data, 'checks'), 'a file');
		const workbench = bench();
		expect(workbench.archive.arms()).toEqual([]);
		expect(workbench.notices()).toEqual([expect.stringContaining(path.join(data, 'checks'))]);
		const repeated = await workbench.recheck();
		expect(repeated).toMatchObject({ok: false, sentence: workbench.notices()[0]});
	});

	it('a single one in whose place a folder stands is said at home and among the dates', async () => {
		const file = path.join(data, 'checks', `${id}.json`);
		rmSync(file);
		mkdirSync(file);
		const workbench = bench();
		workbench.archive.arms();
		expect(workbench.notices()).toEqual([expect.stringContaining(file)]);
		expect((await printedBy(() => runDue({data}))).faults).toContain(file);
	});
});
