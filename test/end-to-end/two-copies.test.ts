import {expect, onTestFinished, test} from 'vitest';
import {
	coverStylus,
	describeAll,
	fullCheck,
	makeSafe,
	matOff,
	pickKnown,
	readLevel,
	resume,
	start,
} from '../helpers/check-turns.js';
import {anotherCopy, playedFolder, run} from '../helpers/plain-run.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {around, flat, titleOf, withAnything, words} from '../helpers/said.js';
import {asLines, isTitled, option, turn, waitForTurn, walk} from '../helpers/walk.js';

const {past} = words.beside;
/** How it is said that a process is writing, up to the time. */
const writing = (pid: number): string => around(anotherCopy(pid))[0] ?? '';

const begin = (dataDir: string, args: readonly string[] = []): RunningProgram => {
	const program = startProgram({dataDir, args});
	onTestFinished(() => program.stop());
	return program;
};

/** A folder with one finished check and an open one. */
const usedFolder = (): string => playedFolder([start, ...fullCheck], [start, ...pickKnown, ...makeSafe, coverStylus]);

test('A second copy says which process writes and since when, starts nothing, and still shows past checks', async () => {
	const dataDir = usedFolder();
	const first = begin(dataDir);
	await walk(first, [resume]);
	await first.waitFor((screen) => isTitled(screen, titleOf('mat')));
	const second = begin(dataDir);
	await walk(second, [resume]);
	const refused = flat(await second.waitFor(writing(first.pid)));
	expect(refused).toMatch(withAnything(anotherCopy(first.pid).trim(), '.*\\d\\d:\\d\\d.*'));
	await walk(second, [
		turn('4', option(4, words.beside.home.past)),
		turn('1', past.span({first: 1, last: 1, total: 1, hasKeys: true})),
	]);
	await second.waitFor((screen) => isTitled(screen, past.check.title));
	await second.waitFor(words.findings['spring-pull'].brief);
	second.press('right');
	await second.waitFor('5.5 % out ± 0.4 %');
	const plain = run(dataDir, ['--plain'], {input: asLines([resume])});
	expect(plain.status).toBe(4);
	expect(plain.faults).toContain(writing(first.pid));
	expect(run(dataDir, ['--plain', '--arm', 'north deck']).status).toBe(4);
	// The first one has not noticed anything.
	await walk(first, matOff.slice(0, 1));
	await first.waitFor(titleOf('mat-thickness'));
});

test('The lock of a copy that was killed clears itself', async () => {
	const dataDir = playedFolder([start, ...describeAll]);
	const killed = begin(dataDir);
	await walk(killed, [resume]);
	await waitForTurn(killed, readLevel()[0]);
	await killed.stop();
	const next = begin(dataDir);
	await walk(next, [resume, readLevel()[0]]);
	await waitForTurn(next, readLevel()[1]);
});
