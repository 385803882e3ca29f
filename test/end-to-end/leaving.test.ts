import {describe, expect, onTestFinished, test} from 'vitest';
import {describeAll, prepare, readLevel, resume, roundAnew, start} from '../helpers/check-turns.js';
import {playedFolder} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {PROGRAM, type ProgramOptions, type RunningProgram, startProgram} from '../helpers/pty.js';
import {anything, bare, flat, saidAt, titleOf, withAnything, words} from '../helpers/said.js';
import {asks, limitAsked, option, turn, waitForTurn, walk} from '../helpers/walk.js';

const {parting} = words.commands;
const {view} = words.pages;
const [deckNotReady = ''] = parting.goOnWithDeck({isReady: false, goOn: anything}).split(anything);
const deck = {arm: 'locked', stylus: 'covered', mat: 'off', damping: 'none', bias: 'as-found', gauge: 'away'} as const;
/** That a check is saved, how its deck stands and that it is not ready, as the first words. */
const saved = new RegExp(
	`^${withAnything(`${parting.saved({arm: 'north deck', step: anything})} ${words.pages.deck.told(deck)} ${deckNotReady}`).source}`,
);
const nothingOpen = withAnything(parting.nothingOpen).source;

const begin = (options: ProgramOptions = {}): RunningProgram => {
	const program = startProgram(options);
	onTestFinished(() => program.stop());
	return program;
};

/** Under a plain shell, which restores nothing by itself and then tells the state of the terminal. */
const beginInShell = (dataDir: string): RunningProgram =>
	begin({
		dataDir,
		command: ['sh', '-c', `"${process.execPath}" "${PROGRAM}"; echo "status=$?"; stty -a; read line`],
	});

function expectTerminalSane(program: RunningProgram): void {
	const screen = program.normalScreen();
	// Local modes of POSIX termios: line editing, echo, and signals from keys.
	for (const mode of ['icanon', 'echo', 'isig']) expect(screen).toMatch(new RegExp(`(?<![-\\w])${mode}\\b`));
	// xterm's private modes: cursor shown, bracketed paste off, normal screen.
	for (const [mode, state] of [
		['25', 'h'],
		['2004', 'l'],
		['1049', 'l'],
	])
		expect(
			program
				.raw()
				.match(new RegExp(`\\u001B\\[\\?${mode}[hl]`, 'g'))
				?.at(-1),
		).toBe(`\u001B[?${mode}${state}`);
	expect(program.raw()).not.toContain('\u001B[3J');
	expect(program.isOnAlternateScreen()).toBe(false);
}

const describedArm = (): string => playedFolder([start, ...describeAll]);

describe('Ctrl+C', () => {
	test.each([
		['in a half-typed field', ['0.4 ri'], '> 0.4 ri'],
		['in the text of why', ['?'], words.faces.mistake({mistake: saidAt('level-lr-1', 'mistake')})],
		['in the list of steps', ['\t'], view.titles.steps],
		['while a side is asked for', ['0.4\r'], view.side.ask({typed: '0.4'})],
		['beside a refusal', ['over there\r'], '> over there'],
		['behind keys that still wait', ['0.1 right\r0.1 left\r0.1 b'], ''],
	])('%s ends with 130, a sane terminal, and how to go on', async (_, keys, shown) => {
		const program = beginInShell(describedArm());
		await walk(program, [resume]);
		await waitForTurn(program, readLevel()[0]);
		for (const key of keys) program.type(key);
		await program.waitFor(shown);
		program.press('ctrl+c');
		await program.waitFor('-tostop');
		expect(program.normalScreen()).toContain('status=130');
		expect(flat(program.normalScreen())).toMatch(saved);
		expect(program.normalScreen()).not.toContain(view.place({number: 5, of: 15}));
		expectTerminalSane(program);
	});

	test('on the home screen says that nothing is open', async () => {
		const program = beginInShell(freshFolder());
		await program.waitFor(option(1, words.beside.home.start));
		program.press('ctrl+c');
		await program.waitFor('-tostop');
		expect(program.normalScreen()).toMatch(new RegExp(`^${nothingOpen}\nstatus=130$`, 'm'));
		expectTerminalSane(program);
	});
});

test('Left from the list of the first screen, it ends with 0', async () => {
	const program = begin();
	await program.waitFor(option(6, words.beside.home.leave));
	program.type('6\r');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});
	expect(program.normalScreen()).toMatch(new RegExp(`^${nothingOpen}$`));
});

describe('A signal', () => {
	test.each([
		['SIGTERM', 143],
		['SIGHUP', 129],
		['SIGINT', 130],
	] as const)('%s ends with %i, the parting line, and all answers saved', async (signal, status) => {
		const dataDir = describedArm();
		const program = begin({dataDir});
		await walk(program, [resume, readLevel()[0]]);
		await waitForTurn(program, readLevel()[1]);
		program.type('0.05 le');
		await program.waitFor('0.05 le');
		program.kill(signal);
		expect(await program.exited).toEqual({exitCode: status, signal: 0});
		expect(program.isOnAlternateScreen()).toBe(false);
		const said = parting.saved({arm: 'north deck', step: titleOf('level-lr-2')});
		expect(bare(program.normalScreen())).toContain(bare(said));
		const again = begin({dataDir});
		await walk(again, [resume]);
		await waitForTurn(again, readLevel()[1]);
	});
});

test('A terminal that is closed ends it at once, all answers saved and the lock given back', async () => {
	const dataDir = playedFolder([start, ...prepare]);
	const program = begin({dataDir});
	await walk(program, [resume]);
	await program.waitFor(limitAsked('inner'));
	await program.answer('3 out', limitAsked('outer'));
	program.closeTerminal();
	expect(await program.exited).toEqual({exitCode: 0, signal: 1});
	const again = begin({dataDir});
	await walk(again, [resume]);
	await again.waitFor(asks(turn('', limitAsked('inner'), roundAnew)));
});
