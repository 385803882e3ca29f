import {readdirSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import {newCheck} from '../../source/check/reduce.js';
import {runReport} from '../../source/commands/report.js';
import {storeOf} from '../../source/desk/stored-forms.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {idFor} from '../helpers/invented-checks.js';
import {run} from '../helpers/plain-run.js';
import {printedBy} from '../helpers/printed.js';
import {freshFolder} from '../helpers/program-environment.js';
import {anything, withAnything, words} from '../helpers/said.js';

// Invented checks of two arms; one of them was renamed, and its newest check is void.
const days = {
	first: '2024-05-11T09:00:00+02:00',
	second: '2025-05-17T09:00:00+02:00',
	third: '2026-03-02T09:00:00+01:00',
	voided: '2026-04-02T09:00:00+02:00',
	other: '2025-11-02T09:00:00+01:00',
} as const;
const idOf = (day: keyof typeof days): string => idFor(days[day]);
const openId = '20261101-090000-stillopen';

let data = '';
beforeAll(async () => {
	data = await folderWith(
		[
			filed({at: days.first, arm: 'old name'}),
			filed({at: days.second}),
			filed({at: days.third}),
			filed({at: days.voided}),
			filed({at: days.other, arm: 'west deck'}),
		],
		{profiles: [armProfile('north deck', {formerNames: ['old name']})], voids: {[idOf('voided')]: 'draught'}},
	);
	const open = newCheck({id: openId, at: days.third, program: '0.0.0', limits: limitsOf(usualSettings), setAnew: true});
	await storeOf(
		data,
		() => new Date(),
		() => {},
	).saveDraft(open);
});

const {report: say} = words.commands;
const {about, sections, titles} = words.reports;
const {voidBecause} = words.reports.years;
const northDeck = {arm: 'north deck', isPractice: false};
/** The foot of a report on a check. */
const footOf = (day: keyof typeof days): RegExp =>
	withAnything(about.foot({id: idOf(day), program: anything, day: anything, version: anything}));

type Options = Partial<Parameters<typeof runReport>[0]>;
const report = (options: Options = {}) => printedBy(() => runReport({as: 'html', data, version: '0.0.0', ...options}));

describe('armdrift report', () => {
	it('without anything named is of the newest check that is not void', async () => {
		const {status, out} = await report();
		expect(status).toBe(0);
		expect(out).toMatch(/^<!DOCTYPE html>/);
		expect(out).toMatch(footOf('third'));
	});

	it('of one check compares it with those before it, under the former name of the arm too', async () => {
		const {status, out} = await report({id: idOf('third'), as: 'markdown'});
		expect(status).toBe(0);
		expect(out).toMatch(new RegExp(`^# ${titles.check(northDeck)}`));
		for (const day of ['first', 'second'] as const) expect(out).toContain(idOf(day));
		for (const day of ['voided', 'other'] as const) expect(out).not.toContain(idOf(day));
	});

	it('of the first check has no history, and of a void one says so', async () => {
		expect((await report({id: idOf('first')})).out).not.toContain(sections.years);
		expect((await report({id: idOf('voided')})).out).toContain(
			words.results.void({at: '2026-03-03', reason: '<bdi>draught</bdi>'}),
		);
	});

	it('of an arm is its history, with what does not count and why', async () => {
		const {status, out} = await report({arm: 'old name', as: 'markdown'});
		expect(status).toBe(0);
		expect(out).toMatch(new RegExp(`^# ${titles.arm(northDeck)}`));
		expect(out).toContain(`${about.checksThatCount}: 3`);
		expect(out).toMatch(new RegExp(`${voidBecause({reason: 'draught'})} \\| ${idOf('voided')}`));
		expect(out).not.toContain('west deck');
	});

	it('for the maker of an arm is of its newest check that counts', async () => {
		const {status, out} = await report({arm: 'north deck', as: 'maker'});
		expect(status).toBe(0);
		expect(out).toContain(titles.maker(northDeck));
		expect(out).toMatch(footOf('third'));
	});

	it.each([
		[
			{id: '20200101-000000-nowhere1'},
			2,
			words.store['no-check']({file: '', dataDir: anything, id: '20200101-000000-nowhere1'}),
		],
		[{id: '../../etc'}, 2, anything],
		[{arm: 'nort deck'}, 2, say.noneOfArm({arm: 'nort deck', meant: 'north deck'})],
		[{arm: 'quite another'}, 2, say.noneOfArm({arm: 'quite another'})],
		[
			{id: idFor(days.other), arm: 'north deck'},
			2,
			say.ofOtherArm({id: idFor(days.other), of: 'west deck', arm: 'north deck'}),
		],
		[{id: openId}, 2, say.open({id: openId})],
	] as const)('of %j ends with %i and says why', async (options, status, sentence) => {
		const printed = await report(options);
		expect(printed).toMatchObject({status, out: ''});
		expect(printed.faults).toMatch(withAnything(sentence, '.+'));
	});

	it('of a check that is there and cannot be read ends with 1: that is no fault of the command line', async () => {
		const damaged = await folderWith([filed({at: days.first})]);
		writeFileSync(path.join(damaged, 'checks', `${idOf('first')}.json`), 'torn');
		expect(await report({data: damaged, id: idOf('first')})).toMatchObject({status: 1, out: ''});
	});

	it('of an arm whose checks are all void says so', async () => {
		const only = await folderWith([filed({at: days.first})], {voids: {[idOf('first')]: 'draught'}});
		expect((await report({data: only, arm: 'north deck'})).faults).toBe(`${say.noneCounts({arm: 'north deck'})}\n`);
		expect(await report({data: only})).toMatchObject({status: 2, out: ''});
	});
});

describe('armdrift report --out', () => {
	it('writes the same into a file and says where, and replaces none without --force', async () => {
		const folder = freshFolder();
		const out = path.join(folder, 'report.html');
		expect(await report({out})).toEqual({status: 0, out: `${say.written({file: out})}\n`, faults: ''});
		expect(readFileSync(out, 'utf8')).toBe((await report()).out);
		writeFileSync(out, 'dear to someone');
		const refused = await report({out});
		expect(refused.status).toBe(2);
		expect(refused.faults).toBe(`${words.store['target-there']({file: out, option: '--out', mayForce: true})}\n`);
		expect(readFileSync(out, 'utf8')).toBe('dear to someone');
		expect((await report({out, force: true})).status).toBe(0);
		expect(readFileSync(out, 'utf8')).toMatch(/^<!DOCTYPE html>/);
		expect(readdirSync(folder)).toEqual(['report.html']);
	});

	it('says where it cannot be written, and leaves nothing', async () => {
		const folder = freshFolder();
		const printed = await report({out: path.join(folder, 'nowhere', 'report.html')});
		expect(printed).toMatchObject({status: 1, out: ''});
		expect(printed.faults).toMatch(/nowhere/);
		expect(readdirSync(folder)).toEqual([]);
	});
});

describe('The built program', () => {
	it('writes a report to standard output and into a file', () => {
		const printed = run(data, ['report', '--arm', 'north deck', '--as', 'markdown']);
		expect(printed).toMatchObject({status: 0, faults: ''});
		expect(printed.out).toMatch(new RegExp(`^# ${titles.arm(northDeck)}`));
		const written = run(data, ['report', idOf('third'), '--as', 'maker', '--out', 'maker.html']);
		expect(written).toMatchObject({status: 0, faults: ''});
		expect(written.out).toMatch(
			new RegExp(`^${withAnything(say.written({file: `/${anything}/maker.html`})).source}\n$`),
		);
		expect(readFileSync(path.join(data, 'maker.html'), 'utf8')).toContain(sections.ruledOut);
	});

	it.each([
		[['report'], /--as/],
		[['report', '--as', 'pdf'], /html, markdown, maker/],
	] as const)('%j ends with 2 and says which kinds there are', (args, sentence) => {
		const printed = run(data, args);
		expect(printed).toMatchObject({status: 2, out: ''});
		expect(printed.faults).toMatch(sentence);
	});
});
