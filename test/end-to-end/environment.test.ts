import {describe, expect, onTestFinished, test} from 'vitest';
import packageJson from '../../package.json' with {type: 'json'};
import type {MeasuredRadius} from '../../source/results/figures-types.js';
import {
	describeArm,
	describeTools,
	filed,
	fullCheck,
	leftOpen,
	lineAsked,
	makeSafe,
	pickKnown,
	start,
} from '../helpers/check-turns.js';
import {playedFolder} from '../helpers/plain-run.js';
import {type ProgramOptions, type RunningProgram, startProgram} from '../helpers/pty.js';
import {bare, flat, titleOf, words} from '../helpers/said.js';
import {asks, asLines, type Turn, turn, walk} from '../helpers/walk.js';

const begin = (options: ProgramOptions = {}): RunningProgram => {
	const program = startProgram(options);
	onTestFinished(() => program.stop());
	return program;
};

const homeTitle = words.beside.home.title({version: packageJson.version});
const {notReadyToPlay, stage} = words.pages.view;
/** The seventh question, the first one about the tools. */
const questionSeven = words.faces.plain.question({
	number: 7,
	arm: '',
	stage: stage({title: words.stages.tools, number: 2, of: 15}),
	progress: notReadyToPlay,
	title: titleOf('tools-name'),
});
// The worked example of the figures, as the precision of the screen lets it be.
const inner = {
	place: 'inner',
	radiusMm: 68,
	pullPct: 5.5,
	pullUncertaintyPct: 0.4,
	bandPct: 6,
	bandUncertaintyPct: 0.4,
};
const {row, radius, pull, band} = words.pages.verdict.radii;
/** The row of the table, up to how its pull is judged. */
const [atInnerRadius] = row({
	name: radius(inner as MeasuredRadius),
	pull: `${pull(inner as MeasuredRadius)}:`,
	band: band(inner as MeasuredRadius),
}).split(';');
const firstLine = lineAsked('safe', 'amplifier');

/** Parameters of every SGR sequence (ECMA-48 8.3.117) in what was written. */
const renditions = (raw: string): number[] =>
	[...raw.matchAll(/\u001B\[([\d;:]*)m/g)].flatMap(([, parameters = '']) => parameters.split(/[;:]/).map(Number));
/** Foreground and background colours: 30 to 49 in ECMA-48, 90 to 107 by xterm's usage. */
const isColour = (code: number): boolean => (code >= 30 && code <= 49) || (code >= 90 && code <= 107);
const INVERSE = 7;

test('Enter before the first frame counts once, and a second one confirms nothing', async () => {
	const dataDir = playedFolder([start, ...fullCheck]);
	const program = begin({dataDir});
	program.press('enter', 'enter', 'enter');
	await walk(program, pickKnown);
	await program.waitFor(firstLine);
});

test('It is drawn although CI is set', async () => {
	const program = begin({env: {CI: '1', CONTINUOUS_INTEGRATION: 'true'}});
	await walk(program, [start, ...describeArm]);
	await program.waitFor(titleOf('tools-name'));
});

describe('Colours', () => {
	test('are written where nothing speaks against them', async () => {
		const program = begin();
		await walk(program, [start, ...describeArm, ...describeTools, ...makeSafe]);
		await program.waitFor(titleOf('guard-mass'));
		expect(renditions(program.raw()).some(isColour)).toBe(true);
	});

	test.each([
		['NO_COLOR', {NO_COLOR: '1'}, []],
		['--no-color', {}, ['--no-color']],
	])('are left out of a whole check with %s, and the cursor of a field stays visible', async (_, env, args) => {
		const program = begin({env, args});
		await walk(program, [start, ...fullCheck]);
		await program.waitFor(filed);
		const codes = renditions(program.raw());
		expect(codes.filter(isColour)).toEqual([]);
		expect(codes).toContain(INVERSE);
		expect(program.raw()).not.toContain('\u001B[3J');
	});
});

/** A turn whose screen is in ASCII. */
const spelled = (one: Turn): Turn => ({
	...one,
	shows: one.shows.map((text) =>
		Object.entries(words.faces.spellings).reduce((said, [from, to]) => said.replaceAll(from, to), text),
	),
});

test('Where the locale is not UTF-8 a whole check is drawn in ASCII', async () => {
	const program = begin({env: {LC_ALL: undefined, LANG: 'C'}});
	const found = new Set<string>();
	await walk(program, [start, ...fullCheck].map(spelled), {
		look: (screen) => {
			for (const character of screen.match(/[^\n -~]/g) ?? []) found.add(character);
		},
	});
	expect([...found]).toEqual([]);
});

test("Ink's screen-reader mode says in sentences what is drawn otherwise", async () => {
	const program = begin({env: {INK_SCREEN_READER: '1'}, rows: 60});
	const seen: string[] = [];
	await walk(program, [start, ...fullCheck], {look: (screen) => seen.push(screen)});
	await program.waitFor(filed);
	expect(program.isOnAlternateScreen()).toBe(false);
	// Box drawing and block elements of Unicode, and the dots and arrows that go with them.
	expect(seen.join('\n')).not.toMatch(/[\u2500-\u259F●◉◄►]/);
	expect(flat(seen.join('\n'))).toContain(atInnerRadius);
});

describe('Plain lines', () => {
	test.each([
		['TERM=dumb', {TERM: 'dumb'}, []],
		['ACCESSIBLE=1', {ACCESSIBLE: '1'}, []],
		['--plain', {}, ['--plain']],
	])('come with %s: no redraw, no control sequence', async (_, env, args) => {
		const program = begin({env, args});
		await program.waitFor(
			asks(turn('', homeTitle, words.faces.plain.option({number: 1, label: words.beside.home.start}))),
		);
		program.type(asLines([start, ...describeArm]));
		// A terminal breaks a line of plain text within a word.
		await program.waitFor((screen) => bare(screen).includes(bare(questionSeven)));
		program.type('/leave\r');
		expect(await program.exited).toEqual({exitCode: 3, signal: 0});
		expect(program.raw()).not.toContain('\u001B');
		expect(flat(program.normalScreen())).toMatch(leftOpen);
	});
});
