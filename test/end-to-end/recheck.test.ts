import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {questionsIn} from '../helpers/conversation.js';
import {playPlain, run} from '../helpers/plain-run.js';
import {earlier, freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {anything, around, numbersIn, titleOf, words} from '../helpers/said.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, answer, asks, asLines, option, turn, typed, waitForTurn, walk} from '../helpers/walk.js';
import {playPastYears, prepareAgain, steady} from './past-years.js';

const {comparison} = words.years;
/** The line of an arm on the first screen, so many days overdue. */
const dueForDays = around(option(2, words.beside.home.recheck({arm: 'north deck', inDays: -9})).replace('9', anything));
const nothingToRepeat = (arm: string, meant?: string): string =>
	`${words.commands.desk.nothingToRepeatOf({arm, meant})}\n`;

test('After five checks over two years, a re-check says what changed at one radius and what did not at the other', async () => {
	const dataDir = freshFolder();
	playPastYears(dataDir);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [turn('2', ...dueForDays)]);
	await walk(program, prepareAgain);
	const lastTime = words.pages.verdict.bands.last({place: words.places.inner});
	const [first, ...others] = played.probeAll(steady({out: 1.5}));
	if (!first) throw new Error('no reading');
	await waitForTurn(program, first);
	expect(await allPages(program)).toContain(lastTime);
	// The task is told on the first page.
	program.press('left');
	await walk(program, [first]);
	// From the first reading on it stands beside those of today.
	await program.waitFor(lastTime);
	await walk(program, others);
	await program.waitFor(asks(played.readVerdict));
	const verdict = await allPages(program);
	expect(verdict).toContain(comparison.summary.changed);
	// Against the first check nothing but the pull inside is another: all else was read just as it was then.
	const date = filedCheck(dataDir, filedIds(dataDir)[0] ?? '').check.startedAt.slice(0, 10);
	const inner = {place: words.places.inner, radiusMm: 68};
	const outer = {place: words.places.outer, radiusMm: 136};
	const moved = comparison.moved({
		date,
		verdict: 'changed',
		figure: 'pull',
		...inner,
		movedPct: 1.5,
		uncertaintyPct: 97,
	});
	expect(numbersIn(verdict, moved, 97)).toHaveLength(1);
	const unchanged = comparison.unchanged({
		date,
		figures: [
			{figure: 'band', ...inner, movedPct: 0, uncertaintyPct: 97},
			{figure: 'pull', ...outer, movedPct: 0, uncertaintyPct: 98},
			{figure: 'band', ...outer, movedPct: 0, uncertaintyPct: 99},
		],
	});
	expect(numbersIn(verdict, unchanged, 97, 98, 99)).toHaveLength(3);
	expect(verdict).toContain(comparison.againstFirst);
	expect(verdict).toContain(words.pages.verdict.overYears);
	expect(verdict).toContain(
		words.pictures.history.heading({
			label: words.years.pictures.pull({place: words.places.inner, radiusMm: 68}),
			count: 6,
		}),
	);

	await walk(program, [played.readVerdict, ...played.putBackAt('16')]);
	await program.waitFor(played.filed);
	program.type('1\r');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});
	const id = filedIds(dataDir).at(-1) ?? '';
	const filed = filedCheck(dataDir, id);
	expect(filed.check.recheckOf).toBe(filedIds(dataDir).at(-2));
	const because = [true, false].map((isUndecided) => words.results.nextCheck.soon({isUndecided, change: 'changed'}));
	expect(because).toContain(filed.nextCheck?.because);
});

test('What was done since the last check is asked first, and filed, in words of its own too', () => {
	const dataDir = freshFolder();
	const probed = [...played.probeAll(steady()), played.leaveIt, ...played.putBack];
	expect(playPlain(dataDir, [played.start, ...played.prepare, ...probed], earlier(60 * 24 * 175)).status).toBe(0);
	const since = [
		answer('done-since', '7', option(7, words.options['done-since'].other)),
		typed('done-since-note', 'new belt'),
		...prepareAgain.slice(1),
	];
	const {status, out} = run(dataDir, ['--plain', 'recheck'], {input: asLines([...since, ...probed])});
	expect(status).toBe(0);
	expect(questionsIn(out.split('\n'))[0]).toContain(titleOf('done-since'));
	const {answers} = filedCheck(dataDir, filedIds(dataDir).at(-1) ?? '').check;
	expect(answers['done-since']?.value).toEqual(['other']);
	expect(answers['done-since-note']?.value).toBe('new belt');
});

test('Where there is nothing to repeat, one sentence says so with the way out', () => {
	const {status, out, faults} = run(freshFolder(), ['--plain', 'recheck', 'south deck']);
	expect(status).toBe(2);
	expect(out).toBe('');
	expect(faults).toBe(nothingToRepeat('south deck'));
});

test('A name that is not known is said at once, while a check of another arm is open too', () => {
	const dataDir = freshFolder();
	expect(run(dataDir, ['--plain', '--arm', 'north deck'], {input: '233\n'}).status).toBe(3);
	const unknown = run(dataDir, ['--plain', 'recheck', 'north dekc']);
	expect(unknown).toEqual({
		status: 2,
		out: '',
		faults: nothingToRepeat('north dekc', 'north deck'),
	});
	expect(run(dataDir, ['--plain', 'recheck', 'quite another']).faults).toBe(nothingToRepeat('quite another'));
	// The open one is taken up again, whether it has a past or not.
	expect(run(dataDir, ['--plain', 'recheck', 'north deck'], {input: ''})).toMatchObject({status: 3, faults: ''});
});
