import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {runList} from '../../source/commands/list.js';
import {dayOrSpan, verdictWords} from '../../source/commands/option-values.js';
import {summaryOf} from '../../source/results/record.js';
import {commandLine} from '../../source/words/command-line.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {idFor} from '../helpers/invented-checks.js';
import {printedBy} from '../helpers/printed.js';
import {freshFolder} from '../helpers/program-environment.js';
import {withAnything, words} from '../helpers/said.js';

const south = filed({at: '2025-05-20T10:00:00+02:00', arm: 'south deck'});
const first = filed({at: '2025-11-20T10:00:00+01:00', next: {date: '2026-05-20', because: 'In six months.'}});
const left = filed({at: '2026-05-21T10:00:00+02:00', outcome: 'interrupted'});
const wrong = filed({at: '2026-05-22T10:00:00+02:00'});
const ids = [wrong, left, first, south].map(({check}) => check.id);

let data = '';
beforeAll(async () => {
	data = await folderWith([south, first, left, wrong], {voids: {[wrong.check.id]: 'the wrong arm'}});
});

const list = (options: Partial<Parameters<typeof runList>[0]> = {}) =>
	printedBy(() => runList({as: 'text', data, ...options}));
const linesOf = (text: string): string[] => text.split('\n').slice(0, -1);

const {state, wholeFigures} = words.beside.past;
const {verdictName} = words.figures;
const {none, noneOfArm, noneSuch, unknownVerdict} = words.commands.list;
const {armNamed} = words.commands;
/** Pull and band at a radius, with any band and any ±. */
const figuresAt = (radiusMm: number, pullPct: number): string => {
	const others = {pullUncertaintyPct: 9, bandPct: 9, bandUncertaintyPct: 9};
	return withAnything(wholeFigures({radiusMm, pullPct, ...others})).source.replaceAll('9\\.0', '\\d\\.\\d');
};

describe('The list of past checks', () => {
	it('has a line a check, newest first, its columns aligned', async () => {
		const {status, out, faults} = await list();
		expect([status, faults]).toEqual([0, '']);
		const lines = linesOf(out);
		expect(lines.map((line) => line.split('  ').at(-1))).toEqual(ids);
		expect(new Set(lines.map((line) => line.indexOf('68 mm'))).size).toBe(1);
	});

	it('shows day, arm, verdict, and pull and band at each radius with their ±', async () => {
		const [, , line = ''] = linesOf((await list()).out);
		// The worked example of the figures: pulls 5.375 % and 3.375 %, both outward; verdict beyond.
		const [inner, outer] = [figuresAt(68, 5.4), figuresAt(136, 3.4)];
		expect(line).toMatch(new RegExp(`^2025-11-20 {2}north deck {2}${verdictName.beyond} +${inner}; ${outer} {2}\\S+$`));
	});

	it('says in place of a verdict how a check ended that is not whole, and which one does not count', async () => {
		const lines = linesOf((await list()).out);
		expect(lines[0]).toContain(`  ${state({outcome: 'complete', verdict: null, voidBecause: 'the wrong arm'})}  `);
		expect(lines[1]).toContain(`  ${state({outcome: 'interrupted', verdict: null})}  `);
	});

	it('shows the time too where a day has more than one, and only there', async () => {
		const days = ['2026-05-21T08:05:00+02:00', '2026-05-21T14:30:00+02:00', '2026-05-22T10:00:00+02:00'];
		const lines = linesOf((await list({data: await folderWith(days.map((at) => filed({at})))})).out);
		expect(lines.map((line) => line.split('  ')[0])).toEqual(['2026-05-22', '2026-05-21 14:30', '2026-05-21 08:05']);
		expect(new Set(lines.map((line) => line.indexOf('north deck'))).size).toBe(1);
	});

	it('stops after so many, of all arms or of one', async () => {
		expect(linesOf((await list({limit: 2})).out)).toHaveLength(2);
		const {out} = await list({limit: 1, arm: 'south deck'});
		expect(linesOf(out)).toEqual([expect.stringContaining('south deck')]);
	});

	it('finds the checks of an arm under every name that it had', async () => {
		const renamed = await folderWith([first, filed({at: '2026-06-01T10:00:00Z', arm: 'bench deck'}), south], {
			profiles: [armProfile('bench deck', {formerNames: ['north deck']})],
		});
		for (const arm of ['bench deck', 'north deck', ' bench deck '])
			expect(linesOf((await list({arm, data: renamed})).out)).toHaveLength(2);
	});

	it('prints the rows as JSON for scripts, numbers unrounded', async () => {
		const {out} = await list({as: 'json', arm: 'south deck'});
		const whole = {...summaryOf(south), armToday: 'south deck', voidBecause: null, isVoidUnknown: false, overrides: []};
		expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify([whole])));
		const rows: unknown = JSON.parse((await list({as: 'json'})).out);
		expect(rows).toMatchObject([{id: ids[0], voidBecause: 'the wrong arm'}, {id: ids[1]}, {id: ids[2]}, {id: ids[3]}]);
	});

	it('has the present name of an arm in JSON, and what was gone past with its reason', async () => {
		const at = '2026-05-21T10:00:00+02:00';
		const told = {problem: {id: 'part-left', values: {}}, at, step: 'wires', series: 0};
		const own = {...told, reason: {id: 'other', typed: 'in a "hurry"'}};
		const over = {...first, check: {...first.check, overrides: [{...told, reason: {id: 'cannot-level'}}, own]}};
		const renamed = await folderWith([over], {profiles: [armProfile('bench deck', {formerNames: ['north deck']})]});
		const {out} = await list({as: 'json', data: renamed});
		const [row] = z.array(z.looseObject({arm: z.string(), armToday: z.string()})).parse(JSON.parse(out));
		expect(row).toMatchObject({
			arm: 'north deck',
			armToday: 'bench deck',
			nextDate: '2026-05-20',
			overrides: [
				{step: 'wires', reason: 'cannot-level', typed: null, at},
				{step: 'wires', reason: 'other', typed: 'in a "hurry"', at},
			],
		});
	});

	it('is valid UTF-8 in JSON and escapes what a terminal obeys or does not show, which stays the same text', async () => {
		const arm = 'a\u0000\u001B[31m\n\u007F\u0085\u2028\u202E\u{E0041}\u{1F3A7} é';
		const {out} = await list({as: 'json', data: await folderWith([filed({at: '2026-01-01T10:00:00Z', arm})])});
		expect(JSON.parse(out)).toMatchObject([{arm, armToday: arm}]);
		// RFC 8259 7 and 8.1; ECMA-48 has C0 and C1 as controls, Unicode General Category Cf the formats.
		for (const line of out.split('\n')) expect(line).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
		expect(out).toContain('\\u001b[31m\\n\\u007f\\u0085\\u2028\\u202e\\udb40\\udc41\u{1F3A7} é');
		expect(new TextDecoder('utf-8', {fatal: true}).decode(Buffer.from(out))).toBe(out);
	});
});

describe('The list of some past checks', () => {
	const idsIn = (text: string) => linesOf(text).map((line) => line.split('  ').at(-1));

	it('by a part of the name of an arm says which one was taken', async () => {
		const {out, faults, status} = await list({arm: 'SOU'});
		expect([status, idsIn(out)]).toEqual([0, [south.check.id]]);
		expect(faults).toBe(`${armNamed.taken({typed: 'SOU', arm: 'south deck'})}\n`);
		const several = await list({arm: 'deck', as: 'json'});
		expect([several.status, several.out]).toEqual([2, '']);
		expect(several.faults).toBe(`${armNamed.several({typed: 'deck', arms: ['north deck', 'south deck']})}\n`);
	});

	it('by a verdict leaves void ones out', async () => {
		const good = {...south, check: {...south.check, id: idFor('2027-01-01T10:00:00Z')}};
		const figures = south.issued && {...south.issued.figures, verdict: 'good' as const};
		const folder = await folderWith(
			[first, wrong, {...good, issued: south.issued && figures && {...south.issued, figures}}],
			{
				voids: {[wrong.check.id]: 'the wrong arm'},
			},
		);
		expect(idsIn((await list({verdict: 'good', data: folder})).out)).toEqual([good.check.id]);
		expect(idsIn((await list({verdict: 'beyond', data: folder})).out)).toEqual([first.check.id]);
		expect(await list({verdict: 'none', data: folder})).toEqual({status: 0, out: '', faults: `${noneSuch}\n`});
		expect(await list({verdict: 'undecided', as: 'json', data: folder})).toMatchObject({status: 0, out: '[]\n'});
	});

	it('by a verdict that there is not is refused, with the one that may be meant', async () => {
		const known = verdictWords;
		expect(await list({verdict: 'byond'})).toEqual({
			status: 2,
			out: '',
			faults: `${unknownVerdict({verdict: 'byond', meant: 'beyond', known})}\n`,
		});
		expect((await list({verdict: 'xyz'})).faults).toBe(
			`${unknownVerdict({verdict: 'xyz', meant: undefined, known})}\n`,
		);
	});

	it.each([
		[{since: '2026-05-22'}, [wrong]],
		[{since: '2026-05-21'}, [wrong, left]],
		[{since: '2026'}, [wrong, left]],
		[{until: '2025-05'}, [south]],
		[{until: '2025-05-19'}, []],
		[{since: '2025-11', until: '2026-05-21'}, [left, first]],
		[{since: '2025-06', limit: 1, until: '2025'}, [first]],
	])('by days, months or years, both ends with it: %j', async (span, wanted) => {
		expect(idsIn((await list(span)).out)).toEqual(wanted.map(({check}) => check.id));
	});
});

describe('Where there is nothing to list', () => {
	it('an unknown arm is refused with 2, and with the one that may be meant', async () => {
		const {status, out, faults} = await list({arm: 'nroth deck'});
		expect([status, out]).toEqual([2, '']);
		expect(faults).toBe(`${noneOfArm({arm: 'nroth deck', meant: 'north deck'})}\n`);
		expect((await list({arm: 'quite another'})).faults).toBe(`${noneOfArm({arm: 'quite another'})}\n`);
	});

	it('an empty folder is no fault, and JSON is an empty list', async () => {
		const empty = freshFolder();
		expect(await list({data: empty})).toEqual({
			status: 0,
			out: '',
			faults: `${none({dataDir: empty})}\n`,
		});
		expect(await list({data: empty, as: 'json'})).toEqual({status: 0, out: '[]\n', faults: ''});
	});

	it('a folder that cannot be read ends with 1 and a sentence', async () => {
		const folder = freshFolder();
		writeFileSync(path.join(folder, 'checks'), 'a file where a folder should be');
		const {status, out, faults} = await list({data: folder});
		expect([status, out]).toEqual([1, '']);
		expect(linesOf(faults)).toHaveLength(1);
	});
});

it('Names from outside cannot steer the terminal, and wide ones keep the columns', async () => {
	const odd = await folderWith([
		filed({at: '2026-01-01T10:00:00Z', arm: 'red \u001B[31m\narm'}),
		filed({at: '2026-01-02T10:00:00Z', arm: '横田 arm'}),
	]);
	const {out} = await list({data: odd});
	expect(out).not.toContain('\u001B');
	const [wide = '', red = ''] = linesOf(out);
	// Each of the two ideographs takes two columns (Unicode Standard Annex 11: wide).
	expect(wide).toContain(verdictName.beyond);
	expect(wide.indexOf(verdictName.beyond) + 2).toBe(red.indexOf(verdictName.beyond));
});

describe('A day on the command line', () => {
	it.each(['2026-11-25', '2026-11', '2026', '2024-02-29'])('may be %s', (text) => {
		expect(dayOrSpan(text)).toBe(text);
	});

	// Gregorian calendar: 2026 is no leap year.
	it.each(['2026-02-29', '2026-13', '2026-00', '2026-1-1', '26', '', 'today', '2026-11-25T10:00:00Z', '2026-04-31'])(
		'is not %j',
		(text) => {
			expect(() => dayOrSpan(text)).toThrow(commandLine.dayWanted);
		},
	);
});
