import {expect, onTestFinished, test} from 'vitest';
import {describeAll, fullCheck, readLevel, resume, start} from '../helpers/check-turns.js';
import {playPlain, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {asLines, turn, waitForTurn, walk, words} from '../helpers/walk.js';

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
	await first.waitFor('Room (');
	const second = begin(dataDir);
	await walk(second, [resume]);
	const refused = words(await second.waitFor('Another copy'));
	expect(refused).toMatch(new RegExp(`Another copy \\(process ${first.pid}, since .*\\d\\d:\\d\\d.*\\) is writing`));
	await walk(second, [turn('4', '4 past checks'), turn('1', '1 to 1 of 1')]);
	await second.waitFor(/^Past check$/m);
	await second.waitFor('5.5 % out ± 0.4 %');
	const plain = run(dataDir, ['--plain'], {input: asLines([resume])});
	expect(plain.status).toBe(4);
	expect(plain.faults).toContain(`Another copy (process ${first.pid}`);
	expect(run(dataDir, ['--plain', '--arm', 'north deck']).status).toBe(4);
	// The first one has not noticed anything.
	first.type('21\r');
	await first.waitFor('Note');
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
