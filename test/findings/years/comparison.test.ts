// @ts-nocheck
import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {PastCheck} from '../../../source/check/past-check.js';
import {changeSince, comparisonOf, comparisonsOf} from '../../../source/findings/years/comparison.js';
import {comparisonLines} from '../../../source/findings/years/comparison-lines.js';
import {trendLines} from '../../../source/findings/years/trend-lines.js';

type Figures = {pull?: number; band?: number; u?: number};

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
		{place: 'inner', radiusMm: 65, ...inner},
		{place: 'outer', radiusMm: 140, ...outer},
	].map(({place, radiusMm, pull = 1, band = 2, u = 0.3}) => ({
		place,
		radiusMm,
		pullPct: pull,
		pullUncertaintyPct: u,
		bandPct: band,
		bandUncertaintyPct: u,
		tiltUncertaintyPct: null,
	})),
	measuredWith: {
		playingMn: 20,
		effectiveLengthMm: 229,
		loading: 'gravity',
		guard: 'included',
		tools: 'bench set',
		temperatureC: null,
	},
	nextDate: null,
	...more,
});
const measuredWith = (one: PastCheck, more: Partial<NonNullable<PastCheck['measuredWith']>>): PastCheck => ({
	...one,
	measuredWith: one.measuredWith && {...one.measuredWith, ...more},
});

const then = pastCheck('2026-05-04', {});
const text = (now: PastCheck, earlier: readonly PastCheck[], wireMoves = false): string =>
	comparisonLines(now, earlier, {wireMoves})
		.map((one) => (one.kind === 'line' ? one.text : ''))
		.join('\n');

describe('A check against an earlier one', () => {
	it.skip('says the size and the way of what changed', () => {
		// U of each: √(0.3² + (1.96·0.3)²) = 0.660 %, of both 0.93 %.
		const said = text(pastCheck('2026-11-25', {pull: 2.4}), [then]);
		expect(said).toMatch(/^CHANGED since the last check\./);
		expect(said).toContain(
			'The pull at the inner radius (65 mm) moved 1.4 ± 0.9 % toward the rim since 4 May 2026: changed.',
		);
		expect(said).toContain('Not changed since 4 May 2026: hold band at the inner radius (65 mm), 0.0 ± 0.9 %');
	});

	it.skip('tells narrower from wider and spindle from rim', () => {
		const said = text(pastCheck('2026-11-25', {pull: -1, band: 0.5}), [then]);
		expect(said).toContain('moved 2.0 ± 0.9 % toward the spindle');
		expect(said).toContain('became 1.5 ± 0.9 % narrower');
	});

	it.skip('needs half a percent of the tracking force to be called changed', () => {
		const sure = {u: 0.001};
		const spread = [0, 1, 2, 3, 4].map((month) => pastCheck(`2026-0${month + 1}-04`, {pull: 1, ...sure}));
		// Five checks that agree: the arm's own spread is nothing, and the smallest difference is seen.
		expect(changeSince(pastCheck('2026-11-25', {pull: 1.4, ...sure}, sure), spread)).toBe('perhaps');
		expect(changeSince(pastCheck('2026-11-25', {pull: 1.6, ...sure}, sure), spread)).toBe('changed');
	});

	it.skip('widens by what the arm wanders by itself, once there are four checks', () => {
		const wandering = [0, 2, 0, 2].map((pull, index) => pastCheck(`2026-0${index + 1}-04`, {pull}));
		const now = pastCheck('2026-11-25', {pull: 2.4});
		expect(changeSince(now, wandering.slice(0, 3))).toBe('changed');
		expect(changeSince(now, wandering)).toBe('not changed');
	});

	it('compares forces: the same torque under another tracking force is no change', () => {
		const lighter = measuredWith(pastCheck('2026-11-25', {pull: 2, band: 4}, {pull: 2, band: 4}), {playingMn: 10});
		expect(changeSince(lighter, [then])).toBe('not changed');
		expect(text(lighter, [then])).toMatch(/The playing force was 2\.039 g then, 1\.02 g now, so forces are compared\./);
	});

	it.each([
		['another effective length', {effectiveLengthMm: 230}, 'its effective length was 229 mm then, 230 mm now'],
		['another loading', {loading: 'spring'}, 'made by gravity then, by a spring now'],
	])('does not compare with %s, and says why', (_name, more, why) => {
		const said = text(measuredWith(pastCheck('2026-11-25', {pull: 9}), more), [then]);
		expect(said).toMatch(/^Not comparable with the last check/);
		expect(said).toContain(why);
	});

	it('compares only radii that agree within 2 mm', () => {
		const moved = pastCheck('2026-11-25', {});
		const at = (radiusMm: number): PastCheck => ({
			...moved,
			probe: moved.probe.map((one) => (one.place === 'inner' ? {...one, radiusMm} : one)),
		});
		expect(comparisonOf(at(67), then, [then]).figures).toHaveLength(4);
		const far = comparisonOf(at(67.1), then, [then]);
		expect(far.figures).toHaveLength(2);
		expect(far.obstacles).toEqual(['there are no figures of both at 67.1 mm']);
	});

	it('says what else was otherwise', () => {
		const said = text(measuredWith(pastCheck('2026-11-25', {}), {tools: 'field kit', guard: 'none'}), [then]);
		expect(said).toContain("Measured with 'bench set' then, with 'field kit' now.");
		expect(said).toContain('Weighed with the guard then, without a guard now.');
	});

	it('names the wire first where it may have moved', () => {
		const now = pastCheck('2026-11-25', {pull: 3});
		expect(text(now, [then], true)).toContain('Likely first: the wire');
		expect(text(now, [then])).not.toContain('Likely first');
		expect(text(pastCheck('2026-11-25', {}), [then], true)).not.toContain('Likely first');
	});

	it.skip('stands against the last one and the first', () => {
		const first = pastCheck('2024-05-04', {pull: 3});
		const now = pastCheck('2026-11-25', {});
		expect(comparisonsOf(now, [then, first]).map((one) => one.then.date)).toEqual(['2026-05-04', '2024-05-04']);
		expect(comparisonsOf(now, [then])).toHaveLength(1);
		expect(comparisonsOf(now, [])).toEqual([]);
		expect(text(now, [then, first])).toMatch(
			/Not changed since the last check\.(.|\n)*Against the first check:(.|\n)*toward the spindle since 4 May 2024/,
		);
	});

	it('is the same both ways, but for the sign', () => {
		const figure = fc.double({min: -10, max: 10, noNaN: true});
		fc.assert(
			fc.property(figure, figure, (one, other) => {
				const [a, b] = [pastCheck('2026-05-04', {pull: one}), pastCheck('2026-11-25', {pull: other})];
				const [there] = comparisonOf(b, a, []).figures;
				const [back] = comparisonOf(a, b, []).figures;
				expect(there?.change.differenceMn).toBeCloseTo(-(back?.change.differenceMn ?? 0), 9);
				expect(there?.change.verdict).toBe(back?.change.verdict);
			}),
		);
	});
});

describe('The long run', () => {
	const half = (index: number): string => `${2022 + Math.floor(index / 2)}-${index % 2 === 0 ? '05' : '11'}-04`;
	const run = (pulls: readonly number[], temperatures: readonly (number | null)[] = []): PastCheck[] =>
		pulls
			.map((pull, index) => measuredWith(pastCheck(half(index), {pull}), {temperatureC: temperatures[index] ?? null}))
			.reverse();
	const said = (checks: readonly PastCheck[]): string =>
		trendLines(checks)
			.map((one) => (one.kind === 'line' ? one.text : ''))
			.join('\n');

	it.skip('is looked for from four checks on', () => {
		expect(said(run([1, 2, 3]))).toContain('3 checks so far; a trend is looked for from 4 on');
		expect(said(run([1, 2]))).toContain('2 checks so far');
		expect(said(run([1]))).toBe('');
	});

	it.skip('is a drift where its interval does not hold zero, and no trend where it does', () => {
		// Half a percent each half year is one a year; a little noise gives it an interval.
		expect(said(run([1, 1.52, 1.99, 2.5, 3.01]))).toMatch(
			/drifts 1\.0\d ± 0\.\d\d % a year toward the rim \(5 checks since 4 May 2022\)/,
		);
		expect(said(run([1, 2, 1, 2, 1.5]))).toContain('no trend seen');
	});

	it.skip('claims no uncertainty of nothing where coarse readings fell alike', () => {
		const alike = said(run([1, 1, 1, 1]));
		expect(alike).toContain('no trend seen; the readings agree within their step (4 checks since 4 May 2022)');
		// Exactly half a percent more each time: the line goes through every reading.
		const even = said(
			['2022-05-04', '2023-05-04', '2024-05-03', '2025-05-03']
				.map((date, index) => pastCheck(date, {pull: 1 + 0.5 * index}))
				.reverse(),
		);
		expect(even).toContain('drifts 0.50 % a year toward the rim');
		for (const text of [alike, even]) expect(text).not.toContain('± 0.00');
	});

	it.skip('does not tell drift from season before the dates allow it', () => {
		expect(said(run([1, 1.5, 2, 2.5].map((one, index) => one + 0.01 * index)))).toContain(
			'season not told from drift yet',
		);
		const quarters = ['2022-02-04', '2022-08-04', '2023-05-04', '2024-05-04'].map((date, index) =>
			pastCheck(date, {pull: index + 0.01 * index ** 2}),
		);
		expect(said(quarters.reverse())).not.toContain('season not told');
	});

	it.skip('goes with the temperature where it does', () => {
		const warm = [18, 24, 18.5, 24.5, 18];
		expect(said(run([1, 2.5, 1.1, 2.6, 1.02], warm))).toMatch(
			/goes with the temperature, 0\.2\d ± 0\.\d\d % per °C toward the rim \(5 checks\)/,
		);
	});

	it.skip('leaves out checks that cannot be compared', () => {
		const other = run([1, 1, 1, 1, 1]).map((one, index) =>
			index > 1 ? measuredWith(one, {effectiveLengthMm: 300}) : one,
		);
		expect(said(other)).toContain('2 checks so far');
	});
});
