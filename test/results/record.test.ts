import {describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {startDialogue} from '../../source/check/dialogue.js';
import type {PastCheck} from '../../source/check/past-check.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {recordLines} from '../../source/pages/record-lines.js';
import {documentOfCheck} from '../../source/results/document-of-check.js';
import {figuresOf} from '../../source/results/figures.js';
import {nextCheckOf} from '../../source/results/next-check.js';
import {recordSchema, summaryOf} from '../../source/results/record.js';
import {withAnyNumbers, words} from '../helpers/said.js';
import {northDeck, northDeckWith} from '../helpers/sample-check.js';
import {choose, follow, freshDialogue, type Script, say, text, waysOut, yes} from '../helpers/script.js';

const day = '2026-03-02T12:00:00Z';
const recordOf = (script: Script = northDeck) => finishedCheck(follow(freshDialogue(), script).check, day);
const linesOf = (...given: Parameters<typeof recordLines>) =>
	recordLines(...given).map((one) => (one.kind === 'line' ? one.text : one.caption));
const whole = recordOf();

describe('A finished check', () => {
	it('keeps the result as it was issued beside the answers', () => {
		const found = documentOfCheck(whole.check);
		expect(found.ok && figuresOf(found.document)).toEqual(whole.issued?.figures);
		expect(whole.issued?.findings.map(({code}) => code)).toEqual(expect.arrayContaining(['spring-pull', 'undecided']));
	});

	it('comes back from the disk as it was', () => {
		expect(z.parse(recordSchema, JSON.parse(JSON.stringify(whole)))).toEqual(whole);
	});

	it('keeps what a later version added', () => {
		const newer = {...JSON.parse(JSON.stringify(whole)), extra: {of: 'a later version'}};
		expect(z.parse(recordSchema, newer)).toEqual(newer);
	});

	it.each([
		['not a number', {limits: {pullGoodPct: Number.NaN}}],
		['a limit of zero', {limits: {pullGoodPct: 0, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6}}],
		['no series', {series: []}],
		['a time without its offset', {startedAt: '2026-03-02T12:00:00'}],
		['an id that leads out of its folder', {id: '../x'}],
	])('is refused with %s', (_what, wrong) => {
		const record = {...whole, check: {...whole.check, ...wrong}};
		expect(z.safeParse(recordSchema, record).success).toBe(false);
	});

	it('is complete only with its put-back list done', () => {
		const at = (until: string) => finishedCheck(follow(freshDialogue(), northDeck, {until}).check, day).outcome;
		expect(whole.outcome).toBe('complete');
		for (const until of ['safe', 'probe-outer', 'verdict', 'back-lock', 'back-covers', 'next-check'])
			expect(at(until)).toBe('interrupted');
	});

	it('that was stopped is called so, with no figures where there are none', () => {
		const stopped = follow(say(freshDialogue(), [{kind: 'stop'}, yes]), northDeck);
		const record = finishedCheck(stopped.check, day);
		expect(record).toMatchObject({outcome: 'stopped', issued: null});
		expect(summaryOf(record)).toMatchObject({arm: 'unnamed arm', verdict: null, atWorst: null, probe: []});
		expect(z.safeParse(recordSchema, JSON.parse(JSON.stringify(record))).success).toBe(true);
	});

	it('that was stopped after the verdict keeps its figures', () => {
		const stopped = follow(
			say(follow(freshDialogue(), northDeck, {until: 'verdict'}), [{kind: 'stop'}, yes]),
			northDeck,
		);
		expect(summaryOf(finishedCheck(stopped.check, day))).toMatchObject({outcome: 'stopped', verdict: 'beyond'});
	});
});

describe('Its one line in the list', () => {
	it('has date, arm, verdict, and the figures at each radius', () => {
		expect(summaryOf(whole)).toMatchObject({
			id: 'sample-1',
			date: '2026-03-02',
			arm: 'north deck',
			outcome: 'complete',
			verdict: 'beyond',
			atWorst: 'beyond',
			probe: [
				{place: 'inner', radiusMm: 68, pullPct: expect.closeTo(5.375, 9), bandPct: expect.closeTo(5.875, 9)},
				{place: 'outer', radiusMm: 136, pullPct: expect.closeTo(3.375, 9), bandPct: expect.closeTo(25 / 6, 9)},
			],
		});
	});

	it('has empty figures for a radius that was off the scale', () => {
		const off = summaryOf(recordOf(northDeckWith({}, {inner: [['4 out', '20 out']]})));
		expect(off).toMatchObject({verdict: 'off-scale', probe: [{pullPct: null, bandPct: null}, {place: 'outer'}]});
	});
});

describe('The next date', () => {
	const decided = [['1 in', '1 out']] as const;
	const clear = {inner: decided, outer: decided, closing: decided};
	const fine = {'gauge-step': '0.1', 'gauge-nudge': '0.1'};
	const dateFrom = (startedAt: string, answers: Script['answers'] = {}) => {
		const {check} = follow(freshDialogue(), northDeckWith({...fine, ...answers}, clear));
		return finishedCheck({...check, startedAt}, day).nextCheck?.date;
	};

	// Calendar months, clamped to the end of the month: the rule of this project; the calendar is the outside truth.
	it.each([
		['2026-03-02T10:00:00+01:00', '2026-09-02'],
		['2026-08-31T10:00:00+02:00', '2027-02-28'],
		['2027-08-31T10:00:00+02:00', '2028-02-29'],
		['2028-02-29T10:00:00+01:00', '2028-08-29'],
		['2026-12-31T23:59:00+01:00', '2027-06-30'],
		// The local day counts, although it is another day in Greenwich.
		['2026-03-02T00:30:00+13:00', '2026-09-02'],
		['2026-03-01T23:30:00-08:00', '2026-09-01'],
	])('of a check on %s is %s, half a year on', (startedAt, date) => {
		expect(dateFrom(startedAt)).toBe(date);
	});

	it.each([
		[{'arm-wire-path': 'free-loop'}, '2026-06-02'],
		[{'arm-wire-path': 'free-loop', 'arm-wire-stiffness': 'stiff'}, '2026-06-02'],
		// Of wires inside the arm nobody is asked how stiff they are.
		[{'arm-wire-stiffness': 'stiff'}, '2026-09-02'],
		[{'arm-wire-stiffness': 'medium'}, '2026-09-02'],
	] as const)('with %j is %s', (answers, date) => {
		expect(dateFrom('2026-03-02T10:00:00+01:00', answers)).toBe(date);
	});

	it('is a month off while something is undecided', () => {
		// Pull 0.2 %, band 3.1 %: the uncertainty spans the good limit of 3 %.
		const edge = [['1.3 in', '1.7 out']] as const;
		const script = northDeckWith(fine, {inner: edge, outer: edge, closing: edge});
		const record = recordOf(script);
		expect(record.issued?.figures).toMatchObject({verdict: 'undecided'});
		expect(record.nextCheck?.date).toBe('2026-04-02');
		expect(record.nextCheck?.because).toBe(words.results.nextCheck.soon({isUndecided: true, change: undefined}));
	});

	it('is no sooner for a figure that stands on its limit: more rounds would not decide it', () => {
		// Hold bands of 2.9 % and the nudge of 0.1 % are the good limit of 3 % itself.
		const edge = [['1.4 in', '1.5 out']] as const;
		const record = recordOf(northDeckWith(fine, {inner: edge, outer: edge, closing: edge}));
		expect(record.issued?.figures).toMatchObject({verdict: 'undecided'});
		expect(record.issued?.figures.probe[0]).toMatchObject({bandWouldDecide: {onLimit: true}});
		expect(record.nextCheck?.date).toBe('2026-09-02');
	});

	it.each([
		['beyond its limits', northDeck, 'beyond'],
		['off the scale', northDeckWith({}, {inner: [['4 out', '20 out']], closing: [['4 out', '20 out']]}), 'off-scale'],
	] as const)('of an arm %s is after it was put right, and the reminder comes in a month', (_what, script, verdict) => {
		const record = recordOf(script);
		expect(record.issued?.figures).toMatchObject({verdict});
		expect(record.nextCheck).toEqual({
			date: '2026-04-02',
			because: words.results.nextCheck['to-put-right']({}),
		});
	});

	it('of an arm that was off the scale before the check was stopped is after it was put right too', () => {
		const off = northDeckWith({}, {inner: [['4 out', '20 out']]});
		const stopped = say(follow(freshDialogue(), off, {until: 'probe-outer'}), [{kind: 'stop'}, yes]);
		const record = finishedCheck(follow(stopped, off).check, day);
		expect(record).toMatchObject({outcome: 'stopped', issued: null});
		expect(record.nextCheck).toEqual({
			date: '2026-04-02',
			because: words.results.nextCheck['to-put-right']({}),
		});
	});

	it('is half a year off by common practice, three months by default', () => {
		const because = (answers: Script['answers']) =>
			recordOf(northDeckWith({...fine, ...answers}, clear)).nextCheck?.because;
		expect(because({})).toBe(words.results.nextCheck.usual({}));
		expect(because({'arm-wire-path': 'free-loop'})).toBe(words.results.nextCheck['wire-creeps']({}));
	});

	it('is a month off where something changed, or perhaps did, since the last check', () => {
		const record = recordOf(northDeckWith(fine, clear));
		const row = summaryOf(record);
		/** The last check with every pull higher, and so uncertain that E_n comes to that. */
		const lastWith = (higherPct: number, en: number): PastCheck => ({
			...row,
			probe: row.probe.map((one) => ({
				...one,
				pullPct: (one.pullPct ?? 0) + higherPct,
				pullUncertaintyPct: Math.sqrt((higherPct / en) ** 2 - (one.pullUncertaintyPct ?? 0) ** 2),
				tiltPct: null,
				tiltUncertaintyPct: null,
			})),
		});
		const next = (last: PastCheck) => nextCheckOf(record.check, [last]);
		expect(next(lastWith(1, 1.32))).toEqual({
			date: '2026-04-02',
			because: {id: 'soon', values: {isUndecided: false, change: 'changed'}},
		});
		expect(next(lastWith(1, 1.3))).toEqual({
			date: '2026-04-02',
			because: {id: 'soon', values: {isUndecided: false, change: 'perhaps'}},
		});
		expect(next(lastWith(1, 0.99)).date).toBe('2026-09-02');
	});
});

describe('A record in words', () => {
	const {record: said, verdict} = words.pages;
	const asTaken = {
		series: 1,
		place: 'inner',
		setting: undefined,
		round: 1,
		isTurned: false,
		struck: undefined,
	} as const;

	it('that is marked void hands out no next date', () => {
		const lines = linesOf(whole, undefined, {voided: {reason: 'the deck was disturbed', at: day}});
		expect(lines.join('\n')).not.toMatch(withAnyNumbers(said.nextCheck({date: '2026-03-02', because: ''})));
		expect(lines).toContain(words.results.void({at: day, reason: 'the deck was disturbed'}));
	});

	it('tells outcome, next date, verdict, readings as taken and every answer', () => {
		const lines = linesOf(whole);
		expect(lines[0]).toBe(said.heading({date: '2026-03-02', outcome: 'complete', putBackOn: undefined}));
		const {date = '', because = ''} = whole.nextCheck ?? {};
		expect(date).toMatch(/^2026-\d\d-02$/);
		expect(lines).toEqual(
			expect.arrayContaining([
				said.nextCheck({date, because}),
				verdict.told({verdict: 'beyond', atWorst: 'beyond', does: words.findings['spring-pull'].brief}),
				said.reading({...asTaken, round: 2, isTurned: true, innerLimit: '-2.5 %', outerLimit: '-8 %'}),
				said.reading({...asTaken, round: 3, innerLimit: '+3 %', outerLimit: '8 % out'}),
				said.reading({...asTaken, place: 'closing', innerLimit: '2.5 % out', outerLimit: '8 % out'}),
				words.pages.consequences.answer({title: words.steps['arm-length'].title, typed: '233 mm'}),
			]),
		);
		expect(lines).not.toContain(said.deckNotReady);
	});

	it('tells struck rounds, closed series and overrides with their reasons', () => {
		let here = follow(freshDialogue(), northDeck, {until: 'guard-gap'});
		here = say(here, [text('1.7'), waysOut, choose('override'), choose('arm-touches-elsewhere')]);
		here = follow(here, northDeck, {until: 'verdict'});
		here = say(here, [choose('strike'), choose('inner:0'), choose('draught'), text('3 out'), text('8 out')]);
		here = follow(say(here, [choose('go-on')]), northDeck, {until: 'verdict'});
		here = follow(say(here, [choose('other-way'), choose('try:again')]), northDeck);
		const lines = linesOf(finishedCheck(here.check, day));
		const struck = words.reasons.draught;
		expect(lines).toContain(said.reading({...asTaken, innerLimit: '3 % out', outerLimit: '8.5 % out', struck}));
		const because = words.dialogue.because.remedy({remedy: 'again'});
		expect(lines).toContain(verdict.series.closed({number: 1, because, hasFigures: true}));
		expect(lines).toContain(
			verdict.overridden({
				title: words.steps['guard-gap'].title,
				sentence: words.problems['guard-gap-off']({guardMm: 1.7, side: 'low', lowMm: 3.7, highMm: 4.7}),
				reason: words.reasons['arm-touches-elsewhere'],
				series: 1,
				holds: true,
			}),
		);
	});

	it('of an interrupted check says that the deck is not ready, until it was put back', () => {
		const record = finishedCheck(follow(freshDialogue(), northDeck, {until: 'verdict'}).check, day);
		const heading = (putBackOn: string | undefined) =>
			said.heading({date: '2026-03-02', outcome: 'interrupted', putBackOn});
		expect(linesOf(record).slice(0, 2)).toEqual([heading(undefined), said.deckNotReady]);
		expect(linesOf(record, '2026-03-05T10:00:00Z')[0]).toBe(heading('2026-03-05'));
		expect(heading('2026-03-05')).toContain('5 Mar 2026');
		expect(linesOf(record, '2026-03-05T10:00:00Z')).not.toContain(said.deckNotReady);
	});

	it('opened again for its put-back list ends with the list', () => {
		const {check} = follow(freshDialogue(), northDeck, {until: 'verdict'});
		const reopened = startDialogue({...check, reopened: true, stopped: {at: day}}, []);
		expect(finishedCheck(follow(reopened, northDeck).check, day).outcome).toBe('stopped');
	});
});
