import {expect, onTestFinished, test} from 'vitest';
import {
	describeAll,
	fullCheck,
	prepare,
	probe,
	probeAll,
	readLevel,
	readVerdict,
	resume,
	springy,
	start,
} from '../helpers/check-turns.js';
import {playPlain} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {type Turn, waitForTurn, walk, words} from '../helpers/walk.js';

const begin = (dataDir = freshFolder()): RunningProgram => {
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	return program;
};

const sizes = [
	[60, 24],
	[40, 20],
	[80, 24],
] as const;

const CLEAR_SCREEN = '\u001B[2J';

const times = (text: string, part: string): number => text.split(part).length - 1;

/** Shrinks and widens the window, and waits each time until the headings are there once each, with what was typed. */
async function expectFollows(
	program: RunningProgram,
	headings: readonly string[],
	rest: readonly string[],
): Promise<void> {
	const wide = program.screen();
	for (const [columns, rows] of sizes) {
		const drawnBefore = program.raw().length;
		program.resize(columns, rows);
		await program.waitFor((screen) => {
			// What the terminal itself made of the old screen does not count.
			if (!program.raw().includes(CLEAR_SCREEN, drawnBefore)) return false;
			const text = words(screen);
			return (
				headings.every((one) => times(text, one) === 1) &&
				rest.every((one) => text.includes(one)) &&
				/Ctrl\+C leave$/.test(text) &&
				program.usedRows() < rows
			);
		});
	}
	await program.waitFor((screen) => screen === wide);
	expect(program.raw()).not.toContain('\u001B[3J');
}

/** A check played up to the turns given, and taken up again. */
async function standsAt(turns: readonly Turn[]): Promise<RunningProgram> {
	const dataDir = freshFolder();
	playPlain(dataDir, [start, ...turns]);
	const program = begin(dataDir);
	await walk(program, [resume]);
	return program;
}

test('The first screen follows the window', async () => {
	const program = begin();
	await program.waitFor('1 new full check');
	await expectFollows(program, ['1 new full check', '6 leave', 'does the arm swing'], []);
});

test('A half-typed field follows the window and loses nothing', async () => {
	const program = await standsAt(describeAll);
	await waitForTurn(program, readLevel()[0]);
	program.type('0.15 rig');
	await program.waitFor('> 0.15 rig');
	await expectFollows(program, ['Level (7/15)', 'Put the gauge where it will stand', '> 0.15 rig'], []);
	program.type('ht\r');
	await waitForTurn(program, readLevel()[1]);
	expect(words(program.screen())).toContain('0.15° right high');
});

test('The text of why, the list of steps and the picture of the rounds follow the window', async () => {
	const program = await standsAt([...prepare, ...probe('inner', springy.inner).slice(0, -1)]);
	await program.waitFor('2 one more round');
	await expectFollows(program, ['Probe at the inner radius', 'in, spindle', '1 enough: go on'], []);
	program.type('?');
	await program.waitFor('The usual mistake:');
	await expectFollows(program, ['Probe at the inner radius', 'The usual mistake:'], []);
	program.press('esc');
	await program.waitFor('2 one more round');
	program.press('tab');
	await program.waitFor('All steps');
	await expectFollows(program, ['All steps', 'Probe (12/15)'], []);
});

test('The verdict and the filed check follow the window', async () => {
	const program = await standsAt([...prepare, ...probeAll(springy)]);
	await waitForTurn(program, readVerdict);
	await expectFollows(program, ['Verdict: BEYOND LIMITS', '1 put the deck back'], ['5.5 % out ± 0.4 %']);
	await walk(program, fullCheck.slice(fullCheck.indexOf(readVerdict)));
	await program.waitFor('Filed.');
	await expectFollows(program, ['Filed.', 'Verdict: BEYOND LIMITS', '1 leave'], []);
});

test('A window too small for any screen says so, and check and typed text are back when it grows', async () => {
	const program = await standsAt(describeAll);
	await walk(program, readLevel().slice(0, 2));
	await waitForTurn(program, readLevel()[2]);
	program.type('0.05 ba');
	await program.waitFor('> 0.05 ba');
	const before = program.screen();
	program.resize(20, 8);
	await program.waitFor((screen) => words(screen).includes('(20 × 8) is too small: make it at least 40 × 20, or'));
	program.resize(80, 24);
	await program.waitFor((screen) => screen === before);
	program.type('ck\r');
	await waitForTurn(program, readLevel()[3]);
	// All that was answered before the window shrank is on the disk still.
	await program.stop();
	const again = begin(program.dataDir);
	await walk(again, [resume]);
	await waitForTurn(again, readLevel()[3]);
});
