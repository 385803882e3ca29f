import {readFileSync} from 'node:fs';
import path from 'node:path';
import {expect, onTestFinished, test} from 'vitest';
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {converse} from '../../source/plain/converse.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {readyPracticeFolder} from '../../source/store/practice-folder.js';
import type {PracticeExtent} from '../../source/workbench.js';
import {run} from '../helpers/plain-run.js';
import {PracticeTechnician} from '../helpers/practice-lines.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';

const start = (dataDir: string, ...args: readonly string[]) => {
	const program = startProgram({dataDir, args: ['practice', ...args]});
	onTestFinished(() => program.stop());
	return program;
};

/** The answers of a careful technician to a practice check, found by doing it. */
async function careful(arm: string, extent: PracticeExtent, seed: number) {
	const dataDir = readyPracticeFolder(freshFolder(), 'invented');
	const desk = new PracticeWorkbench({dataDir, version: '0.0.0', settings: usualSettings, seed: () => seed});
	const opened = await desk.begin(arm, extent);
	if (!opened.ok) throw new Error(opened.sentence);
	const technician = new PracticeTechnician();
	const end = await converse(desk, opened.dialogue, technician);
	desk.release();
	if (end.kind !== 'finished') throw new Error(`${end.kind}: ${technician.heard.slice(-8).join('\n')}`);
	return technician.answers;
}

const practised = (dataDir: string, answers: readonly string[], ...args: readonly string[]) =>
	run(dataDir, ['--plain', 'practice', ...args], {input: `${answers.join('\n')}\n`});

test('the arm that sticks and pulls, done whole on the built program, ends in its finding with the hidden truth beside it', async () => {
	const dataDir = freshFolder();
	const answers = await careful('sticks-and-pulls', 'whole', 7);
	const {status, out, faults} = practised(dataDir, answers, '--on', 'sticks-and-pulls', '--seed', '7');
	expect(faults).toBe('');
	expect(status).toBe(0);
	expect(out).toContain('Verdict: BEYOND LIMITS');
	expect(out).toContain('What was hidden: an arm that sticks and pulls');
	expect(out).toContain('Your findings name it: friction and a pull at once');
	// By chance one value in twenty lies outside its ±; none lies outside twice of it.
	const figures = [
		...out.matchAll(/mm, (?:side pull|hold band): found ([\d.]+) %.*? ± ([\d.]+) %, hidden ([\d.]+) %/g),
	];
	expect(figures.length).toBeGreaterThanOrEqual(4);
	for (const [, found, stated, hidden] of figures)
		expect(Math.abs(Number(found) - Number(hidden))).toBeLessThanOrEqual(2 * Number(stated));
	expect(out).toContain('Nothing to do better: every reading stood at its limit');
	// Every question says that it is practice.
	const questions = out.split('\n').filter((line) => line.startsWith('Question '));
	expect(questions.length).toBeGreaterThan(40);
	expect(questions.filter((line) => !line.includes('PRACTICE: An arm that sticks and pulls'))).toEqual([]);
});

test('a first try asks four limits, and comes to a verdict and the hidden truth', async () => {
	const dataDir = freshFolder();
	const answers = await careful('sticky-bearing', 'once', 5);
	expect(answers.filter((one) => /^[+-]?\d+(\.\d)?$/.test(one) && one !== '1').length).toBeLessThanOrEqual(5);
	const {out} = practised(dataDir, answers, '--on', 'sticky-bearing', '--extent', 'once', '--seed', '5');
	expect(out).not.toContain('Closing round');
	expect(out).toContain('One round does not show how well rounds repeat');
	expect(out).toContain('What was hidden: an arm with a sticky bearing');
	expect(out).toContain('armdrift practice --on sticky-bearing --extent once --seed 5');
});

test('practice lies apart from real checks, and every report on it says what it is', async () => {
	const dataDir = freshFolder();
	const answers = await careful('well-behaved', 'probe', 3);
	expect(practised(dataDir, answers, '--on', 'well-behaved', '--extent', 'probe', '--seed', '3').status).toBe(0);
	expect(run(dataDir, ['list']).faults).toContain('There are no past checks');
	expect(run(dataDir, ['export']).out).not.toContain('well-behaved');
	const folder = path.join(dataDir, 'practice');
	expect(readFileSync(path.join(folder, 'PRACTICE.txt'), 'utf8')).toContain('No reading in this folder is real');
	const [id = ''] = filedIds(folder);
	expect(filedCheck(folder, id).check.practice?.arm).toBe('well-behaved');
	for (const form of ['html', 'markdown', 'maker'])
		expect(run(dataDir, ['report', '--practice', '--as', form]).out).toContain('PRACTICE: ');
	const refused = run(dataDir, ['--data', folder, 'list']);
	expect(refused.status).toBe(1);
	expect(refused.faults).toContain('holds practice checks of invented arms only');
});

test('on full screens arrows nudge the arm, the gauge follows, and an interrupted practice goes on where it was', async () => {
	const dataDir = freshFolder();
	const program = start(dataDir);
	await program.waitFor('PRACTICE: which invented arm?');
	program.type('4');
	await program.waitFor('how much of the check?');
	program.type('1');
	const before = await program.waitFor(/the gauge shows .* still for \d s/);
	expect(before).toContain('PRACTICE: An arm with a sticky bearing · Probe');
	expect(before).toContain('● stylus on the');
	program.press('right');
	await program.waitFor(/the gauge shows \+(1|1\.5|0\.5) % · it holds/);
	program.type(',');
	await program.waitFor(/the gauge shows \+(0|0\.5|1)(\.0)? % · it holds/);
	program.type('-4\r');
	expect(await program.waitFor('OUTERMOST')).toContain('This round: -4 %');
	program.type('\u0003');
	expect(await program.exited).toEqual({exitCode: 130, signal: 0});
	expect(program.normalScreen()).toContain('armdrift practice');
	const again = start(dataDir);
	expect(await again.waitFor('1 go on with')).toContain('An arm with a sticky bearing');
	again.type('1');
	expect(await again.waitFor('OUTERMOST')).toContain('This round: -4 %');
});

test('from the first screen practice opens and is left again, and the parting line is about what was open last', async () => {
	const program = startProgram();
	onTestFinished(() => program.stop());
	await program.waitFor('5 practise on an invented arm');
	program.type('5');
	expect(await program.waitFor('PRACTICE: which invented arm?')).toContain('Esc real checks');
	program.press('esc');
	await program.waitFor('does the arm swing freely?');
	program.type('5');
	await program.waitFor('which invented arm?');
	program.type('2');
	await program.waitFor('how much of the check?');
	program.type('1');
	await program.waitFor('INNERMOST');
	program.press('ctrl+c');
	await program.exited;
	expect(program.normalScreen()).toContain("stands at 'Probe at the inner radius'");
	expect(program.normalScreen()).toMatch(/Go on with: armdrift practice$/m);
});

test('an arm that is not told keeps its name until its truth is shown', async () => {
	const dataDir = freshFolder();
	const program = start(dataDir, '--seed', '12');
	await program.waitFor('1 one of them, not told which');
	program.type('1');
	await program.waitFor('how much of the check?');
	program.type('3');
	expect(await program.waitFor('Make safe')).toContain('PRACTICE: Hidden arm 12');
});

test('an unknown arm is refused with the one that was meant, and a seed that is no number', () => {
	const meant = run(freshFolder(), ['practice', '--on', 'sticky-bearings']);
	expect(meant.status).toBe(2);
	expect(meant.faults).toContain('did you mean "sticky-bearing"?');
	const seed = run(freshFolder(), ['practice', '--seed', 'x']);
	expect(seed.status).toBe(2);
	expect(seed.faults).toContain('Wanted: --seed with a whole number');
});
