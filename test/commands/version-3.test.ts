import {cpSync, readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {positionOf} from '../../source/check/dialogue.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {rowOf} from '../../source/results/past-row.js';
import {upgradeContent} from '../../source/store/upgrades.js';
import {freshFolder} from '../helpers/program-environment.js';

// A data folder as the third stored form has it, described in fixtures/saved/version-3.md: what was done since the last
// check is one word there. What is expected stands in its own files, read here as plain JSON.
const saved = path.resolve(import.meta.dirname, '../../fixtures/saved/version-3');

const rawAnswers = z.record(z.string(), z.looseObject({typed: z.string(), value: z.unknown(), at: z.string()}));
const rawRecord = z.looseObject({
	version: z.literal(3),
	record: z.looseObject({
		check: z.looseObject({id: z.string(), answers: rawAnswers}),
		issued: z.looseObject({
			figures: z.looseObject({verdict: z.string(), probe: z.array(z.looseObject({pullPct: z.number()}))}),
		}),
	}),
});
const rawDraft = z.looseObject({version: z.literal(3), content: z.looseObject({id: z.string(), answers: rawAnswers})});

const json = (...parts: readonly string[]): unknown => JSON.parse(readFileSync(path.join(saved, ...parts), 'utf8'));
const filed = readdirSync(path.join(saved, 'checks'))
	.sort()
	.map((name) => rawRecord.parse(json('checks', name)).record);
const draft = rawDraft.parse(json('draft-a.json')).content;

const copy = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	cpSync(saved, dataDir, {recursive: true});
	return dataDir;
};
/** A minute after the open check was left. */
const soon = () => new Date('2026-11-28T16:50:20Z');

let workbench: OpenWorkbench;
let dataDir = '';
beforeAll(() => {
	dataDir = copy();
	workbench = new OpenWorkbench({dataDir, version: '0.0.0', clock: soon});
});

describe('Checks filed in the third stored form', () => {
	it('are all listed with the very verdicts and pulls that were issued, and with what was done before each', () => {
		const {rows, total, notices} = workbench.archive.past({offset: 0, limit: 99});
		expect([total, notices]).toEqual([filed.length, []]);
		expect(rows).toMatchObject(
			filed.toReversed().map(({check, issued}) => ({
				id: check.id,
				verdict: issued.figures.verdict,
				probe: issued.figures.probe.map(({pullPct}) => ({pullPct})),
			})),
		);
		expect(rows.map(({doneSince, doneNote}) => [...doneSince, doneNote]).toReversed()).toEqual([
			[null],
			[null],
			['bearing', null],
			['other', 'a new belt'],
		]);
	});

	it('keep what was typed, when it was typed, and all other answers', () => {
		for (const {check} of filed) {
			const found = workbench.archive.record(check.id);
			if (!found.ok) throw new Error(found.sentence);
			const {'done-since': done, ...others} = check.answers;
			expect(found.record.check.answers).toMatchObject(others);
			if (done) expect(found.record.check.answers['done-since']).toEqual({...done, value: [done.value]});
			else expect(found.record.check.answers).not.toHaveProperty('done-since');
		}
	});

	it('tell their events in order of the day, under the name that the arm has today', () => {
		expect(workbench.archive.events('larch nine, oak plinth')).toEqual([
			{kind: 'bearing', on: '2025-10-25'},
			{kind: 'other', on: '2026-04-23', note: 'a new belt'},
		]);
	});

	it('stay byte for byte as they were', () => {
		for (const name of readdirSync(path.join(saved, 'checks')))
			expect(readFileSync(path.join(dataDir, 'checks', name))).toEqual(readFileSync(path.join(saved, 'checks', name)));
	});

	it('lose nothing where the answer is not what it should be', () => {
		const odd = {answers: {'done-since': {value: 4}}, series: []};
		expect(upgradeContent('armdrift-draft', 'content', odd, 3)).toEqual(odd);
	});
});

describe('A check left open in the third stored form', () => {
	it('goes on where it was left, with what was done since its last check', async () => {
		const opened = await new OpenWorkbench({dataDir: copy(), version: '0.0.0', clock: soon}).resume();
		if (!opened.ok) throw new Error(opened.sentence);
		const {check} = opened.dialogue;
		expect(check.id).toBe(draft.id);
		expect(draft.answers['done-since']?.value).toBe('leads');
		expect(rowOf(check).doneSince).toEqual(['leads']);
		expect(positionOf(opened.dialogue).step?.id).toBe('probe-inner');
	});

	it("is kept in today's form with its next answer, and settings and profiles hold", () => {
		const desk = new OpenWorkbench({dataDir: copy(), version: '0.0.0', clock: soon});
		expect(desk.settings()).toMatchObject({brisk: true, shop: ''});
		expect(desk.profiles().map(({name}) => name)).toContain('larch nine, oak plinth');
	});
});
