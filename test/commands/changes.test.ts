import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import {beforeAll, describe, expect, it} from 'vitest';
import {respond} from '../../source/check/respond.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {besidePages} from '../../source/pages/beside/beside-pages.js';
import type {BesidePlace} from '../../source/pages/beside/places.js';
import {plainRoom} from '../../source/plain/walk-pages.js';
import {dataFolder, fullFolder, inventedRecords, leftId, plainId} from '../helpers/data-folders.js';
import {anotherCopy} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {withAnything, words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, yes} from '../helpers/script.js';

const SLOW_MS = 60_000;
let source: string;
beforeAll(async () => {
	source = (await fullFolder()).dataDir;
});
const copy = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	fs.cpSync(source, dataDir, {recursive: true});
	return dataDir;
};
const open = (dataDir: string): OpenWorkbench => new OpenWorkbench({dataDir, version: '0.0.0'});
const filesOf = (dataDir: string): Record<string, string> =>
	Object.fromEntries(
		fs.readdirSync(path.join(dataDir, 'checks')).map((name) => {
			const file = path.join(dataDir, 'checks', name);
			return [name, `${fs.readFileSync(file, 'latin1')} ${fs.statSync(file).mtimeMs} ${fs.statSync(file).ino}`];
		}),
	);

const stopAt = (workbench: OpenWorkbench, place: BesidePlace) => besidePages(workbench, plainRoom).at(place);

/** Goes through pages with one entry after the other, as either face does: an option by its number, or a text. */
async function walk(
	workbench: OpenWorkbench,
	start: BesidePlace,
	entries: readonly {readonly index: number; readonly typed: string}[],
) {
	let place = start;
	let saves = 0;
	for (const {index, typed} of entries) {
		const {page, turn: turnOf} = stopAt(workbench, place);
		const {prompt} = page;
		const option = prompt.kind === 'choice' ? prompt.options[index % prompt.options.length] : undefined;
		const turn = turnOf(option?.id ?? typed);
		// Out of the pages that change anything.
		if (turn.kind === 'open' || turn.kind === 'leave' || turn.kind === 'practice') break;
		if (turn.kind === 'go' && turn.to.at === 'home') break;
		if (turn.kind === 'go') place = turn.to;
		if (turn.kind === 'save' && (await turn.save()).ok) {
			place = turn.to;
			saves++;
		}
	}
	return saves;
}

const entry = fc.record({
	index: fc.nat(25),
	typed: fc.constantFrom(
		'',
		'-',
		'upper deck',
		'north deck',
		'an older name',
		'230',
		'24 mm',
		'x'.repeat(81),
		'\u0007',
	),
});
const visit = fc.record({
	where: fc.constantFrom('profiles', ...inventedRecords.map(({check}) => check.id)),
	entries: fc.array(entry, {minLength: 1, maxLength: 12}),
});

describe('Whatever is renamed, corrected, set aside, marked void or taken back', () => {
	it(
		'no file of a filed check ever changes, none goes, and what was noted before stays',
		async () => {
			let saves = 0;
			await fc.assert(
				fc.asyncProperty(fc.array(visit, {maxLength: 8}), async (visits) => {
					const dataDir = copy();
					const before = filesOf(dataDir);
					const workbench = open(dataDir);
					for (const {where, entries} of visits) {
						const start: BesidePlace =
							where === 'profiles' ? {at: 'profiles'} : {at: 'past-check', id: where, offset: 0};
						saves += await walk(workbench, start, entries);
					}
					expect(filesOf(dataDir)).toEqual(before);
					expect(open(dataDir).archive.past({offset: 0, limit: 99})).toMatchObject({total: 7, notices: []});
					const {store, notices} = dataFolder(dataDir);
					expect(store.remark(leftId)).toMatchObject({putBackAt: expect.any(String), putBack: expect.any(Object)});
					const plain = store.remark(plainId);
					const marks = plain && 'void' in plain ? [plain.void, ...(plain.formerVoids ?? [])] : [];
					if (marks.length > 0)
						expect(marks).toContainEqual(expect.objectContaining({reason: 'another arm was meant'}));
					expect(store.profiles().value?.profiles).toHaveLength(3);
					expect(notices).toEqual([]);
				}),
				{numRuns: 25},
			);
			// Enough of them came to something.
			expect(saves).toBeGreaterThan(25);
		},
		SLOW_MS,
	);
});

describe('On the disk', () => {
	it('a void mark stands beside the check for another copy too, and both the mark and its end stay', async () => {
		const dataDir = copy();
		const [, second] = inventedRecords;
		const id = second?.check.id ?? '';
		expect(await open(dataDir).archive.markVoid(id, 'the deck was disturbed')).toEqual({ok: true});
		const other = open(dataDir);
		expect(other.archive.past({offset: 0, limit: 99}).rows.find((row) => row.id === id)?.voidBecause).toBe(
			'the deck was disturbed',
		);
		expect(other.archive.ofArm('north deck').map((row) => row.id)).not.toContain(id);
		expect(await other.archive.markVoid(id, 'once more')).toMatchObject({ok: false});
		expect(await other.archive.countAgain(id)).toEqual({ok: true});
		expect(await other.archive.countAgain(id)).toEqual({ok: false, sentence: words.commands.desk.notVoid});
		expect(other.archive.ofArm('north deck').map((row) => row.id)).toContain(id);
		expect(await other.archive.markVoid(id, 'after all')).toEqual({ok: true});
		expect(open(dataDir).archive.record(id)).toMatchObject({
			voided: {reason: 'after all'},
			formerVoids: [{reason: 'the deck was disturbed', takenBackAt: expect.any(String)}],
		});
	});

	it('a mark on a check that is not there is refused', async () => {
		const dataDir = copy();
		expect(await open(dataDir).archive.markVoid('20200101-090000-nothing', 'x')).toMatchObject({
			ok: false,
			sentence: expect.stringContaining('20200101-090000-nothing'),
		});
		expect(fs.readdirSync(path.join(dataDir, 'remarks'))).toHaveLength(2);
	});

	it('doing the put-back list later keeps the void mark', async () => {
		const dataDir = copy();
		const workbench = open(dataDir);
		fs.rmSync(path.join(dataDir, 'remarks', `${leftId}.json`));
		await workbench.archive.markVoid(leftId, 'only tried out');
		const opened = await workbench.reopen(leftId);
		if (!opened.ok) throw new Error(opened.sentence);
		const end = follow(opened.dialogue, northDeck);
		expect(await workbench.save(end)).toMatchObject({ok: true, finished: {check: {id: leftId}}});
		workbench.release();
		expect(dataFolder(dataDir).store.remark(leftId)).toMatchObject({
			putBackAt: expect.any(String),
			void: {reason: 'only tried out'},
		});
	});

	it('a change is made to what another copy has saved meanwhile, and undoes none of it', async () => {
		const dataDir = copy();
		const [here, there] = [open(dataDir), open(dataDir)];
		const [arm, tools] = ['arm', 'tools'].map((kind) => here.profiles().find((one) => one.kind === kind)?.id ?? '');
		there.profiles();
		const renameTo = (workbench: OpenWorkbench, id: string, name: string) => {
			const turn = stopAt(workbench, {at: 'rename', id}).turn(name);
			return turn.kind === 'save' ? turn.save() : turn;
		};
		expect(await renameTo(here, arm ?? '', 'upper deck')).toEqual({ok: true});
		expect(await renameTo(there, tools ?? '', 'new set')).toEqual({ok: true});
		const names = open(dataDir)
			.profiles()
			.map(({name}) => name);
		expect(names).toEqual(expect.arrayContaining(['upper deck', 'new set']));
	});

	it('nothing is changed while another copy is writing, and that is said', async () => {
		const dataDir = copy();
		const busy = open(dataDir);
		expect((await busy.start('south deck')).ok).toBe(true);
		const [profile] = open(dataDir).profiles();
		const refused = {ok: false, sentence: expect.stringMatching(`^${withAnything(anotherCopy(process.pid)).source}`)};
		expect(await open(dataDir).archive.markVoid(leftId, 'x')).toEqual(refused);
		const turn = stopAt(open(dataDir), {at: 'profile', id: profile?.id ?? ''}).turn('set-aside');
		expect(turn.kind === 'save' && (await turn.save())).toEqual(refused);
		busy.release();
		expect(
			open(dataDir)
				.profiles()
				.some((one) => one.setAside),
		).toBe(false);
	});

	it('a profile that is renamed while a check of it is open stays renamed when the check goes on', async () => {
		const dataDir = copy();
		const workbench = open(dataDir);
		const opened = await workbench.start('north deck');
		if (!opened.ok) throw new Error(opened.sentence);
		const arm = workbench.profiles().find(({kind}) => kind === 'arm');
		expect(arm && workbench.archive.isTakenOver(arm)).toBe(true);
		const turn = stopAt(workbench, {at: 'rename', id: arm?.id ?? ''}).turn('upper deck');
		expect(turn.kind === 'save' && (await turn.save())).toEqual({ok: true});
		const resumed = await workbench.resume();
		if (!resumed.ok) throw new Error(resumed.sentence);
		const next = respond(resumed.dialogue, yes, workbench.now());
		if (!next) throw new Error('left for home');
		expect((await workbench.save(next)).ok).toBe(true);
		workbench.release();
		const arms = open(dataDir)
			.profiles()
			.filter(({kind}) => kind === 'arm');
		expect(arms).toMatchObject([{name: 'upper deck', formerNames: ['an older name', 'north deck']}]);
	});
});
