import {expect, onTestFinished, test} from 'vitest';
import {compute} from '../../source/findings/compute.js';
import type {Document} from '../../source/findings/document.js';
import type {RadiusFigures} from '../../source/findings/figures.js';
import * as played from '../helpers/check-turns.js';
import {run} from '../helpers/plain-run.js';
import {startProgram} from '../helpers/pty.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, asks, type Turn, turn, walk} from '../helpers/walk.js';

const MN_PER_GF = 9.80665;

/** '4.5 out' as a reading: positive toward the rim. */
const signed = (text: string): number => Number.parseFloat(text) * (text.endsWith('in') ? -1 : 1);

const roundsOf = (rounds: readonly played.Round[]) =>
	rounds.map(([inner, outer]) => ({innerLimit: signed(inner), outerLimit: signed(outer)}));

/** Standard deviation of the round centres, pooled over two radii (GUM 4.2.4), in the gauge's unit. */
function spreadOfCentres(series: played.Series): number {
	const squares = [series.inner, series.outer].map((rounds) => {
		const centres = rounds.map(([inner, outer]) => (signed(inner) + signed(outer)) / 2);
		const mean = centres.reduce((sum, one) => sum + one, 0) / centres.length;
		return centres.reduce((sum, one) => sum + (one - mean) ** 2, 0);
	});
	const freedom = series.inner.length + series.outer.length - 2;
	return Math.sqrt(squares.reduce((sum, one) => sum + one, 0) / freedom);
}

/** The played check as a compute document, put together by hand from what is typed. */
const documentOf = (series: played.Series): Document => ({
	arm: {effectiveLengthMm: 229, pivotDistanceMm: 211.3, loading: 'gravity', pivotDirectionDeg: 45},
	gauge: {
		unit: 'percent',
		step: 0.5,
		topOfScale: 16,
		// A ± is a rectangular bound (JCGM 100:2008 4.3.7).
		relativeUncertaintyPct: 1 / Math.sqrt(3),
		// Centres 3 as it stands and -2.25 turned, in the gauge's own sign.
		zero: 0.375,
		// Half the sum of two centres, each with its step, nudge and spread.
		zeroUncertainty: Math.sqrt((0.5 ** 2 / 24 + 0.5 ** 2 / 24 + spreadOfCentres(series) ** 2) / 2),
		nudge: 0.5,
	},
	trackingForce: {
		playingMn: 1.8 * MN_PER_GF,
		scaleReadingMn: 1.85 * MN_PER_GF,
		guard: 'included',
		guardMassG: 0.5,
		// Half a step either way and the ± of the scale, both rectangular.
		relativeUncertaintyPct: (100 * Math.hypot(0.01 / Math.sqrt(12), 0.02 / Math.sqrt(3))) / 1.85,
	},
	// The second reading in the level's own sign, which is turned round with it.
	level: {stepDeg: 0.05, leftRightDeg: [0.1, -0.05], frontBackDeg: [0.05, 0.05]},
	clearance: {stylusMm: 2.5, matRemovedMm: 0, guardDepthMm: 1},
	cartridge: {staticComplianceUmPerMn: 15, cantileverMm: 6},
	probe: [
		{place: 'inner', radiusMm: 65, rounds: roundsOf(series.inner)},
		{place: 'outer', radiusMm: 140, rounds: roundsOf(series.outer)},
	],
	limits: {pullGoodPct: 2, pullUsablePct: 4, bandGoodPct: 3, bandUsablePct: 6},
	bias: {device: 'weighted-lever'},
});

/** Equal but for rounding in the last digits. */
function expectSame(actual: unknown, expected: unknown, path = ''): void {
	if (typeof expected === 'number' && typeof actual === 'number') {
		const off = Math.abs(actual - expected);
		expect(off, `${path}: ${actual} for ${expected}`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected)));
	} else if (typeof expected === 'object' && expected !== null && typeof actual === 'object' && actual !== null) {
		expect(Object.keys(actual), path).toEqual(Object.keys(expected));
		for (const [key, value] of Object.entries(expected)) expectSame(Reflect.get(actual, key), value, `${path}.${key}`);
	} else expect(actual, path).toBe(expected);
}

/** '6.8 % out ± 0.6 %' and '6.3 % ± 0.7 %', the precision of the screen. */
const printed = ({pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: RadiusFigures): string[] => {
	if (pullPct === null) throw new Error('no figures');
	return [
		`${Math.abs(pullPct).toFixed(1)} % ${pullPct < 0 ? 'in' : 'out'} ± ${pullUncertaintyPct.toFixed(1)} %`,
		`${bandPct.toFixed(1)} % ± ${bandUncertaintyPct.toFixed(1)} %`,
	];
};

/** The arm once its leads are dressed anew: invented. */
const dressed: played.Series = {
	inner: [
		['0.5 in', '2.5 out'],
		['0.5 in', '2 out'],
		['0.5 in', '2.5 out'],
	],
	outer: [
		['0.5 in', '2 out'],
		['0.5 in', '2 out'],
		['0.5 in', '1.5 out'],
	],
	closing: ['0.5 in', '2.5 out'],
};

const dressLeads: readonly Turn[] = [
	turn('2', '2 try a remedy and probe again'),
	turn('2', 'Which remedy?', '2 dress the leads anew'),
	...played.lookAlongArm,
];

test('A full check typed key by key ends in verdict, remedy, put-back and file, with the right figures', async () => {
	const program = startProgram();
	onTestFinished(() => program.stop());
	const keyByKey = {keyByKey: true};
	await walk(program, [played.start, ...played.prepare, ...played.probeAll(played.springy)], keyByKey);
	await program.waitFor(asks(played.readVerdict));
	const before = compute(documentOf(played.springy));
	const first = await allPages(program);
	expect(first).toContain('Verdict: BEYOND LIMITS');
	for (const figure of before.probe.flatMap(printed)) expect(first).toContain(figure);
	expect(before.findings.map(({code}) => code)).toContain('spring-pull');
	expect(first).toContain('the wire acts as a spring');

	await walk(program, [...dressLeads, ...played.probeAll(dressed)], keyByKey);
	await program.waitFor(asks(played.readVerdict));
	const after = compute(documentOf(dressed));
	const second = await allPages(program);
	expect(second).not.toContain('BEYOND LIMITS');
	// Before and after, side by side.
	for (const figure of [...before.probe, ...after.probe].flatMap(printed)) expect(second).toContain(figure);
	expect(second).toContain('remedy: dress the leads anew');

	await walk(program, [played.readVerdict, ...played.putBack], keyByKey);
	await program.waitFor(played.filed);
	program.type('1');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});
	const [id = ''] = filedIds(program.dataDir);
	expect(program.normalScreen()).toContain(`Filed as ${id}`);

	const computed = run(program.dataDir, ['compute', '--check', id]);
	expect(computed.faults).toBe('');
	expectSame(JSON.parse(computed.out), after);
	const {findings: _findings, ...figures} = after;
	expectSame(filedCheck(program.dataDir, id).issued?.figures, figures, 'issued');
});
