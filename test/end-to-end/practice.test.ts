import {readFileSync} from 'node:fs';
import path from 'node:path';
import {expect, onTestFinished, test} from 'vitest';
import packageJson from '../../package.json' with {type: 'json'};
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {converse} from '../../source/plain/converse.js';
import {type LessonId, lessonArms} from '../../source/practice/arms.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {readyPracticeFolder} from '../../source/store/practice-folder.js';
import type {PracticeExtent} from '../../source/workbench.js';
import {roundAnew} from '../helpers/check-turns.js';
import {questionsIn} from '../helpers/conversation.js';
import {run} from '../helpers/plain-run.js';
import {PracticeTechnician} from '../helpers/practice-lines.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {
	anything,
	around,
	inOrder,
	leftAnyTime,
	numbersIn,
	titleOf,
	withAnyNumbers,
	withAnything,
	words,
} from '../helpers/said.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {asks, isTitled, limitAsked, option, turn} from '../helpers/walk.js';

const {motion, truth} = words.practice;
const {arms} = words.beside.practice;
const {parting} = words.commands;
/** Each figure of a radius as it is compared: what was found with its ±, and what was hidden. */
const compared = (['inner', 'outer', 'other'] as const).flatMap((place) =>
	[truth.pull.name({place, radiusMm: 7}), truth.band.name({place, radiusMm: 7})].map((name) => {
		const said = truth.compared({name, found: '<found>', hidden: '<hidden>', isWithin: undefined});
		const pattern = withAnyNumbers(said.slice(0, said.indexOf('<hidden>') + '<hidden>'.length)).source;
		return new RegExp(
			pattern.replace('<found>', '([\\d.]+) %.*? ± ([\\d.]+) %').replace('<hidden>', '([\\d.]+) %'),
			'g',
		);
	}),
);
/** Whose check it is, on a screen of practice. */
const called = (lesson: LessonId): string =>
	words.pages.view.arm({name: words.practice.arms[lesson].name, isPractice: true});
const holds = withAnyNumbers(motion.holds({ms: 1000}));
/** What the gauge shows, and what the arm does. */
const showing = (reading: string, state: RegExp): RegExp => {
	const [before, after] = words.faces.gaugedArm.shows({readingPct: 7, stepPct: 1}).split('+7');
	return new RegExp(`${before}${reading}${after} · (?:.*)${state.source}`);
};

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
	expect(out).toContain(words.pages.verdict.headline({verdict: 'beyond', atWorst: 'beyond'}));
	expect(out).toContain(truth.hidden({arm: 'sticks-and-pulls'}));
	expect(out).toContain(truth.named({likely: words.findings['pull-and-friction'].likely, found: ''}));
	// By chance one value in twenty lies outside its ±; none lies outside twice of it.
	const figures = compared.flatMap((pattern) => [...out.matchAll(pattern)]);
	expect(figures.length).toBeGreaterThanOrEqual(4);
	for (const [, found, stated, hidden] of figures)
		expect(Math.abs(Number(found) - Number(hidden))).toBeLessThanOrEqual(2 * Number(stated));
	expect(out).toContain(words.practice.advice.praise);
	// Every question says that it is practice.
	const questions = questionsIn(out.split('\n'));
	expect(questions.length).toBeGreaterThan(40);
	expect(questions.filter((line) => !line.includes(called('sticks-and-pulls')))).toEqual([]);
});

test('a first try asks four limits, and comes to a verdict and the hidden truth', async () => {
	const dataDir = freshFolder();
	const answers = await careful('sticky-bearing', 'once', 5);
	expect(answers.filter((one) => /^[+-]\d/.test(one))).toHaveLength(4);
	// What else is typed: the tracking force as it is played, and the temperature of the room.
	expect(answers.filter((one) => /^\d+(\.\d+)?$/.test(one) && !/^\d$/.test(one))).toHaveLength(2);
	const {out} = practised(dataDir, answers, '--on', 'sticky-bearing', '--extent', 'once', '--seed', '5');
	expect(out).not.toContain(titleOf('probe-closing'));
	const [hidden, oneRound] = [truth.hidden({arm: 'sticky-bearing'}), truth.oneRound({held: 7, of: 4})];
	const [held] = numbersIn(out, oneRound, 7);
	expect(held).toBeGreaterThanOrEqual(0);
	expect(held).toBeLessThanOrEqual(4);
	expect(out.indexOf(hidden)).toBeGreaterThan(-1);
	// It stands before the figures.
	const [before = ''] = oneRound.split('7');
	expect(out.indexOf(before)).toBeLessThan(out.search(compared[0] ?? /^$/));
	expect(out).toContain(words.faces.plain.option({number: 1, label: words.beside.practice.filed.again}));
	expect(out).toContain(truth.again({arm: 'sticky-bearing', extent: 'once', seed: 5}));
});

test('practice lies apart from real checks, and every report on it says what it is', async () => {
	const dataDir = freshFolder();
	const answers = await careful('well-behaved', 'probe', 3);
	expect(practised(dataDir, answers, '--on', 'well-behaved', '--extent', 'probe', '--seed', '3').status).toBe(0);
	expect(run(dataDir, ['list']).faults).toContain(words.commands.list.none({dataDir}));
	expect(run(dataDir, ['export']).out).not.toContain('well-behaved');
	const folder = path.join(dataDir, 'practice');
	expect(readFileSync(path.join(folder, 'PRACTICE.txt'), 'utf8')).toContain(words.commands.practice.mark);
	const [id = ''] = filedIds(folder);
	expect(filedCheck(folder, id).check.practice?.arm).toBe('well-behaved');
	for (const form of ['html', 'markdown', 'maker'])
		expect(run(dataDir, ['report', '--practice', '--as', form]).out).toContain(words.beside.practice.notice);
	const refused = run(dataDir, ['--data', folder, 'list']);
	expect(refused.status).toBe(1);
	expect(refused.faults).toContain(words.store['practice-only']({file: folder}));
});

test('on full screens arrows nudge the arm, the gauge follows, and an interrupted practice goes on with its round anew', async () => {
	const dataDir = freshFolder();
	// With room for the arm in plan also under sentences that are longer.
	const program = startProgram({dataDir, args: ['practice'], rows: 32});
	onTestFinished(() => program.stop());
	await program.waitFor(arms.title);
	program.type(`${lessonArms.findIndex(({id}) => id === 'sticky-bearing') + 3}\r`);
	await program.waitFor(words.beside.practice.extent.title);
	program.type('1\r');
	const before = await program.waitFor(showing('.*', withAnyNumbers(motion.rests({ms: 1000}))));
	expect(before).toContain(called('sticky-bearing'));
	expect(isTitled(before, titleOf('probe-inner'))).toBe(true);
	const [onGauge = ''] = words.faces.gaugedArm.stylusOnGauge({gaugeRadiusMm: 7});
	expect(before).toMatch(inOrder('● ', ...onGauge.split(' ')));
	program.press('right');
	await program.waitFor(showing('\\+(1|1\\.5|0\\.5)', holds));
	program.type(',');
	await program.waitFor(showing('\\+(0|0\\.5|1)(\\.0)?', holds));
	program.type('-4\r');
	expect(await program.waitFor(limitAsked('outer'))).toMatch(showing('.*', withAnyNumbers(motion.rests({ms: 1000}))));
	// The round that has begun stands behind it, drawn as far as it is read.
	program.press('pageDown');
	await program.waitFor(/^1 .*├─*…/m);
	program.type('\u0003');
	expect(await program.exited).toEqual({exitCode: 130, signal: 0});
	expect(program.normalScreen()).toContain('armdrift practice');
	const again = start(dataDir);
	const {name} = words.practice.arms['sticky-bearing'];
	const goOn = option(1, leftAnyTime(arms.resume({arm: name, minutesAgo: 0, step: titleOf('probe-inner')})));
	await again.waitFor(asks(turn('', ...around(goOn))));
	again.type('1\r');
	await again.waitFor(asks(turn('', limitAsked('inner'), roundAnew)));
});

test('from the first screen practice opens and is left again, and the parting line is about what was open last', async () => {
	const program = startProgram();
	onTestFinished(() => program.stop());
	await program.waitFor(option(5, words.beside.home.practice));
	program.type('5\r');
	expect(await program.waitFor(arms.title)).toContain(words.faces.escapes['real-checks']);
	program.press('esc');
	await program.waitFor(words.beside.home.title({version: packageJson.version}));
	program.type('5\r');
	await program.waitFor(arms.title);
	program.type('4\r');
	await program.waitFor(words.beside.practice.extent.title);
	program.type('1\r');
	await program.waitFor(limitAsked('inner'));
	program.press('ctrl+c');
	await program.exited;
	expect(program.normalScreen()).toMatch(
		withAnything(parting.practiceSaved({arm: anything, step: titleOf('probe-inner')})),
	);
	expect(program.normalScreen()).toMatch(
		new RegExp(`${withAnything(parting.goOn({goOn: 'armdrift practice'})).source}$`, 'm'),
	);
});

test('an arm that is not told keeps its name until its truth is shown', async () => {
	const dataDir = freshFolder();
	const program = start(dataDir, '--seed', '12');
	await program.waitFor(option(2, arms.hidden));
	program.type('2\r');
	await program.waitFor(words.beside.practice.extent.title);
	program.type('3\r');
	const hidden = words.practice.bench.hiddenArm({seed: 12});
	const screen = await program.waitFor((shown) => isTitled(shown, titleOf('safe')));
	expect(screen).toContain(words.pages.view.arm({name: hidden, isPractice: true}));
});

test('an unknown arm is refused with the one that was meant, and a seed that is no number', () => {
	const meant = run(freshFolder(), ['practice', '--on', 'sticky-bearings']);
	expect(meant.status).toBe(2);
	expect(meant.faults).toContain(words.commands.practice.noArm({arm: 'sticky-bearings', meant: 'sticky-bearing'}));
	const seed = run(freshFolder(), ['practice', '--seed', 'x']);
	expect(seed.status).toBe(2);
	expect(seed.faults).toMatch(withAnyNumbers(words.commands.practice.seedWanted({most: 9})));
});
