import {expect, onTestFinished, test} from 'vitest';
import type {BetweenRadii} from '../../source/results/figures-types.js';
import {filed, fullCheck, readVerdict, resume, start} from '../helpers/check-turns.js';
import {playedFolder} from '../helpers/plain-run.js';
import {type ProgramOptions, type RunningProgram, startProgram} from '../helpers/pty.js';
import {broken, flat, withAnyNumbers, words} from '../helpers/said.js';
import {allPages, asks, pasted, walk} from '../helpers/walk.js';

const begin = (options: ProgramOptions): RunningProgram => {
	const program = startProgram(options);
	onTestFinished(() => program.stop());
	return program;
};

const literal = (text: string): string => broken(text).source;
const {arm, notReadyToPlay, place, readyToPlay} = words.pages.view;
const deck = {stylus: 'bare', mat: 'on', damping: 'none', bias: 'none', gauge: 'away'} as const;
const armOf = (at: 'locked' | 'in-rest' | 'on-gauge', isInHand = false): readonly string[] =>
	words.pages.deck.named({...deck, arm: at}, true, isInHand).flatMap(({part, text}) => (part === 'arm' ? [text] : []));
const arms = [armOf('locked'), armOf('in-rest'), armOf('on-gauge'), armOf('in-rest', true)].flat();
// A name is cut to no less than six columns, its mark among them.
const names = ['north deck', arm({name: undefined, isPractice: false})].map((name) => literal(name.slice(0, 5)));
const stages = withAnyNumbers(place({number: 7, of: 15})).source;
/** Whose check it is where there is room for that, where this is in the whole, how the arm stands and what is beside it, and whether the deck may be played. */
const headOfScreen = new RegExp(
	`^ (?:(?:${names.join('|')})[^·]* · )?${stages} \\S.*\\n [▸]?(?:${arms.map(literal).join('|')}) .*\\n .*(?:${literal(notReadyToPlay)}|${literal(readyToPlay)})\\n`,
);
const {hints, yesNo} = words.faces;
/** A field, a list or a question, with what its keys do. */
const control = new RegExp(
	`> .*(?:${literal(hints.accept)}|${literal(hints.settleFirst)})|❯ \\d .*${literal(hints.choose)}|${literal(`${yesNo({})} ${hints.yes}`)}`,
);
/** What is said between the radii, up to its figures. */
const [differ = ''] = words.pages.verdict
	.between({en: 7, differs: true, torqueSlopeMicroNmPerDeg: 0, neutralRadiusMm: null} as BetweenRadii)
	.split('7');

const small = {cols: 40, rows: 20} as const;

test('A whole check fits a window of 40 by 20: head, control and keys are on every screen, and the verdict is turned page by page', async () => {
	const program = begin(small);
	await walk(program, [start, ...fullCheck], {
		look: (screen, one) => {
			expect(program.usedRows(), screen).toBeLessThanOrEqual(small.rows - 1);
			expect(program.widestLine(), screen).toBeLessThanOrEqual(small.cols);
			expect(flat(screen), screen).toMatch(new RegExp(`${literal(words.faces.hints.leave)}$`));
			if (one === start) return;
			expect(screen, screen).toMatch(headOfScreen);
			expect(flat(screen), screen).toMatch(control);
		},
	});
	await program.waitFor(filed);
	expect(program.raw()).not.toContain('\u001B[3J');
});

test('Every page of the verdict can be read at 40 by 20', async () => {
	const dataDir = playedFolder([start, ...fullCheck.slice(0, fullCheck.indexOf(readVerdict))]);
	const program = begin({...small, dataDir});
	await walk(program, [resume]);
	await program.waitFor(asks(readVerdict));
	const verdict = await allPages(program);
	for (const part of [
		words.pages.verdict.headline({verdict: 'beyond', atWorst: 'beyond'}),
		words.findings['spring-pull'].likely,
		differ,
	])
		expect(verdict).toContain(part);
});

test.each([
	['in one write', 80, 24, '', ''],
	['in one write', 40, 20, '', ''],
	['as a bracketed paste', 80, 24, '\u001B[200~', '\u001B[201~'],
	['as a bracketed paste', 40, 20, '\u001B[200~', '\u001B[201~'],
])('A whole check that comes %s at %i by %i is played to its end', async (_, cols, rows, before, after) => {
	const program = begin({cols, rows});
	await program.waitFor(asks(start));
	program.type(before + pasted([start, ...fullCheck]) + after);
	await program.waitFor(filed);
	expect(program.raw()).not.toContain('\u001B[3J');
});
