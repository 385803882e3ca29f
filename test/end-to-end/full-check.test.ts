import {expect, onTestFinished, test} from 'vitest';
import {compute} from '../../source/results/compute.js';
import type {Document} from '../../source/results/document.js';
import type {RadiusFigures} from '../../source/results/figures.js';
import {worded} from '../../source/words/finding-text.js';
import * as played from '../helpers/check-turns.js';
import {run} from '../helpers/plain-run.js';
import {startProgram} from '../helpers/pty.js';
import {flat, says, words} from '../helpers/said.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, asks, option, type Turn, turn, walk} from '../helpers/walk.js';

const MN_PER_GF = 9.80665;

/** '4.5 out' as a reading, positive toward the rim; '-2.5' as the gauge shows it. */
const signed = (text: string): number => Number.parseFloat(text) * (text.endsWith('in') ? -1 : 1);

const limitsOf = ([inner, outer]: played.Round) => ({innerLimit: signed(inner), outerLimit: signed(outer)});

/** The played check as a compute document, put together by hand from what is typed. */
const documentOf = ({inner, outer, closing}: played.Series): Document => ({
	arm: {effectiveLengthMm: 233, pivotDistanceMm: 215.4, loading: 'gravity', pivotDirectionDeg: 45},
	gauge: {
		unit: 'percent',
		step: 0.5,
		topOfScale: 20,
		// What is taken of a gauge whose profile says nothing; a ± is a rectangular bound (JCGM 100:2008 4.3.7).
		relativeUncertaintyPct: 2 / Math.sqrt(3),
		nudge: 0.5,
		setAnew: true,
	},
	trackingForce: {
		playingMn: 2.1 * MN_PER_GF,
		scaleReadingMn: 2.15 * MN_PER_GF,
		guard: 'included',
		guardMassG: 0.4,
		// Half a step either way and the ± of the scale, as they are taken: both rectangular.
		relativeUncertaintyPct: (100 * Math.hypot(0.01 / Math.sqrt(12), 0.02 / Math.sqrt(3))) / 2.15,
	},
	// The second reading in the level's own sign, which is turned round with it.
	level: {stepDeg: 0.05, leftRightDeg: [0.15, -0.05], frontBackDeg: [0.05, 0.1]},
	clearance: {stylusMm: 5.6, matRemovedMm: 3, guardDepthMm: 1.3},
	probe: [
		{
			place: 'inner',
			radiusMm: 68,
			rounds: [
				...inner.map((round, index) => ({...limitsOf(round), ...(index === 1 ? {gauge: 'turned' as const} : {})})),
				{...limitsOf(closing), closing: true},
			],
		},
		{place: 'outer', radiusMm: 136, rounds: outer.map(limitsOf)},
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

/** '5.5 % out ± 0.4 %' and '6.0 % ± 0.4 %', the precision of the screen. */
const printed = ({pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: RadiusFigures): string[] => {
	if (pullPct === null) throw new Error('no figures');
	return [
		`${Math.abs(pullPct).toFixed(1)} % ${words.figures.wayOf(pullPct)} ± ${pullUncertaintyPct.toFixed(1)} %`,
		`${bandPct.toFixed(1)} % ± ${bandUncertaintyPct.toFixed(1)} %`,
	];
};

/** The arm once its leads are dressed anew: invented. */
const dressed: played.Series = {
	inner: [
		['0.5 in', '2.5 out'],
		['+0.5', '-2'],
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
	played.anotherWay,
	turn('2', words.pages.view.titles['other-way'], option(2, words.remedies['lead-loop'].name)),
	...played.lookAlongArm,
	...played.swing,
];

test('A full check typed key by key ends in verdict, remedy, put-back and file, with the right figures', async () => {
	const program = startProgram();
	onTestFinished(() => program.stop());
	const keyByKey = {keyByKey: true};
	await walk(program, [played.start, ...played.prepare, ...played.probeAll(played.springy)], keyByKey);
	await program.waitFor(asks(played.readVerdict));
	const before = compute(documentOf(played.springy));
	const first = await allPages(program);
	expect(first).toContain(words.pages.verdict.headline({verdict: 'beyond', atWorst: 'beyond'}));
	for (const figure of before.probe.flatMap(printed)) expect(first).toContain(figure);
	expect(before.findings.map(({code}) => code)).toContain('spring-pull');
	expect(first).toContain(words.pages.verdict.likely(words.findings['spring-pull']).slice(0, -1));

	await walk(program, [...dressLeads, ...played.probeAfterRemedy(dressed)], keyByKey);
	await program.waitFor(asks(played.leaveIt));
	const after = compute(documentOf(dressed));
	const second = await allPages(program);
	expect(second).not.toContain(words.figures.verdictWord.beyond);
	// Before and after, side by side.
	for (const figure of [...before.probe, ...after.probe].flatMap(printed)) expect(second).toContain(figure);
	expect(second).toContain(says.because({id: 'remedy', values: {remedy: 'lead-loop'}}));

	await walk(program, [played.leaveIt, ...played.putBack], keyByKey);
	await program.waitFor(played.filed);
	program.type('1\r');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});
	const [id = ''] = filedIds(program.dataDir);
	expect(flat(program.normalScreen())).toContain(words.commands.parting.filed({id, verdict: after.verdict}));

	const computed = run(program.dataDir, ['compute', '--id', id]);
	expect(computed.faults).toBe('');
	const {findings, ...figures} = after;
	const told = findings.map(worded).map(({code, places, who, text}) => ({code, places, who, text}));
	expectSame(JSON.parse(computed.out), {...figures, findings: told});
	expectSame(filedCheck(program.dataDir, id).issued?.figures, figures, 'issued');
});
