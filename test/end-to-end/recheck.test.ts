import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {playPlain, run} from '../helpers/plain-run.js';
import {earlier, freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, answer, asks, asLines, turn, typed, walk} from '../helpers/walk.js';
import {playPastYears, prepareAgain, steady} from './past-years.js';

test('After five checks over two years, a re-check says what changed at one radius and what did not at the other', async () => {
	const dataDir = freshFolder();
	playPastYears(dataDir);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [turn('2', '2 re-check north deck (due for')]);
	await walk(program, prepareAgain('16'));
	await program.waitFor('last inner');
	await walk(program, played.probeAll(steady({out: 1.5})));
	await program.waitFor(asks(played.readVerdict));
	const verdict = await allPages(program);
	expect(verdict).toContain('CHANGED since the last check.');
	expect(verdict).toMatch(/The pull at the inner radius \(68 mm\) moved 1\.5 ± \d\.\d % toward the rim since/);
	expect(verdict).toMatch(/Not changed since .*pull at the outer radius \(136 mm\)/);
	expect(verdict).toContain('Against the first check of this stretch:');
	expect(verdict).toContain('Over the years');
	expect(verdict).toContain('pull, inner 68 mm, up is toward the rim (6 checks)');

	await walk(program, [played.readVerdict, ...played.putBack]);
	await program.waitFor(played.filed);
	program.type('1');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});
	const id = filedIds(dataDir).at(-1) ?? '';
	const filed = filedCheck(dataDir, id);
	expect(filed.check.recheckOf).toBe(filedIds(dataDir).at(-2));
	expect(filed.nextCheck?.because).toContain('something changed since the last check');
});

test('What was done since the last check is asked first, and filed, in words of its own too', () => {
	const dataDir = freshFolder();
	const probed = [...played.probeAll(steady()), played.readVerdict, ...played.putBack];
	expect(playPlain(dataDir, [played.start, ...played.prepare, ...probed], earlier(60 * 24 * 175)).status).toBe(0);
	const since = [
		answer('done-since', '7', '7 something else'),
		typed('done-since-note', 'new belt'),
		...prepareAgain('20').slice(1),
	];
	const {status, out} = run(dataDir, ['--plain', 'recheck'], {input: asLines([...since, ...probed])});
	expect(status).toBe(0);
	expect(out.split('\n').find((line) => line.startsWith('Question 1.'))).toContain('Since the last check');
	const {answers} = filedCheck(dataDir, filedIds(dataDir).at(-1) ?? '').check;
	expect(answers['done-since']?.value).toBe('other');
	expect(answers['done-since-note']?.value).toBe('new belt');
});

test('Where there is nothing to repeat, one sentence says so with the way out', () => {
	const {status, out, faults} = run(freshFolder(), ['--plain', 'recheck', 'south deck']);
	expect(status).toBe(2);
	expect(out).toBe('');
	expect(faults).toMatch(/^There is no past check of "south deck" to repeat; start a full one with --arm\.\n$/);
});

test('A name that is not known is said at once, while a check of another arm is open too', () => {
	const dataDir = freshFolder();
	expect(run(dataDir, ['--plain', '--arm', 'north deck'], {input: 'y\n'}).status).toBe(3);
	const unknown = run(dataDir, ['--plain', 'recheck', 'north dekc']);
	expect(unknown).toEqual({
		status: 2,
		out: '',
		faults: 'There is no past check of "north dekc" to repeat; did you mean "north deck"?\n',
	});
	expect(run(dataDir, ['--plain', 'recheck', 'quite another']).faults).toMatch(/start a full one with --arm\.\n$/);
	// The open one is taken up again, whether it has a past or not.
	expect(run(dataDir, ['--plain', 'recheck', 'north deck'], {input: ''})).toMatchObject({status: 3, faults: ''});
});
