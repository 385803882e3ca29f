import {mkdirSync, readFileSync, symlinkSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {afterEach, beforeAll, beforeEach, describe, expect, it, vi} from 'vitest';
import {runDue} from '../../source/commands/due.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {printedBy} from '../helpers/printed.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';

const half = {date: '2026-11-25', because: 'In six months (common practice).'};
const records = [
	filed({at: '2025-01-10T10:00:00Z', arm: 'south deck', next: {date: '2025-07-10', because: 'Earlier.'}}),
	filed({at: '2026-05-25T10:00:00Z', next: half}),
	filed({at: '2026-09-30T10:00:00Z', arm: 'south deck', next: {date: '2026-12-30', because: 'In three months.'}}),
	filed({at: '2026-10-01T10:00:00Z', arm: 'east deck'}),
	filed({at: '2026-10-02T10:00:00Z', arm: 'old deck', next: {date: '2026-11-01', because: 'In a month.'}}),
];
const profiles = [armProfile('old deck', {setAside: true})];

let data = '';
beforeAll(async () => {
	data = await folderWith(records, {profiles});
});
const at = (now: string) => vi.useFakeTimers({toFake: ['Date'], now: new Date(now)});
beforeEach(() => void at('2026-11-25T12:00:00Z'));
afterEach(() => void vi.useRealTimers());

const due = (options: Parameters<typeof runDue>[0] = {}) => printedBy(() => runDue({data, ...options}));
const linesOf = (text: string): string[] => text.split('\n').slice(0, -1);

describe('The arms that are due', () => {
	const [today, later] = [words.results.due({inDays: 0}), words.results.due({inDays: 35})];
	const {lastCheck} = words.commands.due;

	it('are listed by day, each by its last check, with the reason that was given there', async () => {
		const {status, out, faults} = await due();
		expect([status, faults]).toEqual([10, '']);
		expect(linesOf(out)).toEqual([
			`2026-11-25  ${today.padEnd(later.length)}  north deck  ${lastCheck({date: '2026-05-25', because: half.because})}`,
			`2026-12-30  ${later.padEnd(today.length)}  south deck  ${lastCheck({date: '2026-09-30', because: 'In three months.'})}`,
		]);
	});

	it.each([
		['2026-11-24T23:00:00', 0],
		['2026-11-25T00:00:00', 10],
		['2027-02-01T00:00:00', 10],
	])('at %s local time make the exit status %i', async (now, status) => {
		at(now);
		expect((await due()).status).toBe(status);
		expect(await due({quiet: true})).toEqual({status, out: '', faults: ''});
	});

	it('are looked for ahead, and then only those are listed', async () => {
		at('2026-11-20T12:00:00');
		expect(await due({within: 4})).toMatchObject({status: 0, out: ''});
		const {status, out} = await due({within: 5});
		expect([status, linesOf(out)]).toEqual([10, [expect.stringContaining('north deck')]]);
	});

	it('are none where no check is on file, and that is said', async () => {
		const {status, out, faults} = await due({data: freshFolder()});
		expect([status, out]).toEqual([0, '']);
		expect(linesOf(faults)).toHaveLength(1);
	});

	it('are not taken for none where the checks cannot be read: 1, also when quiet', async () => {
		const folder = freshFolder();
		writeFileSync(path.join(folder, 'checks'), 'a file where a folder should be');
		for (const quiet of [false, true]) {
			const {status, faults} = await due({data: folder, quiet});
			expect([status, linesOf(faults).length]).toEqual([1, 1]);
		}
	});
});

describe('The dates of one arm', () => {
	const {armNamed} = words.commands;

	it('are asked for by its name or a part of it, which is said', async () => {
		const {status, out, faults} = await due({arm: 'SOUTH'});
		expect([status, linesOf(out)]).toEqual([0, [expect.stringContaining('south deck')]]);
		expect(faults).toBe(`${armNamed.taken({typed: 'SOUTH', arm: 'south deck'})}\n`);
		expect(await due({arm: 'north deck', quiet: true})).toEqual({status: 10, out: '', faults: ''});
	});

	it('are refused where several are meant, or none is known', async () => {
		const {status, out, faults} = await due({arm: 'deck'});
		expect([status, out]).toEqual([2, '']);
		for (const {check} of records) expect(faults).toContain(`"${check.answers['arm-name']?.value}"`);
		const {noneOfArm} = words.commands.due;
		expect(await due({arm: 'zzz', quiet: true})).toEqual({
			status: 2,
			out: '',
			faults: `${noneOfArm({arm: 'zzz', meant: undefined})}\n`,
		});
	});
});

describe('The dates as JSON', () => {
	it('have one object an arm, with day, reason and the check that they come from', async () => {
		const {status, out, faults} = await due({as: 'json', within: 0});
		expect([status, faults]).toEqual([10, '']);
		const north = {arm: 'north deck', nextDate: '2026-11-25', inDays: 0, because: half.because, lastDate: '2026-05-25'};
		expect(JSON.parse(out)).toEqual([{...north, lastId: records[1]?.check.id}]);
		expect(JSON.parse((await due({as: 'json'})).out)).toHaveLength(2);
	});

	it('are an empty list where no arm has any', async () => {
		expect(await due({as: 'json', data: freshFolder()})).toEqual({status: 0, out: '[]\n', faults: ''});
	});
});

describe('The calendar file', () => {
	const inFresh = (name: string): string => path.join(freshFolder(), name);
	const uidsOf = (text: string): string[] => text.match(/^UID:.*$/gm) ?? [];

	it('holds every arm with a date, whatever is due; the status is that of the list', async () => {
		const file = inFresh('checks.ics');
		const {status, out} = await due({calendar: file, within: 0});
		// The third is the arm set aside, whose event goes.
		expect([status, out]).toEqual([10, `${words.commands.due.written({arms: 2, cancelled: 1, file})}\n`]);
		expect(uidsOf(readFileSync(file, 'utf8'))).toHaveLength(3);
		at('2026-11-01T12:00:00Z');
		expect(await due({calendar: file, quiet: true})).toEqual({status: 0, out: '', faults: ''});
	});

	it('goes to standard output for -, and nothing else does', async () => {
		const {out} = await due({calendar: '-'});
		expect(out).toMatch(/^BEGIN:VCALENDAR\r\n/);
		expect(out).toMatch(/\r\nEND:VCALENDAR\r\n$/);
	});

	it('replaces a calendar of this program, and no other file unless it is forced to', async () => {
		const file = inFresh('checks.ics');
		for (const foreign of ['notes', 'BEGIN:VCALENDAR\r\nPRODID:-//another//EN\r\n', '']) {
			writeFileSync(file, foreign);
			const {status, out, faults} = await due({calendar: file});
			expect([status, out, readFileSync(file, 'utf8')]).toEqual([2, '', foreign]);
			expect(faults).toMatch(/^[^\n]*--force[^\n]*--calendar[^\n]*\n$/);
		}
		expect((await due({calendar: file, force: true})).status).toBe(10);
		const written = readFileSync(file, 'utf8');
		at('2026-11-27T12:00:00Z');
		expect((await due({calendar: file})).status).toBe(10);
		expect(readFileSync(file, 'utf8')).not.toBe(written);
		expect(uidsOf(readFileSync(file, 'utf8'))).toEqual(uidsOf(written));
	});

	it.each([
		['a folder that is not there', (folder: string) => path.join(folder, 'no', 'x.ics'), 1],
		[
			'a folder',
			(folder: string) => {
				mkdirSync(path.join(folder, 'x.ics'));
				return path.join(folder, 'x.ics');
			},
			2,
		],
		[
			'a link that leads nowhere',
			(folder: string) => {
				symlinkSync('nowhere', path.join(folder, 'x.ics'));
				return path.join(folder, 'x.ics');
			},
			2,
		],
	])('is not written to %s, in one sentence', async (_, place, status) => {
		const ended = await due({calendar: place(freshFolder()), force: true});
		expect([ended.status, ended.out, linesOf(ended.faults).length]).toEqual([status, '', 1]);
		expect(ended.faults).toContain('--calendar');
	});

	it('is not written where no arm has a date', async () => {
		const file = inFresh('checks.ics');
		expect(await due({data: freshFolder(), calendar: file})).toMatchObject({status: 0, out: ''});
		expect(() => readFileSync(file)).toThrow('ENOENT');
	});

	it('cancels the event of an arm once it is set aside, and that of no other', async () => {
		const before = (await due({calendar: '-', data: await folderWith(records)})).out;
		const after = (await due({calendar: '-'})).out;
		const statusOf = (text: string) =>
			text.split('BEGIN:VEVENT').map((event) => [event.match(/^UID:.*$/m)?.[0], /^STATUS:CANCELLED\r$/m.test(event)]);
		expect(new Map(statusOf(before).map(([uid]) => [uid, 1]))).toEqual(
			new Map(statusOf(after).map(([uid]) => [uid, 1])),
		);
		expect(statusOf(before).filter(([, isGone]) => isGone)).toEqual([]);
		expect(statusOf(after).filter(([, isGone]) => isGone)).toHaveLength(1);
		expect(after.split('BEGIN:VEVENT').find((event) => event.includes('CANCELLED'))).toContain('old deck');
	});

	it('knows an arm again that was renamed', async () => {
		const renamed = await folderWith([...records, filed({at: '2026-11-02T10:00:00Z', arm: 'bench deck', next: half})], {
			profiles: [...profiles, armProfile('bench deck', {formerNames: ['north deck']})],
		});
		const [before, after] = [await due({calendar: '-'}), await due({calendar: '-', data: renamed})];
		expect(after.out).toContain('bench deck');
		expect(uidsOf(after.out).sort()).toEqual(uidsOf(before.out).sort());
	});
});
