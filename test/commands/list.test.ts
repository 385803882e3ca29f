import {writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import {runList} from '../../source/commands/list.js';
import {summaryOf} from '../../source/results/record.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
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
const {none, noneOfArm} = words.commands.list;
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
		expect(line).toMatch(new RegExp(`^2025-11-20 {2}north deck {2}beyond +${inner}; ${outer} {2}\\S+$`));
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
		expect(JSON.parse(out)).toEqual(JSON.parse(JSON.stringify([summaryOf(south)])));
		const rows: unknown = JSON.parse((await list({as: 'json'})).out);
		expect(rows).toMatchObject([{id: ids[0], voidBecause: 'the wrong arm'}, {id: ids[1]}, {id: ids[2]}, {id: ids[3]}]);
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
	expect(wide.indexOf('beyond') + 2).toBe(red.indexOf('beyond'));
});
