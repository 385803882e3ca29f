import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {playPlain, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, answer, asks, type Turn, turn, typed, walk} from '../helpers/walk.js';

const radii = ['outer', 'middle', 'inner'] as const;

/** Readings with a bias setting at three radii, and where its lever stands: invented. */
const setting = (rounds: readonly played.Round[], clocks: readonly string[]): readonly Turn[] =>
	radii.flatMap((radius, index) => {
		const [inner = '', outer = ''] = rounds[index] ?? [];
		return [
			typed(`probe-bias-${radius}`, inner, 'INNERMOST'),
			typed(`probe-bias-${radius}`, outer, 'OUTERMOST'),
			answer(`probe-bias-${radius}`, '1', '2 one more round'),
			typed(`bias-clock-${radius}`, clocks[index] ?? ''),
		];
	});

const toTheFirst: readonly Turn[] = [
	answer('verdict', '3', '3 set the bias device against skating'),
	typed('bias-drag', '0.3', 'least'),
	typed('bias-radius-middle', '98'),
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
	const dataDir = freshFolder();
	playPlain(dataDir, [played.start, ...played.prepare, ...played.probeAll(played.springy)]);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [played.resume, ...toTheFirst]);
	await program.waitFor(asks(answer('bias-result', '', '1 adjust the device')));
	const first = await allPages(program);
	expect(first).toMatch(/Its weight from 2\.5 g to \d\.\d g/);
	expect(first).toContain('Lever at');

	await walk(program, [
		answer('bias-result', '1', '1 adjust the device'),
		typed('bias-weight', '4.1', 'Its weight from 2.5 g'),
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
	await program.waitFor(asks(answer('bias-result', '', '3 go back to setting 1')));
	const second = await allPages(program);
	expect(second).toContain('under the friction floor');
	expect(second).toContain('(best so far)');

	await walk(program, [
		answer('bias-result', '2', '2 keep this setting'),
		...played.putBack.map((one) =>
			one.title === 'Bias device' ? answer('back-bias', 'y', 'number 2: 4.1 g, notch 3') : one,
		),
	]);
	await program.waitFor(played.filed);
	program.type('1');
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
	const dataDir = freshFolder();
	const bare = played.prepare
		.filter(({title}) => !played.biasOff.some((one) => one.title === title))
		.map((one) => (one.title === 'Bias device' ? answer('arm-bias-device', '1') : one));
	playPlain(dataDir, [played.start, ...bare, ...played.probeAll(played.springy)]);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [
		played.resume,
		answer('verdict', '3', '3 see what skating asks of this arm'),
		typed('bias-drag', '0.25', 'bias off'),
	]);
	await program.waitFor(asks(turn('', 'Lock the arm')));
});
