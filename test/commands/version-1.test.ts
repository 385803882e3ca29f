import {cpSync, readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {type Check, checkSchema} from '../../source/check/check.js';
import {positionOf} from '../../source/check/dialogue.js';
import {progressOf} from '../../source/check/progress.js';
import {openSeries} from '../../source/check/series.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {recordLines} from '../../source/pages/record-lines.js';
import {inWords} from '../../source/pages/shown-lines.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {checkReport} from '../../source/reports/check-report.js';
import {htmlOf} from '../../source/reports/html/html-of.js';
import {compute} from '../../source/results/compute.js';
import {parseDocument} from '../../source/results/document.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import type {FinishedCheck} from '../../source/results/record.js';
import {StoreError} from '../../source/store/store-error.js';
import {upgradeContent} from '../../source/store/upgrades.js';
import {truthLines} from '../../source/teaching/truth-lines.js';
import {overriddenText, reasonText} from '../../source/words/says.js';
import {dataFolder, exported, fileWith, importing} from '../helpers/data-folders.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';
import {follow, type Script, say, text} from '../helpers/script.js';

// A data folder as the first stored form has it, described in fixtures/saved/version-1.md. What is expected stands in
// its own files, which are read here as plain JSON.
const saved = path.resolve(import.meta.dirname, '../../fixtures/saved/version-1');

const rawReading = z.looseObject({typed: z.string(), value: z.number(), at: z.string()});
const rawRound = z.looseObject({innerLimit: rawReading, outerLimit: z.optional(rawReading)});
const rawAnswer = z.looseObject({typed: z.string(), value: z.unknown(), at: z.string()});
const rawCheck = z.looseObject({
	id: z.string(),
	startedAt: z.string(),
	answers: z.record(z.string(), rawAnswer),
	series: z.array(z.looseObject({inner: z.array(rawRound), was: z.record(z.string(), rawAnswer)})),
	overrides: z.array(z.looseObject({sentence: z.string(), reason: z.string()})),
	practice: z.optional(z.looseObject({readings: z.array(z.looseObject({step: z.string(), at: z.string()}))})),
});
const rawRadius = z.looseObject({
	place: z.string(),
	radiusMm: z.number(),
	pullPct: z.number(),
	pullUncertaintyPct: z.number(),
	bandPct: z.number(),
	bandUncertaintyPct: z.number(),
	tiltSharePct: z.number(),
	tiltShareUncertaintyPct: z.number(),
});
const rawFigures = z.looseObject({verdict: z.string(), atWorst: z.string(), probe: z.array(rawRadius)});
const rawRecord = z.looseObject({
	check: rawCheck,
	outcome: z.string(),
	nextCheck: z.optional(z.looseObject({date: z.string(), because: z.string()})),
	issued: z.looseObject({figures: rawFigures, findings: z.array(z.looseObject({code: z.string()}))}),
});
const rawFile = z.looseObject({version: z.literal(1), record: rawRecord});
const rawDraft = z.looseObject({version: z.literal(1), content: rawCheck});
const rawRemark = z.looseObject({remark: z.looseObject({void: z.looseObject({reason: z.string(), at: z.string()})})});

const json = (...parts: readonly string[]): unknown => JSON.parse(readFileSync(path.join(saved, ...parts), 'utf8'));
const rawRecords = (...folder: readonly string[]) =>
	readdirSync(path.join(saved, ...folder, 'checks'))
		.sort()
		.map((name) => rawFile.parse(json(...folder, 'checks', name)).record);

const filed = rawRecords();
const practised = rawRecords('practice');
const rawOf = (id: string) => {
	const found = [...filed, ...practised].find(({check}) => check.id === id);
	if (!found) throw new Error(`there is no file of ${id}`);
	return found;
};
const voided = rawRemark.parse(json('remarks', '20260516-091515-gxpl37ns.json')).remark.void;

const ids = {
	cedar: '20260314-100206-9j7h7m15',
	birch: '20260411-142024-jipb3s5u',
	voided: '20260516-091515-gxpl37ns',
	cedarAgain: '20260919-154015-ada4pdr8',
	stopped: '20261010-170527-5jip25ul',
	firstTry: '20261030-200002-uyphliko',
	noMore: '20261106-200004-0k2x4g08',
} as const;

const copy = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	cpSync(saved, dataDir, {recursive: true});
	return dataDir;
};
/** A minute after the open check was left. */
const soon = () => new Date('2026-11-20T19:29:09Z');
const workbenchOn = (dataDir: string) => new OpenWorkbench({dataDir, version: '0.0.0', clock: soon});
const practiceOn = (dataDir: string) =>
	new PracticeWorkbench({
		dataDir: path.join(dataDir, 'practice'),
		version: '0.0.0',
		settings: usualSettings,
		seed: () => 1,
	});
const recordIn = (workbench: OpenWorkbench, id: string): FinishedCheck => {
	const found = workbench.archive.record(id);
	if (!found.ok) throw new Error(found.sentence);
	return found.record;
};

let dataDir = '';
let workbench: OpenWorkbench;
beforeAll(() => {
	dataDir = copy();
	workbench = workbenchOn(dataDir);
});
const record = (id: string): FinishedCheck => recordIn(workbench, id);
const everything = {offset: 0, limit: 99};
const imprint = {version: '0.0.0', writtenOn: '2026-11-25'};

const zeroIds = ['zero-first-inner', 'zero-first-outer', 'zero-turned-inner', 'zero-turned-outer'] as const;
type Raw = z.infer<typeof rawCheck>;
/** The rounds of the zero check of a series, as rounds of it; the check's own answers where none stood in its way. */
const zeroRoundsOf = ({answers, series}: Raw, index: number) => {
	const [inner, outer, turnedInner, turnedOuter] = zeroIds.map((id) => series[index]?.was[id] ?? answers[id]);
	return [
		{innerLimit: inner, outerLimit: outer},
		{gauge: 'turned', innerLimit: turnedInner, outerLimit: turnedOuter},
	];
};
const innerOf = ({series}: Check | Raw, index = series.length - 1) => series[index]?.inner ?? [];

describe('Checks filed in the first stored form', () => {
	it('are all listed, newest first, with the very numbers that were issued', () => {
		const {rows, total, notices} = workbench.archive.past(everything);
		expect([total, notices]).toEqual([filed.length, []]);
		expect(filed).toHaveLength(5);
		const wanted = filed.toReversed().map(({check, outcome, nextCheck, issued: {figures}}) => ({
			id: check.id,
			startedAt: check.startedAt,
			arm: check.answers['arm-name']?.typed,
			outcome,
			verdict: figures.verdict,
			atWorst: figures.atWorst,
			probe: figures.probe.map((one) => ({
				place: one.place,
				radiusMm: one.radiusMm,
				pullPct: one.pullPct,
				pullUncertaintyPct: one.pullUncertaintyPct,
				bandPct: one.bandPct,
				bandUncertaintyPct: one.bandUncertaintyPct,
				tiltPct: one.tiltSharePct,
				tiltUncertaintyPct: one.tiltShareUncertaintyPct,
			})),
			nextDate: nextCheck?.date ?? null,
		}));
		expect(rows).toMatchObject(wanted);
		for (const {measuredWith} of rows) expect(measuredWith?.withoutSettingUp).toBe(true);
	});

	it.each(filed.map(({check}) => check.id))('keep what was issued, figures and words: %s', (id) => {
		const {issued, nextCheck} = record(id);
		const raw = rawOf(id);
		expect(issued?.figures).toMatchObject(raw.issued.figures);
		expect(issued?.findings).toEqual(raw.issued.findings);
		expect(issued?.form).toBe(1);
		expect(nextCheck).toEqual(raw.nextCheck);
	});

	it.each([
		// A quarter of the sum of the four readings of the zero check: 3 + 8.5 - 2.5 - 8 and 4 + 9 - 3.5 - 8.5 %, and in mN,
		// counted outward, 1 + 2 - 1.1 - 2.05.
		[ids.cedar, 0.25],
		[ids.cedarAgain, 0.25],
		[ids.voided, -0.0375],
		[ids.birch, null],
		[ids.stopped, null],
	] as const)('tell the zero that was taken off then, and the pull without its tilt: %s', (id, zero) => {
		const {figures} = record(id).issued ?? {};
		expect(figures?.zero).toEqual({
			source: zero === null ? 'unchecked' : 'turned',
			zero: zero === null ? null : expect.closeTo(zero, 9),
			zeroUncertainty: null,
		});
		expect(figures?.probe.map(({ownPullPct}) => ownPullPct)).toEqual(
			rawOf(id).issued.figures.probe.map((one) => expect.closeTo(one.pullPct - one.tiltSharePct, 9)),
		);
	});

	it('say in a report how their zero was found, and what their ± leave out', () => {
		const pageOf = (id: string) =>
			htmlOf(checkReport({record: record(id), history: []}, imprint)).replaceAll('\u00a0', ' ');
		expect(pageOf(ids.cedar)).toContain(
			words.pages.gauge.zero({source: 'turned', size: 0.25, side: 'plus', uncertainty: null, unit: 'percent'}),
		);
		expect(pageOf(ids.birch)).toContain(words.pages.gauge.zeroUnchecked);
		for (const {check} of filed) expect(pageOf(check.id)).toContain(words.reports.method.issuedBefore);
	});

	it('keep the void mark, which leaves that one out of the history of its arm', () => {
		const {rows} = workbench.archive.past(everything);
		expect(rows.filter((row) => row.voidBecause !== undefined)).toMatchObject([
			{id: ids.voided, voidBecause: voided.reason},
		]);
		expect(workbench.archive.record(ids.voided)).toMatchObject({voided});
		expect(workbench.archive.ofArm('birch ten').map(({id}) => id)).toEqual([ids.stopped, ids.birch]);
	});

	it('keep every override with its sentence and its reason', () => {
		const {overrides} = rawOf(ids.birch).check;
		expect(overrides).toHaveLength(1);
		expect(record(ids.birch).check.overrides.map((one) => [overriddenText(one), reasonText(one.reason)])).toEqual(
			overrides.map(({sentence, reason}) => [sentence, reason]),
		);
		const said = recordLines(record(ids.birch)).map(inWords).join('\n');
		for (const {sentence, reason} of overrides) {
			expect(said).toContain(sentence);
			expect(said).toContain(reason);
		}
	});

	it('belong to their arm under its name of then and its name of now', () => {
		expect(workbench.profiles().find(({name}) => name === 'birch ten, wall shelf')?.formerNames).toEqual(['birch ten']);
		for (const name of ['birch ten', 'birch ten, wall shelf'])
			expect(workbench.archive.ofArm(name).map(({arm}) => arm)).toEqual(['birch ten, wall shelf', 'birch ten']);
	});

	it.each([
		[ids.cedar, [true]],
		[ids.birch, [false]],
		[ids.voided, [false, true]],
		[ids.cedarAgain, [true, true]],
		[ids.stopped, [false]],
	] as const)('have the zero check of each series, where it had one, as its first two inner rounds: %s', (id, had) => {
		const {check} = record(id);
		const raw = rawOf(id).check;
		expect(check.setAnew).toBe(false);
		expect(check.series).toHaveLength(had.length);
		had.forEach((hadZero, index) => {
			expect(innerOf(check, index)).toEqual([...(hadZero ? zeroRoundsOf(raw, index) : []), ...innerOf(raw, index)]);
		});
	});

	it.each([
		[ids.birch, undefined],
		[ids.stopped, 'probe-outer'],
	] as const)('whose gauge was not turned are not asked for a free zero either: %s', (id, next) => {
		const {stopped: _stopped, ...check} = record(id).check;
		expect(check.answers['gauge-turns']?.value).toBe('no');
		const progress = progressOf(check);
		const free = progress.visible.filter((step) => step.id.startsWith('zero-free-'));
		expect(free.map((step) => [step.id, progress.stateOf(step), check.answers[step.id]?.value])).toEqual([
			['zero-free-before', 'done', null],
			['zero-free-after', 'done', null],
		]);
		expect(progress.current?.id).toBe(next);
	});

	it('speak of wires in the words of today', () => {
		for (const id of [ids.birch, ids.voided, ids.stopped]) {
			expect(rawOf(id).check.answers).toMatchObject({
				'arm-wire-path': {value: 'exposed-loop'},
				'arm-wire-stiffness': {value: 'supple'},
			});
			expect(record(id).check.answers).toMatchObject({
				'arm-wire-path': {value: 'free-loop', typed: 'in a free loop'},
				'arm-wire-stiffness': {value: 'limp', typed: 'limp, hangs by itself'},
			});
		}
		expect(workbench.profiles().find(({name}) => name === 'birch ten, wall shelf')?.answers).toMatchObject({
			'arm-wire-path': {value: 'free-loop'},
			'arm-wire-stiffness': {value: 'limp'},
		});
	});

	it.each(filed.map(({check}) => check.id))('are documents for compute: %s', (id) => {
		const found = documentOfCheck(record(id).check);
		if (!found.ok) throw new Error(found.missing);
		expect(parseDocument(JSON.parse(JSON.stringify(found.document)))).toMatchObject({ok: true});
		expect(found.document.gauge).toMatchObject({
			unit: rawOf(id).check.answers['gauge-unit']?.value,
			topOfScale: rawOf(id).check.answers['gauge-top']?.value,
			setAnew: false,
		});
		const hasTurned = innerOf(record(id).check).some(({gauge}) => gauge === 'turned');
		expect(compute(found.document).zero.source).toBe(hasTurned ? 'turned' : 'unchecked');
	});
});

describe('A check of the first stored form that lacks something', () => {
	/** The check left open, without some of its answers, as it is read now. */
	const without = (...steps: readonly string[]): Check => {
		const {content} = rawDraft.parse(json('draft-a.json'));
		const answers = Object.fromEntries(Object.entries(content.answers).filter(([step]) => !steps.includes(step)));
		return checkSchema.parse(upgradeContent('armdrift-draft', 'content', {...content, answers}, 1));
	};

	it('has the end of a percent scale that was meant then, where it was left to the program', () => {
		expect(without().answers['gauge-top']?.value).toBe(20);
		// Where none was typed the program of then took 16 %.
		expect(without('gauge-top').answers['gauge-top']).toMatchObject({value: 16, typed: '16 %'});
	});

	it('has no round of a zero check that was not taken to its end', () => {
		const raw = rawDraft.parse(json('draft-a.json')).content;
		expect(innerOf(without('zero-turned-outer'))).toEqual(innerOf(raw));
		expect(without('zero-turned-outer').answers['gauge-turns']?.value).toBe('inner');
	});
});

describe('Settings of the first stored form', () => {
	it('are kept as they were set, and set the gauge anew', () => {
		expect(workbench.settings()).toEqual({
			pullGoodPct: 2,
			pullUsablePct: 4,
			bandGoodPct: 3.5,
			bandUsablePct: 6,
			settleSeconds: 5,
			bell: false,
			setAnew: true,
			brisk: false,
			shop: '',
			language: '',
		});
	});
});

describe('The check left open in the first stored form', () => {
	const raw = rawDraft.parse(json('draft-a.json')).content;
	// The readings that were still to come, invented: the third inner round, the outer radius, the closing.
	const rest: Script = {
		answers: {},
		rounds: {
			outer: [
				['1.5 out', '5.5 out'],
				['1.5 out', '5 out'],
				['2 out', '5.5 out'],
			],
			closing: [['2.5 out', '8 out']],
		},
	};

	it('begins its round anew, its zero check being two inner rounds now', async () => {
		const opened = await workbenchOn(copy()).resume();
		if (!opened.ok) throw new Error(opened.sentence);
		const {check} = opened.dialogue;
		expect(innerOf(check)).toEqual([...zeroRoundsOf(raw, 0), ...innerOf(raw).slice(0, -1)]);
		expect(openSeries(check).withdrawn).toMatchObject([{place: 'inner', limit: 'innerLimit', reading: {value: 2.5}}]);
		expect(innerOf(check).map(({gauge, outerLimit}) => [gauge, outerLimit?.value])).toEqual([
			[undefined, 8.5],
			['turned', -8],
			[undefined, 8.5],
			[undefined, 8],
		]);
		expect([check.setAnew, check.answers['gauge-turns']?.value]).toEqual([false, 'inner']);
		const {step, slot} = positionOf(opened.dialogue);
		expect([step?.id, slot]).toEqual(['probe-inner', {place: 'inner', index: 4, which: 'innerLimit'}]);
	});

	it('comes to a verdict whose zero was found by turning the gauge', async () => {
		const opened = await workbenchOn(copy()).resume();
		if (!opened.ok) throw new Error(opened.sentence);
		const read = follow(say(opened.dialogue, [text('2.5 out'), text('8 out')]), rest, {until: 'verdict'});
		expect(positionOf(read).step?.id).toBe('verdict');
		expect(openSeries(read.check).inner.filter(({gauge}) => gauge === 'turned')).toHaveLength(1);
		const found = documentOfCheck(read.check);
		if (!found.ok) throw new Error(found.missing);
		const {zero, probe} = compute(found.document);
		// As used the middles are 5.75, 5.75, 5.5, 5.25 and, closing, 5.25 %: 5.5 % on average. Turned it is -5.25 %. Half the
		// sum is the zero, 0.125 %; half the difference is what the arm does, 5.375 %, of 21.6 mN carried for 21 mN.
		expect(zero).toMatchObject({source: 'turned', zero: expect.closeTo(0.125, 9)});
		expect(probe[0]?.pullPct).toBeCloseTo((5.375 * 21.6) / 21, 9);
	});
});

describe('Practice of the first stored form', () => {
	const practice = () => practiceOn(dataDir);

	it('is listed and opens, each with the numbers that were issued', () => {
		const desk = practice();
		expect(desk.archive.past(everything)).toMatchObject({
			total: 2,
			rows: [{id: ids.noMore}, {id: ids.firstTry}],
			notices: [],
		});
		for (const {check, issued} of practised)
			expect(recordIn(desk, check.id).issued).toMatchObject({...issued, form: 1});
	});

	it('keeps the truth of an arm that is no more hidden, and tells that of one that still is', () => {
		const truthOf = (id: string) => {
			const {check, issued} = recordIn(practice(), id);
			return truthLines(check, issued).map(inWords);
		};
		expect(truthOf(ids.noMore)).toEqual([words.practice.truth.unknownArm({arm: 'wire-and-bearing'})]);
		expect(truthOf(ids.firstTry)[0]).toBe(words.practice.truth.hidden({arm: 'sticky-bearing'}));
	});

	it('has its zero check as inner rounds, in the readings and in the notes on them', () => {
		const {check} = recordIn(practice(), ids.noMore);
		const raw = rawOf(ids.noMore).check;
		expect(innerOf(check)).toEqual([...zeroRoundsOf(raw, 0), ...innerOf(raw)]);
		const notes = check.practice?.readings ?? [];
		expect(notes.map(({at}) => at)).toEqual(raw.practice?.readings.map(({at}) => at));
		const inner = notes.filter(({step}) => step === 'probe-inner');
		expect(inner.map(({index, which, isTurned, at}) => ({index, which, isTurned, at}))).toEqual(
			innerOf(check).flatMap(({gauge, innerLimit, outerLimit}, index) => [
				{index, which: 'innerLimit', isTurned: gauge === 'turned', at: innerLimit.at},
				{index, which: 'outerLimit', isTurned: gauge === 'turned', at: outerLimit?.at},
			]),
		);
		expect(notes.filter(({step}) => step.startsWith('zero-'))).toEqual([]);
	});

	it('of a first try keeps one round at each radius, and none with the gauge turned', () => {
		const {check} = recordIn(practice(), ids.firstTry);
		expect(innerOf(check)).toEqual(innerOf(rawOf(ids.firstTry).check));
		expect(check.practice).toEqual(rawOf(ids.firstTry).check.practice);
	});

	it('that was left open goes on', async () => {
		const raw = rawDraft.parse(json('practice', 'draft-a.json')).content;
		const opened = await practiceOn(copy()).resume();
		if (!opened.ok) throw new Error(opened.sentence);
		const {check} = opened.dialogue;
		expect(innerOf(check, 0)).toEqual([...zeroRoundsOf(raw, 0), ...innerOf(raw, 0)]);
		expect(check.practice?.readings.map(({step, index, isTurned}) => [step, index, isTurned])).toEqual(
			innerOf(check, 0).flatMap(({gauge, outerLimit}, index) =>
				Array.from({length: outerLimit ? 2 : 1}, () => ['probe-inner', index, gauge === 'turned']),
			),
		);
	});
});

describe('A folder of the first stored form', () => {
	/** Every file but the index, which is made anew, with its bytes. */
	const bytesOf = (folder: string): Record<string, string> =>
		Object.fromEntries(
			readdirSync(folder, {recursive: true, withFileTypes: true})
				.filter((entry) => entry.isFile() && path.basename(entry.parentPath) !== 'index')
				.map((entry) => path.join(entry.parentPath, entry.name))
				.map((file) => [path.relative(folder, file), readFileSync(file, 'latin1')]),
		);

	it('is left as it is by reading, all but its index', () => {
		const folder = copy();
		const before = bytesOf(folder);
		expect(Object.keys(before).length).toBeGreaterThan(20);
		const reader = workbenchOn(folder);
		reader.look();
		expect(reader.unfinished()?.arm).toBe('cedar nine');
		for (const {id} of reader.archive.past(everything).rows) recordLines(recordIn(reader, id));
		expect(reader.archive.due().map(({arm}) => arm).length).toBeGreaterThan(0);
		const desk = practiceOn(folder);
		desk.look();
		for (const {id} of desk.archive.past(everything).rows) recordIn(desk, id);
		exported(dataFolder(folder));
		expect([...reader.notices(), ...desk.notices()]).toEqual([]);
		expect(bytesOf(folder)).toEqual(before);
	});

	it('exported in that form can be imported, and comes to the same', async () => {
		const content = (file: string) => z.looseObject({content: z.unknown()}).parse(json(file)).content;
		const file = fileWith(
			JSON.stringify({
				kind: 'armdrift-export',
				version: 1,
				program: '0.1.0',
				exportedAt: '2026-11-20T20:00:00Z',
				profiles: content('profiles-a.json'),
				settings: content('settings-b.json'),
				checks: filed.map((one) => ({
					id: one.check.id,
					record: one,
					...(one.check.id === ids.voided ? {remark: {void: voided}} : {}),
				})),
			}),
		);
		const from = dataFolder(dataDir);
		const to = dataFolder();
		expect((await importing(file, to)).plan).toMatchObject({clashes: [], same: 0});
		expect(to.store.ids()).toEqual(from.store.ids());
		for (const id of to.store.ids()) {
			const own = to.store.record(id);
			if (own instanceof StoreError) throw own;
			expect(own).toEqual(from.store.record(id));
			expect(to.store.remark(id)).toEqual(from.store.remark(id));
		}
		expect(to.store.profiles().value).toEqual(from.store.profiles().value);
		expect(to.store.settings().value).toEqual(from.store.settings().value);
		expect((await importing(file, to)).plan).toMatchObject({newChecks: [], clashes: [], same: filed.length});
	});
});
