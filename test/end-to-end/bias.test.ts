import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {playedFolder, run} from '../helpers/plain-run.js';
import {startProgram} from '../helpers/pty.js';
import {anything, numbersIn, saidAt, says, titleOf, withAnyNumbers, words} from '../helpers/said.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {
	allPages,
	answer,
	asks,
	limitAsked,
	option,
	type Turn,
	turn,
	typed,
	waitForTurn,
	walk,
} from '../helpers/walk.js';

const radii = ['outer', 'middle', 'inner'] as const;

/** A fit whose figures do not matter, but that it makes 75 g of 2.5 g. */
const anyFit = {
	factor: 30,
	worstBeforePct: 1,
	worstAfterPct: 1,
	worstAfterDragPct: 1,
	rmsBeforePct: 1,
	rmsAfterPct: 1,
	frictionFloorPct: 1,
	targets: [],
};
/** What is said of the weight, up to a part of it. */
function newWeight(part: string): string {
	const said = words.bias.advice.bestSetting({fit: anyFit, setBy: 'weight', weightG: 2.5});
	return said.slice(0, said.indexOf(part) + part.length);
}
const bestSoFar = withAnyNumbers(
	words.bias.setting.tried({name: anything, leftPct: 1, isKept: false, isLeast: true, isChosen: false}),
);
const askedBack = saidAt('back-bias', 'ask', {
	device: 'weighted-lever',
	chosen: {number: '2', setting: '4.1 g, notch 3'},
	setting: undefined,
});

/** Readings with a bias setting at three radii, and where its lever stands: invented. */
const setting = (rounds: readonly played.Round[], clocks: readonly string[]): readonly Turn[] =>
	radii.flatMap((radius, index) => {
		const [inner = '', outer = ''] = rounds[index] ?? [];
		return [
			typed(`probe-bias-${radius}`, inner, limitAsked('inner')),
			typed(`probe-bias-${radius}`, outer, limitAsked('outer')),
			answer(`probe-bias-${radius}`, '1', option(2, says.label({id: 'one-more-round', values: {}}))),
			typed(`bias-clock-${radius}`, clocks[index] ?? ''),
		];
	});

const toTheFirst: readonly Turn[] = [
	played.anotherWay,
	turn('1', words.pages.view.titles['other-way'], option(1, says.label({id: 'set-bias', values: {}}))),
	typed('bias-radius-middle', '98', words.pictures.curve.least),
	typed('bias-weight', '2.5'),
	typed('bias-set', 'notch 3'),
	answer('bias-on', 'y'),
	...setting(
		[
			['7.5 out', '11 out'],
			['7 out', '11 out'],
			['6.5 out', '11.5 out'],
		],
		['8:30', '7.45', '715'],
	),
];

test('A weighted lever is adjusted once, until what is left lies under the friction floor, and stays so when it is put back', async () => {
	const dataDir = playedFolder([played.start, ...played.prepare, ...played.probeAll(played.springy)]);
	// High enough for all that can be chosen beside what was tried.
	const program = startProgram({dataDir, rows: 34});
	onTestFinished(() => program.stop());
	await walk(program, [played.resume, ...toTheFirst]);
	await program.waitFor(asks(answer('bias-result', '', option(1, says.label({id: 'adjust-bias', values: {}})))));
	const first = await allPages(program);
	expect(numbersIn(first, newWeight('75 g'), 75)).toHaveLength(1);
	expect(first).toContain(words.pictures.lever.heading);

	await walk(program, [answer('bias-result', '1', option(1, says.label({id: 'adjust-bias', values: {}})))]);
	await waitForTurn(program, typed('bias-weight', ''));
	expect(await allPages(program)).toContain(newWeight('2.5 g'));
	await walk(program, [
		typed('bias-weight', '4.1'),
		typed('bias-set', 'notch 3'),
		answer('bias-on', 'y'),
		...setting(
			[
				['11 out', '15 out'],
				['10.5 out', '14.5 out'],
				['8.5 out', '14 out'],
			],
			['8:30', '7:45', '7:15'],
		),
	]);
	await program.waitFor(
		asks(answer('bias-result', '', option(3, says.label({id: 'back-to-setting', values: {setting: '1'}})))),
	);
	const second = await allPages(program);
	expect(second).toMatch(withAnyNumbers(words.bias.advice.leaveItSo(anyFit)));
	expect(second).toMatch(bestSoFar);

	await walk(program, [
		answer('bias-result', '2', option(2, says.label({id: 'keep-setting', values: {}}))),
		...played.putBack.map((one) => (one.title === titleOf('back-bias') ? answer('back-bias', 'y', askedBack) : one)),
	]);
	await program.waitFor(played.filed);
	program.type('1\r');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});

	const [id = ''] = filedIds(dataDir);
	const computed = run(dataDir, ['compute', '--id', id]);
	expect(computed.faults).toBe('');
	const {bias} = JSON.parse(computed.out);
	expect(bias.rows.map(({radiusMm}: {radiusMm: number}) => radiusMm)).toEqual([136, 98, 68]);
	expect(bias.lever.map(({clock}: {clock: string}) => clock)).toEqual(['8:30', '7:45', '7:15']);
	expect(bias.fit.worstBeforePct).toBeLessThan(bias.fit.frictionFloorPct);
	expect(filedCheck(dataDir, id).check.series[0]?.trials).toHaveLength(1);
});

test('An arm without bias device is shown what skating asks of it, and is put back', async () => {
	const bare = played.prepare
		.filter(({title}) => !played.biasOff.some((one) => one.title === title))
		.map((one) => (one.title === titleOf('arm-bias-device') ? answer('arm-bias-device', '1') : one));
	const dataDir = playedFolder([played.start, ...bare, ...played.probeAll(played.springy)]);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [
		played.resume,
		played.anotherWay,
		turn('1', words.pages.view.titles['other-way'], option(1, says.label({id: 'see-skating', values: {}}))),
		typed('bias-drag', '0.25', words.pictures.curve.marks.own.brief),
	]);
	await program.waitFor(asks(turn('', titleOf('back-lock'))));
});
