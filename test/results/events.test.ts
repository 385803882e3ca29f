import {describe, expect, it} from 'vitest';
import type {PastCheck} from '../../source/check/past-check.js';
import {finishedCheck} from '../../source/desk/filing.js';
import {comparisonLines} from '../../source/pages/years/comparison-lines.js';
import {historyPictures} from '../../source/pages/years/history-pictures.js';
import {trendLines} from '../../source/pages/years/trend-lines.js';
import type {NotedEvent} from '../../source/procedure/arm-event.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {eventAdded, eventStruck} from '../../source/results/event-changes.js';
import {profilesWith} from '../../source/results/profiles.js';
import {summaryOf} from '../../source/results/record.js';
import {checksOfArm, historyOf, notedInTurn} from '../../source/results/years/arms.js';
import {comparisonsOf, stretchOf} from '../../source/results/years/comparison.js';
import {doneBetween, eventsOf, isDoneBefore} from '../../source/results/years/events.js';
import {words} from '../helpers/said.js';
import {northDeck} from '../helpers/sample-check.js';
import {follow, freshDialogue} from '../helpers/script.js';

const {check} = follow(freshDialogue(), northDeck);
const profiles = profilesWith([], check, '2026-03-02T12:00:00Z');
const id = profiles.find(({kind}) => kind === 'arm')?.id ?? '';
const row = summaryOf(finishedCheck(check, '2026-03-02T12:00:00Z'));
const noon = '2026-11-25T12:00:00+01:00';
const {arm} = row;
const labels = words.options['done-since'];

const on = (date: string, more: Partial<PastCheck> = {}): PastCheck => ({
	...row,
	id: `check-${date}`,
	date,
	startedAt: `${date}T09:00:00+01:00`,
	...more,
});
const noted = (kind: string, day: string, more: Partial<NotedEvent> = {}): NotedEvent => ({
	kind,
	on: day,
	at: `${day}T18:00:00+01:00`,
	...more,
});
/** The arm's profile with these noted. */
const withEvents = (...events: readonly NotedEvent[]) =>
	profiles.map((one) => (one.id === id ? {...one, events} : one));
const kindsAfter = (checks: readonly PastCheck[]) => checks.map(({doneAfter = []}) => doneAfter.map(({kind}) => kind));
const textOf = (shown: ReturnType<typeof trendLines>) =>
	shown.map((one) => (one.kind === 'line' ? one.text : '')).join('\n');

describe('What is noted as done to an arm', () => {
	const add = (event: Partial<Parameters<typeof eventAdded>[1]>, list = profiles) =>
		eventAdded(list, {id, kind: 'bearing', day: '2026-11-20', at: noon, ...event});
	const added = (event: Partial<Parameters<typeof eventAdded>[1]>, list = profiles) => {
		const done = add(event, list);
		if (!done.ok) throw new Error(done.refusal.id);
		return done.profiles;
	};
	const eventsIn = (list: typeof profiles) => list.find((one) => one.id === id)?.events;

	it('stands with its day and its words, behind what was noted before', () => {
		const once = added({day: ' 2026-3-5 '});
		const twice = added({kind: 'other', note: ' a new belt '}, once);
		expect(eventsIn(twice)).toEqual([
			{kind: 'bearing', on: '2026-03-05', at: noon},
			{kind: 'other', on: '2026-11-20', note: 'a new belt', at: noon},
		]);
		// Nothing else of the profile changes.
		expect(twice.map(({events: _events, ...rest}) => rest)).toEqual(profiles);
	});

	it.each(['', 'yesterday', '2026-02-30', '2026-13-01', '20-11-2026'])("wants a day: '%s' is none", (day) => {
		expect(add({day})).toEqual({ok: false, refusal: {id: 'no-day', values: {typed: day}}});
	});

	it('cannot lie ahead; today is no day ahead', () => {
		expect(add({day: '2026-11-26'})).toEqual({ok: false, refusal: {id: 'day-ahead', values: {on: '2026-11-26'}}});
		expect(add({day: '2026-11-25'}).ok).toBe(true);
	});

	it('takes no control characters, and nothing for a profile that is gone', () => {
		expect(add({note: 'a\u0007b'})).toMatchObject({ok: false, refusal: {id: 'not-read'}});
		expect(add({id: 'arm-gone'})).toEqual({ok: false, refusal: {id: 'gone', values: {}}});
	});

	it('is struck out once, and stays as it was', () => {
		const list = added({}, added({kind: 'leads'}));
		const strike = (from: typeof profiles, index: number, at = noon) => {
			const done = eventStruck(from, {id, index, at});
			return done.ok ? done.profiles : from;
		};
		const struck = strike(list, 0);
		expect(eventsIn(struck)).toEqual([
			{kind: 'leads', on: '2026-11-20', at: noon, struckAt: noon},
			{kind: 'bearing', on: '2026-11-20', at: noon},
		]);
		expect(strike(struck, 0, '2026-12-01T12:00:00+01:00')).toBe(struck);
		expect(strike(struck, 7)).toBe(struck);
	});

	it('stays with the arm when another check is made of it', () => {
		const list = added({});
		const later = {...check, id: 'sample-9', answers: {...check.answers}};
		expect(eventsIn(profilesWith(list, later, noon))).toEqual(eventsIn(list));
	});
});

describe('Something noted', () => {
	it('was done before a check of a later day, and before one of its day unless noted that day after its start', () => {
		const made = on('2026-05-04');
		expect(isDoneBefore(noted('leads', '2026-05-03'), made)).toBe(true);
		expect(isDoneBefore(noted('leads', '2026-05-05'), made)).toBe(false);
		expect(isDoneBefore(noted('leads', '2026-05-04', {at: '2026-05-04T08:59:00+01:00'}), made)).toBe(true);
		expect(isDoneBefore(noted('leads', '2026-05-04', {at: '2026-05-04T09:01:00+01:00'}), made)).toBe(false);
		expect(isDoneBefore(noted('leads', '2026-05-04', {at: '2026-06-01T08:00:00+01:00'}), made)).toBe(true);
	});

	it('stands with the check that it followed; what is struck out with none', () => {
		const all = [on('2026-05-04'), on('2025-11-04'), on('2025-05-04')];
		const known = withEvents(
			noted('leads', '2026-06-01'),
			noted('bearing', '2025-12-01'),
			noted('moved', '2025-12-02', {struckAt: noon}),
			noted('levelled', '2025-01-01'),
		);
		expect(kindsAfter(checksOfArm(all, arm, known))).toEqual([['leads'], ['bearing'], []]);
		expect(eventsOf(all, known.find((one) => one.id === id)?.events ?? []).map(({kind}) => kind)).toEqual([
			'levelled',
			'bearing',
			'moved',
			'leads',
		]);
	});

	it('counts for an earlier check only as far as that check', () => {
		const all = [on('2026-05-04'), on('2025-05-04')];
		const known = withEvents(noted('leads', '2025-08-01'), noted('bearing', '2026-01-01'));
		const then = {...check, id: 'check-then', startedAt: '2025-10-04T09:00:00+01:00'};
		expect(kindsAfter(historyOf(then, all, known))).toEqual([['leads']]);
		const now = {...check, id: 'check-now', startedAt: '2026-10-04T09:00:00+01:00'};
		expect(kindsAfter(historyOf(now, all, known))).toEqual([[], ['leads', 'bearing']]);
	});

	it('may have been told at a check that came to no figures, and not at one that is void', () => {
		const told = (more: Partial<PastCheck>) =>
			checksOfArm(
				[on('2026-05-04'), on('2026-01-01', {doneSince: ['leads'], ...more}), on('2025-05-04')],
				arm,
				profiles,
			);
		expect(kindsAfter(told({measuredWith: null}))).toEqual([[], ['leads']]);
		expect(kindsAfter(told({voidBecause: 'the wrong arm'}))).toEqual([[], []]);
	});

	it('is handed over once, with the first check after it', () => {
		const forCheck = notedInTurn(withEvents(noted('leads', '2025-08-01'), noted('bearing', '2026-01-01')));
		const handed = ['2025-10-04', '2025-12-04', '2026-10-04'].map((day) =>
			forCheck({...check, startedAt: `${day}T09:00:00+01:00`}).map(({kind}) => kind),
		);
		expect(handed).toEqual([['leads'], [], ['bearing']]);
	});
});

describe('A stretch of checks that begins with something noted', () => {
	const bearing = {kind: 'bearing', on: '2025-12-01'};
	const all = [on('2026-05-04'), on('2025-11-04', {doneAfter: [bearing]}), on('2025-05-04')];

	it('leaves out what came before it', () => {
		expect(stretchOf(all)).toEqual(all.slice(0, 1));
		expect(comparisonsOf(on('2026-05-04'), all.slice(1)).map(({then}) => then.date)).toEqual(['2025-11-04']);
	});

	it('is told beside the comparison', () => {
		const done = words.years.comparison.done({what: [labels.bearing]});
		expect(textOf(comparisonLines(on('2026-05-04'), all.slice(1)))).toContain(done);
		expect(textOf(comparisonLines(on('2025-11-04'), all.slice(2)))).not.toContain(labels.bearing);
	});

	it('is told between any two checks that somebody chose, and only what lies between them', () => {
		const told = [on('2026-11-04', {doneSince: ['leads']}), ...all];
		const [newest, middle, , oldest] = told;
		if (!newest || !middle || !oldest) throw new Error('no check');
		const kinds = (then: PastCheck, now: PastCheck) => doneBetween(told, then, now).map(({kind}) => kind);
		expect(kinds(oldest, newest)).toEqual(['bearing', 'leads']);
		expect(kinds(oldest, middle)).toEqual(['bearing']);
		expect(kinds(middle, newest)).toEqual(['leads']);
	});

	it('is told as a step once a later check belongs to it', () => {
		const pulled = (byPct: number) => ({
			probe: row.probe.map((one) => ({...one, pullPct: (one.pullPct ?? 0) + byPct})),
		});
		const [first, ...others] = all;
		if (!first) throw new Error('no check');
		const later = [on('2026-11-04', pulled(2)), {...first, ...pulled(2)}, ...others];
		const figures = row.probe.map(({place, radiusMm, pullUncertaintyPct, tiltUncertaintyPct}) => ({
			figure: 'pull' as const,
			place: words.places[place === 'inner' ? 'inner' : 'outer'],
			radiusMm,
			movedPct: 2,
			// Of two checks that are as sure as each other.
			uncertaintyPct: Math.hypot(pullUncertaintyPct ?? 0, tiltUncertaintyPct ?? 0) * Math.SQRT2,
		}));
		const step = words.years.longRun.step({what: [labels.bearing], date: '2026-05-04', figures});
		expect(textOf(trendLines(later))).toContain(step);
		expect(textOf(trendLines(all))).not.toContain(labels.bearing);
	});

	it('is marked in the pictures of the history, by a letter on its day', () => {
		const told = on('2026-11-04', {doneSince: ['other', 'leads'], doneNote: 'a new belt'});
		const pictures = historyPictures([told, ...all], limitsOf(usualSettings));
		expect(pictures.length).toBeGreaterThan(0);
		for (const one of pictures) {
			expect(one.kind === 'history' && one.events).toEqual([
				{date: '2025-12-01', mark: 'a', label: labels.bearing},
				{date: '2026-11-04', mark: 'b', label: 'a new belt'},
				{date: '2026-11-04', mark: 'c', label: labels.leads},
			]);
			expect(one.kind === 'history' && one.caption).toContain('a new belt');
		}
	});
});
