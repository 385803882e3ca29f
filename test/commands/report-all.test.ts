import {existsSync, readdirSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import {runReport} from '../../source/commands/report.js';
import {runReports} from '../../source/commands/report-all.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {printedBy} from '../helpers/printed.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';

const say = words.commands.report;

const old = filed({at: '2024-05-11T09:00:00+02:00', arm: 'old name'});
const left = filed({at: '2025-05-17T09:00:00+02:00', outcome: 'interrupted'});
const wrong = filed({at: '2026-03-02T09:00:00+01:00'});
const other = filed({at: '2025-11-02T09:00:00+01:00', arm: 'west deck'});
const newestFirst = [wrong, other, left, old].map(({check}) => check.id);

let data = '';
beforeAll(async () => {
	data = await folderWith([old, left, wrong, other], {
		profiles: [armProfile('north deck', {formerNames: ['old name']})],
		voids: {[wrong.check.id]: 'draught'},
	});
});

type Options = Partial<Parameters<typeof runReports>[0]>;
const reports = (options: Options) => printedBy(() => runReports({as: 'html', data, version: '0.0.0', ...options}));
const sentences = (out: string, files: readonly string[]): string =>
	files.map((file) => `${say.written({file: path.join(out, file)})}\n`).join('');

describe('Reports of all checks', () => {
	it.each([
		['html', '.html'],
		['markdown', '.md'],
		['maker', '-maker.html'],
		['json', '.json'],
	] as const)(
		'as %s lie in the folder, each under the id of its check, the same as alone, and are said in a line',
		async (as, ending) => {
			const out = path.join(freshFolder(), 'made', 'anew');
			const files = newestFirst.map((id) => `${id}${ending}`);
			expect(await reports({as, out})).toEqual({status: 0, out: sentences(out, files), faults: ''});
			expect(readdirSync(out).sort()).toEqual([...files].sort());
			for (const id of newestFirst) {
				const alone = await printedBy(() => runReport({id, as, data, version: '0.0.0'}));
				expect(readFileSync(path.join(out, `${id}${ending}`), 'utf8')).toBe(alone.out);
			}
		},
	);

	it('of an arm are those under all its names, and a part of one will do', async () => {
		const out = freshFolder();
		const printed = await reports({out, arm: 'NORTH'});
		expect(printed.faults).toBe(`${words.commands.armNamed.taken({typed: 'NORTH', arm: 'north deck'})}\n`);
		expect(readdirSync(out).sort()).toEqual([old, left, wrong].map(({check}) => `${check.id}.html`).sort());
	});

	it('replace no file without --force, and the others are written all the same', async () => {
		const out = freshFolder();
		const [first = '', ...rest] = newestFirst.map((id) => `${id}.html`);
		const there = path.join(out, first);
		writeFileSync(there, 'dear to someone');
		const printed = await reports({out});
		expect(printed).toEqual({
			status: 2,
			out: sentences(out, rest),
			faults: `${words.store['target-there']({file: there, option: '--out', mayForce: true})}\n`,
		});
		expect(readFileSync(there, 'utf8')).toBe('dear to someone');
		expect((await reports({out, force: true})).status).toBe(0);
		expect(readFileSync(there, 'utf8')).toMatch(/^<!DOCTYPE html>/);
	});

	it('leave out one that cannot be read, and say so', async () => {
		const damaged = await folderWith([old, other]);
		writeFileSync(path.join(damaged, 'checks', `${old.check.id}.json`), 'torn');
		const out = freshFolder();
		const {out: said, faults} = await reports({data: damaged, out});
		expect(said).toBe(sentences(out, [`${other.check.id}.html`]));
		expect(faults).toContain(old.check.id);
		expect(readdirSync(out)).toEqual([`${other.check.id}.html`]);
	});

	it.each([
		[{}, say.folderWanted],
		[{out: '-'}, say.folderWanted],
		[{out: 'x', id: newestFirst[0]}, say.allOrOne],
		[{out: 'x', arm: 'zzz'}, say.noneOfArm({arm: 'zzz'})],
	] as const)('are refused in one sentence for %j', async (options, sentence) => {
		expect(await reports(options)).toEqual({status: 2, out: '', faults: `${sentence}\n`});
		expect(existsSync('x')).toBe(false);
	});

	it('are not written where the folder is a file, which stays', async () => {
		const out = path.join(freshFolder(), 'file');
		writeFileSync(out, 'dear to someone');
		const printed = await reports({out});
		expect([printed.status === 0, printed.out]).toEqual([false, '']);
		expect(readFileSync(out, 'utf8')).toBe('dear to someone');
	});
});
