import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {PastCheck} from '../../../source/check/past-check.js';
import {comparisonLines} from '../../../source/pages/years/comparison-lines.js';
import {trendLines} from '../../../source/pages/years/trend-lines.js';
import {
	changeSince,
	comparisonOf,
	comparisonsOf,
	obstaclesOf,
	stretchOf,
} from '../../../source/results/years/comparison.js';
import {obstacleText} from '../../../source/words/results-text.js';
import {beginning, withAnyNumbers, words} from '../../helpers/said.js';

const {comparison, longRun} = words.years;
const inner = {place: words.places.inner, radiusMm: 68};

const outer = {place: words.places.outer, radiusMm: 136};

type Figures = {pull?: number; band?: number; u?: number; tilt?: number | null; tiltU?: number | null};

/** An invented past check: pull and band in percent at the inner and the outer radius. */
const pastCheck = (date: string, inner: Figures, outer: Figures = {}, more: Partial<PastCheck> = {}): PastCheck => ({
	id: date,
	date,
	startedAt: `${date}T10:00:00Z`,
	arm: 'north deck',
	outcome: 'complete',
	verdict: 'good',
	atWorst: 'good',
	probe: [
		{place: 'inner', radiusMm: 68, ...inner},
		{place: 'outer', radiusMm: 136, ...outer},
	].map(({place, radiusMm, pull = 1, band = 2, u = 0.3, tilt = 0, tiltU = 0}) => ({
		place,
		radiusMm,
		pullPct: pull,
		pullUncertaintyPct: u,
		bandPct: band,
		bandUncertaintyPct: u,
		tiltPct: tilt,
		tiltUncertaintyPct: tilt === null ? null : tiltU,
	})),
	measuredWith: {
		playingMn: 20,
		effectiveLengthMm: 233,
		loading: 'gravity',
		guard: 'included',
		tools: 'bench set',
		temperatureC: null,
		withoutSettingUp: false,
	},
	doneSince: [],
	doneNote: null,
	tookMinutes: null,
	nextDate: null,
	...more,
});
const measuredWith = (one: PastCheck, more: Partial<NonNullable<PastCheck['measuredWith']>>): PastCheck => ({
	...one,
	measuredWith: one.measuredWith && {...one.measuredWith, ...more},
});

const then = pastCheck('2026-05-04', {});
const moved = (one: Partial<Parameters<typeof comparison.moved>[0]>): string =>
	comparison.moved({
		...inner,
		figure: 'pull',
		movedPct: 0,
		uncertaintyPct: 0.42,
		date: then.date,
		verdict: 'changed',
		...one,
	});
const text = (now: PastCheck, earlier: readonly PastCheck[], wireMoves = false): string =>
	comparisonLines(now, earlier, {wireMoves})
		.map((one) => (one.kind === 'line' ? one.text : ''))
		.join('\n');

describe('A check against an earlier one', () => {
	it('says the size and the way of what changed', () => {
		// U of each 0.3 %, of both √(0.3² + 0.3²) = 0.42 %.
		const said = text(pastCheck('2026-11-25', {pull: 2.4}), [then]);
		expect(said.startsWith(comparison.summary.changed)).toBe(true);
		const {date} = then;
		expect(said).toContain(moved({movedPct: 1.4, date}));
		const still = {movedPct: 0, uncertaintyPct: 0.42};
		expect(said).toContain(
			comparison.unchanged({
				date,
				figures: [
					{...inner, figure: 'band', ...still},
					{...outer, figure: 'pull', ...still},
					{...outer, figure: 'band', ...still},
				],
			}),
		);
	});

	it('tells narrower from wider and spindle from rim', () => {
		const said = text(pastCheck('2026-11-25', {pull: -1, band: 0.5}), [then]);
		expect(said).toContain(moved({movedPct: -2}));
		expect(said).toContain(moved({movedPct: -1.5, figure: 'band'}));
	});

	it('needs more than half a percent of the tracking force, however sure it is', () => {
		const sure = {u: 0.001};
		const against = (pull: number) =>
			changeSince(pastCheck('2026-11-25', {pull, ...sure}), [pastCheck('2026-05-04', sure)]);
		expect([1.5, 0.5].map(against)).toEqual(['unchanged', 'unchanged']);
		expect([1.51, 0.49].map(against)).toEqual(['changed', 'changed']);
	});

	it('is changed above 1.31 times its uncertainty, perhaps above once', () => {
		// Uncertainties of 0.6 and 0.8 % make 1 % together.
		const against = (pull: number) =>
			changeSince(pastCheck('2026-11-25', {pull, u: 0.8}), [pastCheck('2026-05-04', {u: 0.6})]);
		expect([2, 2.01, 2.31, 2.32, -0.32].map(against)).toEqual([
			'unchanged',
			'perhaps',
			'perhaps',
			'changed',
			'changed',
		]);
		const said = text(pastCheck('2026-11-25', {pull: 2.2, u: 0.8}), [pastCheck('2026-05-04', {u: 0.6})]);
		expect(said.startsWith(comparison.summary.perhaps)).toBe(true);
	});

	it('learns no spread of its own from what the arm did before', () => {
		const wandering = [0, 2, 0, 2].map((pull, index) => pastCheck(`2026-0${index + 1}-04`, {pull})).toReversed();
		const now = pastCheck('2026-11-25', {pull: 3});
		// It differs by 1 % from the last one, whatever came before: U of both is 0.42 %.
		expect(changeSince(now, wandering)).toBe('changed');
		expect(changeSince(now, wandering.slice(0, 1))).toBe('changed');
	});

	it('counts what setting up makes for a check that was issued without it', () => {
		const now = pastCheck('2026-11-25', {pull: 1.8});
		expect(changeSince(now, [then])).toBe('changed');
		// Then √(0.3² + (1.96·0.3)²) = 0.66 %, with the 0.3 % of now 0.73 %: 0.8 % is 1.1 times that.
		const old = measuredWith(then, {withoutSettingUp: true});
		expect(changeSince(now, [old])).toBe('perhaps');
		expect(text(now, [old])).toContain(moved({movedPct: 0.8, uncertaintyPct: 0.73, verdict: 'perhaps'}));
		// The band never knew of it.
		expect(comparisonOf(now, old).figures.find(({figure}) => figure === 'band')?.change.uncertaintyMn).toBeCloseTo(
			0.2 * Math.hypot(0.3, 0.3),
			9,
		);
	});

	it("compares the arm's own pulls where the level was read both times: a deck that was tilted is no change", () => {
		// 1 % own, and 1.2 % that the tilt made this time.
		const tilted = (tilt: number | null, tiltU = 0) => {
			const figures = {pull: 2.2, tilt, tiltU};
			return pastCheck('2026-11-25', figures, figures);
		};
		expect(changeSince(tilted(1.2), [then])).toBe('unchanged');
		expect(changeSince(tilted(0), [then])).toBe('changed');
		// The uncertainty of the tilt counts: √(0.3² + 0.3² + 0.7²) = 0.82 % for a difference of 1.2 %, 1.5 times.
		expect(comparisonOf(tilted(0, 0.7), then).figures[0]?.change.uncertaintyMn).toBeCloseTo(
			0.2 * Math.sqrt(0.3 ** 2 + 0.3 ** 2 + 0.7 ** 2),
			9,
		);
	});

	it('compares pulls as they are where the level was not read both times, and says so', () => {
		const told = words.results.notes['level-not-read']({});
		const unread = pastCheck('2026-11-25', {pull: 2.2, tilt: null}, {pull: 2.2, tilt: null});
		expect(text(unread, [then])).toContain(told);
		const before = pastCheck('2026-05-04', {tilt: -1.2}, {tilt: -1.2});
		// Own pulls would be equal at 2.2 %; as they are read they differ by 1.2 %.
		expect(changeSince(unread, [before])).toBe('changed');
		expect(text(pastCheck('2026-11-25', {}), [then])).not.toContain(told);
	});

	it('compares forces: the same torque under another tracking force is no change', () => {
		const lighter = measuredWith(pastCheck('2026-11-25', {pull: 2, band: 4}, {pull: 2, band: 4}), {playingMn: 10});
		expect(changeSince(lighter, [then])).toBe('unchanged');
		const note = words.results.notes['other-force']({thenMn: 20, nowMn: 10});
		for (const printed of ['2.039 g', '1.02 g']) expect(note).toContain(printed);
		expect(text(lighter, [then])).toContain(note);
	});

	it.each([
		[
			'another effective length',
			{effectiveLengthMm: 230},
			{id: 'other-length', values: {date: then.date, thenMm: 233, nowMm: 230}},
		],
		[
			'another loading',
			{loading: 'spring'},
			{id: 'other-loading', values: {date: then.date, before: 'gravity', today: 'spring'}},
		],
	])('does not compare with %s, and says why', (_name, more, why) => {
		const now = measuredWith(pastCheck('2026-11-25', {pull: 9}), more);
		const said = text(now, [then]);
		const obstacles = obstaclesOf(now, then);
		expect(said.startsWith(comparison.notWithLast(then))).toBe(true);
		expect(obstacles).toEqual([why]);
		for (const one of obstacles) expect(said).toContain(obstacleText(one));
	});

	it('compares only radii that agree within 2 mm', () => {
		const moved = pastCheck('2026-11-25', {});
		const at = (radiusMm: number): PastCheck => ({
			...moved,
			probe: moved.probe.map((one) => (one.place === 'inner' ? {...one, radiusMm} : one)),
		});
		expect(comparisonOf(at(70), then).figures).toHaveLength(4);
		const far = comparisonOf(at(70.1), then);
		expect(far.figures).toHaveLength(2);
		expect(far.obstacles).toEqual([{id: 'radius-missing', values: {date: '2026-05-04', radiusMm: 70.1}}]);
	});

	it('says what else was otherwise', () => {
		const said = text(measuredWith(pastCheck('2026-11-25', {}), {tools: 'field kit', guard: 'none'}), [then]);
		const {notes} = words.results;
		expect(said).toContain(notes['other-tools']({before: 'bench set', today: 'field kit'}));
		expect(said).toContain(notes['other-guard']({before: 'included', today: 'none'}));
	});

	it('names the wire first where it may have moved', () => {
		const now = pastCheck('2026-11-25', {pull: 3});
		expect(text(now, [then], true)).toContain(comparison.wireFirst);
		expect(text(now, [then])).not.toContain(comparison.wireFirst);
		expect(text(pastCheck('2026-11-25', {}), [then], true)).not.toContain(comparison.wireFirst);
	});

	it('stands against the last one and the first of its stretch', () => {
		// Each is 0.5 % from the one before, which is no change; together they are 1 %.
		const first = pastCheck('2024-05-04', {pull: 1.5});
		const now = pastCheck('2026-11-25', {pull: 0.5});
		expect(comparisonsOf(now, [then, first]).map((one) => one.then.date)).toEqual(['2026-05-04', '2024-05-04']);
		expect(comparisonsOf(now, [then])).toHaveLength(1);
		expect(comparisonsOf(now, [])).toEqual([]);
		const [withLast = '', withFirst = ''] = text(now, [then, first]).split(comparison.againstFirst);
		expect(withLast).toContain(comparison.summary.unchanged);
		expect(withFirst).toContain(moved({movedPct: -1, date: '2024-05-04'}));
	});

	it('is the same both ways, but for the sign', () => {
		const figure = fc.double({min: -10, max: 10, noNaN: true});
		fc.assert(
			fc.property(figure, figure, (one, other) => {
				const [a, b] = [pastCheck('2026-05-04', {pull: one}), pastCheck('2026-11-25', {pull: other})];
				const [there] = comparisonOf(b, a).figures;
				const [back] = comparisonOf(a, b).figures;
				expect(there?.change.differenceMn).toBeCloseTo(-(back?.change.differenceMn ?? 0), 9);
				expect(there?.change.verdict).toBe(back?.change.verdict);
			}),
		);
	});
});

describe('A stretch of checks', () => {
	const steady = (date: string, more: Partial<PastCheck> = {}) => pastCheck(date, {}, {}, more);
	const dates = (checks: readonly PastCheck[]) => checks.map(({date}) => date);

	it('reaches back to the first check where nothing happened', () => {
		const all = [steady('2026-05-04'), steady('2025-11-04'), steady('2025-05-04')];
		expect(stretchOf(all)).toEqual(all);
		expect(stretchOf([])).toEqual([]);
	});

	it('begins with the check before which something was done', () => {
		const all = [steady('2026-05-04'), steady('2025-11-04', {doneSince: ['leads']}), steady('2025-05-04')];
		expect(dates(stretchOf(all))).toEqual(['2026-05-04', '2025-11-04']);
		expect(dates(stretchOf(all.slice(1)))).toEqual(['2025-11-04']);
	});

	it('begins with the check that had changed, and not with one that had perhaps', () => {
		const jump = (pull: number) => [
			pastCheck('2026-05-04', {pull}),
			pastCheck('2025-11-04', {pull}),
			steady('2025-05-04'),
		];
		// U of both is 0.424 %: 0.6 % is 1.4 times that, 0.52 % is 1.2 times.
		expect(dates(stretchOf(jump(1.6)))).toEqual(['2026-05-04', '2025-11-04']);
		expect(dates(stretchOf(jump(1.52)))).toEqual(['2026-05-04', '2025-11-04', '2025-05-04']);
	});

	it('ends where something was done since: then only the last check is compared with, and it is said', () => {
		const now = steady('2026-11-25', {doneSince: ['bearing']});
		const earlier = [steady('2026-05-04'), steady('2025-11-04')];
		expect(comparisonsOf(now, earlier).map((one) => one.then.date)).toEqual(['2026-05-04']);
		expect(text(now, earlier)).toContain(comparison.done({what: [words.options['done-since'].bearing]}));
		expect(text(steady('2026-11-25'), earlier)).not.toContain(beginning(comparison.done({what: ['1']})));
	});
});

describe('A warmer or colder room', () => {
	// 0.1 % for each °C, a little noise about it; the arm goes with the temperature.
	const earlier = [18, 24, 20, 26, 22]
		.map((temperatureC, index) =>
			measuredWith(pastCheck(`2026-0${index + 1}-04`, {pull: temperatureC / 10 + 0.01 * (index % 2), u: 1}), {
				temperatureC,
			}),
		)
		.toReversed();
	const said = (temperatureC: number | null) =>
		text(measuredWith(pastCheck('2026-11-25', {pull: 2.5, u: 1}), {temperatureC}), earlier);

	it('has its part of a difference told beside it, where the rooms differ by more than 3 °C', () => {
		expect(said(26)).toContain(comparison.room({...inner, byC: 4, pullPct: 0.4}));
		expect(said(18)).toContain(comparison.room({...inner, byC: -4, pullPct: -0.4}));
		const room = beginning(comparison.room({...inner, byC: 4, pullPct: 0.4}));
		expect(said(25)).not.toContain(room);
		expect(said(null)).not.toContain(room);
	});
});

describe('The long run', () => {
	const trend = (slope: number, slopeUncertainty: number) => ({
		slope,
		slopeUncertainty,
		intercept: 0,
		interceptUncertainty: 0,
		residualSd: 0,
		n: 5,
	});
	const fiveChecks = {...inner, trend: trend(0.9, 0.1), checks: 5, date: '2022-05-04'};
	/** A sentence in which each 7 may be any digit. */
	const withAnySevens = (sentence: string): RegExp =>
		new RegExp(sentence.replaceAll(/[().]/g, '\\$&').replaceAll('7', '\\d'));
	const noTrend = withAnyNumbers(longRun.noTrend(fiveChecks));
	const half = (index: number): string => `${2022 + Math.floor(index / 2)}-${index % 2 === 0 ? '05' : '11'}-04`;
	const run = (pulls: readonly number[], temperatures: readonly (number | null)[] = []): PastCheck[] =>
		pulls
			.map((pull, index) => measuredWith(pastCheck(half(index), {pull}), {temperatureC: temperatures[index] ?? null}))
			.reverse();
	const said = (checks: readonly PastCheck[]): string =>
		trendLines(checks)
			.map((one) => (one.kind === 'line' ? one.text : ''))
			.join('\n');

	it('is looked for from five checks on', () => {
		expect(said(run([1, 1.5, 2, 2.5]))).toContain(longRun.tooFew({checks: 4, date: half(0), least: 5}));
		expect(said(run([1, 1.5]))).toContain(longRun.tooFew({checks: 2, date: half(0), least: 5}));
		expect(said(run([1]))).toBe('');
	});

	it('is a drift where its 99 % interval does not hold zero, and no trend where it does', () => {
		// Half a percent each half year is one a year; a little noise gives it an interval.
		expect(said(run([1, 1.49, 1.96, 2.45, 2.95]))).toMatch(
			withAnySevens(longRun.drifts({...fiveChecks, trend: trend(0.97, 0.77)})),
		);
		expect(said(run([1, 1.5, 1, 1.5, 1.2]))).toMatch(noTrend);
		// By hand, in half years: about the line 1 + 0.2x lie 0, 0.1, −0.2, 0.1, 0, so s = √(0.06/3) = 0.141 and the slope
		// is good to t·s/√10 with three degrees of freedom: 0.14 at 95 % (t = 3.182), 0.26 at 99 % (t = 5.841).
		expect(said(run([1, 1.3, 1.2, 1.7, 1.8]))).toMatch(noTrend);
	});

	it('claims no uncertainty of nothing where coarse readings fell alike', () => {
		const alike = said(run([1, 1, 1, 1, 1]));
		expect(alike).toContain(longRun.noTrend(fiveChecks));
		// Exactly half a percent more each time: the line goes through every reading.
		const even = said(
			['2022-05-04', '2023-05-04', '2024-05-03', '2025-05-03', '2026-05-03']
				.map((date, index) => pastCheck(date, {pull: 1 + 0.5 * index}))
				.reverse(),
		);
		expect(even).toContain(longRun.drifts({...fiveChecks, trend: trend(0.5, 0)}));
		for (const text of [alike, even]) expect(text).not.toContain('± 0.00');
	});

	it('does not tell drift from season before checks lie in three quarters of the year', () => {
		const steps = [1, 1.49, 1.96, 2.45, 2.95];
		expect(said(run(steps))).toContain(longRun.seasonOpen(inner));
		const quarters = ['2022-02-04', '2022-08-04', '2023-02-04', '2023-08-04', '2024-02-04', '2024-11-04'].map(
			(date, index) => pastCheck(date, {pull: 1 + 0.45 * index + 0.01 * (index % 2)}),
		);
		expect(said(quarters.toReversed())).not.toContain(longRun.seasonOpen(inner));
		expect(said(quarters.slice(0, 5).toReversed())).toContain(longRun.seasonOpen(inner));
		// Nothing that drifts, no season to tell it from.
		expect(said(run([1, 1, 1, 1, 1]))).not.toContain(longRun.seasonOpen(inner));
	});

	it('goes with the temperature where it does', () => {
		// 0.07 % for each °C.
		const warm = [18, 24, 18.5, 24.5, 18];
		expect(said(run([1, 1.43, 1.02, 1.47, 1.01], warm))).toMatch(
			withAnySevens(longRun.withTemperature({...inner, trend: trend(0.07, 0.77), checks: 5})),
		);
	});

	it('begins anew after something that was done, or a change', () => {
		const steady = run([1, 1, 1, 1, 1, 1]);
		expect(said(steady.map((one, index) => (index === 2 ? {...one, doneSince: ['cartridge']} : one)))).toContain(
			longRun.tooFew({checks: 3, date: half(3), least: 5}),
		);
		expect(said(run([1, 1, 1, 3, 3, 3]))).toContain(longRun.tooFew({checks: 3, date: half(3), least: 5}));
	});

	it('leaves out checks that cannot be compared', () => {
		const other = run([1, 1, 1, 1, 1]).map((one, index) =>
			index > 1 ? measuredWith(one, {effectiveLengthMm: 300}) : one,
		);
		expect(said(other)).toContain(longRun.tooFew({checks: 2, date: half(0), least: 5}));
	});
});
