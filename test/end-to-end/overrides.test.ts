import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {playPlain, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, asks, type Turn, turn, typed, walk} from '../helpers/walk.js';

const begin = (dataDir: string): RunningProgram => {
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	return program;
};

/** Reads the newest past check whole, from the home screen on. */
async function pastCheck(dataDir: string): Promise<string> {
	const program = begin(dataDir);
	await walk(program, [turn('3', '3 past checks'), turn('1', '1 to 1 of 1')]);
	await program.waitFor(/^Past check$/m);
	return allPages(program);
}

test('A level that is out and a clearance that is wrong can be gone past with a reason, which stays beside the verdict', async () => {
	const dataDir = freshFolder();
	playPlain(dataDir, [played.start, ...played.describeAll]);
	const overrideLevel: readonly Turn[] = [
		turn('2', 'Level: does not pass.', '2 go on regardless, with a reason'),
		turn('1', 'Why go on?', '1 the deck cannot be levelled here'),
	];
	const overrideClearance: readonly Turn[] = [
		typed('clearance', '7.5', 'Enter accept'),
		// The blank shows that it is no bounce of the Enter before.
		turn(' \r', '7.5 mm is too high', 'type it anew'),
		turn('2', '7.5 mm is too high', '2 go on regardless, with a reason'),
		turn('3', 'Why go on?', '3 another reason (type it)'),
		turn('the stand, of "wood" & felt\r', 'Why go on?', '>'),
	];
	const program = begin(dataDir);
	await walk(program, [
		played.resume,
		...played.readLevel(['0.9 right', '0.9 right', '0.1 back', '0.1 back']),
		...overrideLevel,
		...played.biasOff,
		...played.lookAlongArm,
		...played.weigh,
		...overrideClearance,
		...played.probeAll(played.springy),
	]);
	await program.waitFor(asks(played.readVerdict));
	const reasons = [
		/Overridden: Level turned round, front to back\b[^▲]*: the deck cannot be levelled here/,
		/Overridden: Clearance\b[^▲]*: the stand, of "wood" & felt/,
	];
	const verdict = await allPages(program);
	for (const reason of reasons) expect(verdict).toMatch(reason);
	await walk(program, [played.readVerdict, ...played.putBack]);
	await program.waitFor(played.filed);
	program.type('1');
	await program.exited;
	const past = await pastCheck(dataDir);
	for (const reason of reasons) expect(past).toMatch(reason);
});

test('A reading at the end of the scale gives the verdict off scale, and no figures at that radius', async () => {
	const dataDir = freshFolder();
	playPlain(dataDir, [played.start, ...played.prepare]);
	const program = begin(dataDir);
	await walk(program, [
		played.resume,
		...played.probe('inner', [['16 out', '20 out']]).slice(0, -1),
		turn('3', 'Off scale', '3 go on without figures at this radius'),
		...played.probe('outer', played.springy.outer),
		...played.probe('closing', [['16 out', '18 out']]),
	]);
	await program.waitFor(asks(played.readVerdict));
	const verdict = await allPages(program);
	expect(verdict).toContain('Verdict: OFF SCALE');
	expect(verdict).toMatch(/inner 68 mm off scale off scale outer 136 mm \d/);
	expect(verdict).toContain('At 68 mm a reading reached the top of the scale, 20 %');
	await walk(program, [played.readVerdict, ...played.putBack]);
	await program.waitFor(played.filed);
	const [id = ''] = filedIds(dataDir);
	const {verdict: overall, probe} = JSON.parse(run(dataDir, ['compute', '--id', id]).out);
	expect(overall).toBe('off-scale');
	expect(probe).toEqual([
		expect.objectContaining({place: 'inner', pullPct: null, bandPct: null, pullVerdict: 'off-scale'}),
		expect.objectContaining({place: 'outer', pullPct: expect.any(Number), bandPct: expect.any(Number)}),
	]);
	expect(filedCheck(dataDir, id).issued?.figures).toMatchObject({verdict: 'off-scale'});
});
