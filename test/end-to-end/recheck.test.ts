import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {playPastYears, prepareAgain, steady} from '../helpers/past-years.js';
import {run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, asks, turn, walk} from '../helpers/walk.js';

test('After five checks over two years, a re-check says what changed at one radius and what did not at the other', async () => {
	const dataDir = freshFolder();
	playPastYears(dataDir);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [turn('2', '2 re-check north deck (due for')]);
	await walk(program, prepareAgain('16'));
	await program.waitFor('last inner');
	await walk(program, played.probeAll(steady(2.5)));
	await program.waitFor(asks(played.readVerdict));
	const verdict = await allPages(program);
	expect(verdict).toContain('CHANGED since the last check.');
	expect(verdict).toMatch(/The pull at the inner radius \(65 mm\) moved 2\.\d ± \d\.\d % toward the rim since/);
	expect(verdict).toMatch(/Not changed since .*pull at the outer radius \(140 mm\)/);
	expect(verdict).toContain('Against the first check:');
	expect(verdict).toContain('Over the years');
	expect(verdict).toContain('pull, inner 65 mm, up is toward the rim (6 checks)');

	await walk(program, [played.readVerdict, ...played.putBack]);
	await program.waitFor(played.filed);
	program.type('1');
	expect(await program.exited).toEqual({exitCode: 0, signal: 0});
	const id = filedIds(dataDir).at(-1) ?? '';
	const filed = filedCheck(dataDir, id);
	expect(filed.check.recheckOf).toBe(filedIds(dataDir).at(-2));
	expect(filed.nextCheck?.because).toContain('something changed since the last check');
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
