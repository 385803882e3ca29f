import fs from 'node:fs';
import path from 'node:path';
import {expect, onTestFinished, test} from 'vitest';
import {fullFolder} from '../helpers/data-folders.js';
import {run} from '../helpers/plain-run.js';
import {startProgram} from '../helpers/pty.js';
import {turn, walk, words} from '../helpers/walk.js';

const checksIn = (dataDir: string): string[] => {
	const folder = path.join(dataDir, 'checks');
	return fs.readdirSync(folder).map((name) => fs.readFileSync(path.join(folder, name), 'utf8'));
};

test('A profile is renamed and corrected and a check marked void on full screens, and in plain lines both are seen and taken back', async () => {
	const {dataDir} = await fullFolder();
	const before = checksIn(dataDir);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [
		turn('4', '4 profiles of arms'),
		turn('3', '3 arm: north deck'),
		turn('1', '1 rename it'),
		turn('upper deck\r', 'Rename north deck', 'Enter keeps north deck'),
		turn('2', 'Called "an older name" and "north deck" before.', '2 correct an answer'),
		turn('1', 'Correct upper deck', '1 Serial number: N 0042'),
		turn('-\r', 'Now: N 0042', '- for none'),
	]);
	await program.waitFor('1 Serial number: not known');
	for (const shown of ['1 rename it', /\d arm: upper deck/, '3 past checks']) {
		program.press('esc');
		await program.waitFor(shown);
	}
	await walk(program, [
		turn('3', '3 past checks'),
		turn('1', '1 to 7 of 7'),
		turn('2', '2 mark it void'),
		turn('2', 'Why does this check not count?', '2 the deck was disturbed'),
	]);
	expect(words(await program.waitFor('2 let it count again'))).toContain('the deck was disturbed. It does not count:');
	program.press('esc');
	await program.waitFor(/1 2026-11-14 +north deck +void/);
	program.press('esc');
	await program.waitFor('3 past checks');
	program.press('esc');
	expect((await program.exited).exitCode).toBe(0);
	expect(run(dataDir, ['list']).out).toMatch(/^2026-11-14 +north deck +void /);
	const {out, status} = run(dataDir, ['--plain'], {
		input: ['past checks', '1', '2', '/back', '/back', 'profiles of arms, cartridges and tools', '3', '/leave'].join(
			'\n',
		),
	});
	expect(status).toBe(0);
	expect(out).toMatch(/^VOID since \d{4}-\d\d-\d\d: the deck was disturbed\./m);
	expect(out).toMatch(/^Was void from .* \(the deck was disturbed\); counts again\.$/m);
	expect(out).toMatch(/^Serial number: not known$/m);
	expect(run(dataDir, ['list']).out).toMatch(/^2026-11-14 +north deck +(?!void)/);
	expect(checksIn(dataDir)).toEqual(before);
});
