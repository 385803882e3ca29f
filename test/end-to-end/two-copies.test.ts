import {expect, onTestFinished, test} from 'vitest';
import {describeAll, fullCheck, readLevel, resume, start} from '../helpers/check-turns.js';
import {anotherCopy, playPlain, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {around, beginning, flat, titleOf, withAnything, words} from '../helpers/said.js';
import {asLines, option, turn, waitForTurn, walk} from '../helpers/walk.js';

const {past} = words.beside;
/** How it is said that a process is writing, up to the time. */
const writing = (pid: number): string => around(anotherCopy(pid))[0] ?? '';

const begin = (dataDir: string, args: readonly string[] = []): RunningProgram => {
	const program = startProgram({dataDir, args});
	onTestFinished(() => program.stop());
	return program;
};

/** A folder with one finished check and an open one. */
function usedFolder(): string {
	const dataDir = freshFolder();
	playPlain(dataDir, [start, ...fullCheck]);
	const profiles = [turn('1'), turn('1'), turn('1')];
	const [safe, rest] = [fullCheck.slice(0, 4), profiles];
	expect(playPlain(dataDir, [start, ...safe, ...rest]).status).toBe(3);
	return dataDir;
}

test('A second copy says which process writes and since when, starts nothing, and still shows past checks', async () => {
	const dataDir = usedFolder();
	const first = begin(dataDir);
	await walk(first, [resume]);
	await first.waitFor(beginning(words.pages.view.stage({title: words.stages.mat, number: 1, of: 1})));
	const second = begin(dataDir);
	await walk(second, [resume]);
	const refused = flat(await second.waitFor(writing(first.pid)));
	expect(refused).toMatch(withAnything(anotherCopy(first.pid).trim(), '.*\\d\\d:\\d\\d.*'));
	await walk(second, [
		turn('4', option(4, words.beside.home.past)),
		turn('1', past.span({first: 1, last: 1, total: 1, hasKeys: true})),
	]);
	await second.waitFor((screen) => screen.split('\n').includes(past.check.title));
	await second.waitFor(words.findings['spring-pull'].brief);
	second.press('right');
	await second.waitFor('5.5 % out ± 0.4 %');
	const plain = run(dataDir, ['--plain'], {input: asLines([resume])});
	expect(plain.status).toBe(4);
	expect(plain.faults).toContain(writing(first.pid));
	expect(run(dataDir, ['--plain', '--arm', 'north deck']).status).toBe(4);
	// The first one has not noticed anything.
	first.type('21\r');
	await first.waitFor(titleOf('room-note'));
});

test('The lock of a copy that was killed clears itself', async () => {
	const dataDir = freshFolder();
	playPlain(dataDir, [start, ...describeAll]);
	const killed = begin(dataDir);
	await walk(killed, [resume]);
	await waitForTurn(killed, readLevel()[0]);
	await killed.stop();
	const next = begin(dataDir);
	await walk(next, [resume, readLevel()[0]]);
	await waitForTurn(next, readLevel()[1]);
});
