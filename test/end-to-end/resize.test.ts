import {expect, onTestFinished, test} from 'vitest';
import packageJson from '../../package.json' with {type: 'json'};
import {
	describeAll,
	filed,
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
import {playedFolder} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {flat, saidAt, says, titleOf, words} from '../helpers/said.js';
import {option, type Turn, waitForTurn, walk} from '../helpers/walk.js';

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

const mistake = words.faces.mistake({mistake: saidAt('probe-inner', 'mistake')});
const beyond = words.pages.verdict.headline({verdict: 'beyond', atWorst: 'beyond'});
const tooSmall = words.faces.tooSmall({columns: 20, rows: 8, least: {columns: 40, rows: 20}});

const CLEAR_SCREEN = '\u001B[2J';

const times = (text: string, part: string): number => text.split(part).length - 1;

/** Shrinks and widens the window, and waits each time until the headings are there once each, with what was typed. */
async function expectFollows(
	program: RunningProgram,
	headings: readonly string[],
	rest: readonly string[],
	drawn: readonly RegExp[] = [],
): Promise<void> {
	const wide = program.screen();
	for (const [columns, rows] of sizes) {
		const drawnBefore = program.raw().length;
		program.resize(columns, rows);
		await program.waitFor((screen) => {
			// What the terminal itself made of the old screen does not count.
			if (!program.raw().includes(CLEAR_SCREEN, drawnBefore)) return false;
			const text = flat(screen);
			return (
				headings.every((one) => times(text, flat(one)) === 1) &&
				rest.every((one) => text.includes(flat(one))) &&
				drawn.every((one) => one.test(screen)) &&
				text.endsWith(words.faces.hints.leave) &&
				program.usedRows() < rows
			);
		});
	}
	await program.waitFor((screen) => screen === wide);
	expect(program.raw()).not.toContain('\u001B[3J');
}

/** A check played up to the turns given, and taken up again. */
async function standsAt(turns: readonly Turn[]): Promise<RunningProgram> {
	const program = begin(playedFolder([start, ...turns]));
	await walk(program, [resume]);
	return program;
}

test('The first screen follows the window', async () => {
	const program = begin();
	await program.waitFor(option(1, words.beside.home.start));
	await expectFollows(
		program,
		[
			option(1, words.beside.home.start),
			option(6, words.beside.home.leave),
			words.beside.home.title({version: packageJson.version}),
		],
		[],
	);
});

test('A half-typed field follows the window and loses nothing', async () => {
	const program = await standsAt(describeAll);
	await waitForTurn(program, readLevel()[0]);
	program.type('0.15 rig');
	await program.waitFor('> 0.15 rig');
	await expectFollows(
		program,
		[words.pages.view.place({number: 5, of: 15}), saidAt('level-lr-1', 'ask', {isSprung: false}), '> 0.15 rig'],
		[],
	);
	program.type('ht\r');
	await waitForTurn(program, readLevel()[1]);
	const {first, mark} = words.instruments.level;
	expect(flat(program.screen())).toContain(mark({name: first, deg: 0.15, axis: 'leftRight', decimals: 2}));
});

test('The text of why, the list of steps and the picture of the rounds follow the window', async () => {
	const program = await standsAt([...prepare, ...probe('inner', springy.inner).slice(0, -1)]);
	await program.waitFor(option(2, says.label({id: 'one-more-round', values: {}})));
	await expectFollows(
		program,
		[titleOf('probe-inner'), option(1, says.label({id: 'enough', values: {}}))],
		[],
		[1, 2, 3].map((round) => new RegExp(`^${round} .*├─*●─*┤`, 'm')),
	);
	program.type('?');
	await program.waitFor(mistake);
	await expectFollows(program, [titleOf('probe-inner'), mistake], []);
	program.press('esc');
	await program.waitFor(option(2, says.label({id: 'one-more-round', values: {}})));
	program.press('tab');
	await program.waitFor(words.pages.view.titles.steps);
	await expectFollows(program, [words.pages.view.titles.steps], []);
});

test('The verdict and the filed check follow the window', async () => {
	const program = await standsAt([...prepare, ...probeAll(springy)]);
	await waitForTurn(program, readVerdict);
	await expectFollows(
		program,
		[beyond, option(2, says.label({id: 'put-back', values: {}}))],
		[words.findings['spring-pull'].brief],
	);
	await walk(program, fullCheck.slice(fullCheck.indexOf(readVerdict)));
	await program.waitFor(filed);
	await expectFollows(program, [filed, beyond, option(1, words.beside.home.filed.leave)], []);
});

test('A window too small for any screen says so, and check and typed text are back when it grows', async () => {
	const program = await standsAt(describeAll);
	await walk(program, readLevel().slice(0, 2));
	await waitForTurn(program, readLevel()[2]);
	program.type('0.05 ba');
	await program.waitFor('> 0.05 ba');
	const before = program.screen();
	program.resize(20, 8);
	await program.waitFor(tooSmall.slice(0, tooSmall.indexOf('40 × 20') + '40 × 20'.length));
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
