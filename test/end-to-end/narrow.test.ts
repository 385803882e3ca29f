import {expect, onTestFinished, test} from 'vitest';
import {filed, fullCheck, readVerdict, start} from '../helpers/check-turns.js';
import {type ProgramOptions, type RunningProgram, startProgram} from '../helpers/pty.js';
import {allPages, asks, pasted, walk, words} from '../helpers/walk.js';

const begin = (options: ProgramOptions): RunningProgram => {
	const program = startProgram(options);
	onTestFinished(() => program.stop());
	return program;
};

const small = {cols: 40, rows: 20} as const;

test('A whole check fits a window of 40 by 20: head, control and keys are on every screen, and the verdict is turned page by page', async () => {
	const program = begin(small);
	await walk(program, [start, ...fullCheck], {
		look: (screen, one) => {
			expect(program.usedRows(), screen).toBeLessThanOrEqual(small.rows - 1);
			expect(program.widestLine(), screen).toBeLessThanOrEqual(small.cols);
			expect(words(screen), screen).toMatch(/Ctrl\+C leave$/);
			if (one === start) return;
			expect(screen, screen).toMatch(/^(north deck|new arm) · .*\n(deck not )?ready to play\n/);
			expect(words(screen), screen).toMatch(/> .*Enter accept|❯ 1 .*digit or Enter|y \/ n y yes/);
		},
	});
	await program.waitFor((screen) => words(screen).includes(filed));
	expect(program.raw()).not.toContain('\u001B[3J');
});

test('Every page of the verdict can be read at 40 by 20', async () => {
	const program = begin(small);
	await walk(program, [start, ...fullCheck.slice(0, fullCheck.indexOf(readVerdict))]);
	await program.waitFor(asks(readVerdict));
	const verdict = await allPages(program);
	for (const part of ['Verdict: BEYOND LIMITS', 'the wire acts as a spring', 'Between the radii: the pulls differ'])
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
	await program.waitFor((screen) => words(screen).includes(filed));
	expect(program.raw()).not.toContain('\u001B[3J');
});
