import {expect, onTestFinished, test} from 'vitest';
import * as played from '../helpers/check-turns.js';
import {playedFolder, run} from '../helpers/plain-run.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {anything, says, titleOf, withAnything, words} from '../helpers/said.js';
import {filedCheck, filedIds} from '../helpers/saved-checks.js';
import {allPages, asks, isTitled, option, type Turn, turn, typed, walk} from '../helpers/walk.js';

const begin = (dataDir: string): RunningProgram => {
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	return program;
};

const {past} = words.beside;
const goOn = option(2, says.label({id: 'regardless', values: {}}));
const whyGoOn = words.pages.view.reason.override.title;
const [tooHigh = ''] = words.problems['guard-gap-off']({guardMm: 6.2, side: 'high', lowMm: 91, highMm: 92}).split('91');
/** That something was gone past at a step with a reason, whatever did not pass. */
const overridden = (step: string, reason: string): RegExp =>
	withAnything(
		words.pages.verdict.overridden({title: titleOf(step), sentence: anything, reason, series: 1, holds: true}),
		'[^▲]*',
	);
const {radii} = words.pages.verdict;
const inner = radii.radius({place: 'inner', radiusMm: 68});
const outer = radii.radius({place: 'outer', radiusMm: 136});
const noFiguresInside = new RegExp(`${inner} ${radii.offScale} ${radii.offScale} ${outer} \\d`);
const offScale = words.pages.rounds.offScale({top: 20, unit: 'percent', isBiasOn: false});

/** Reads the newest past check whole, from the home screen on. */
async function pastCheck(dataDir: string): Promise<string> {
	const program = begin(dataDir);
	await walk(program, [
		turn('4', option(4, words.beside.home.past)),
		turn('1', past.span({first: 1, last: 1, total: 1, hasKeys: true})),
	]);
	const [id = ''] = filedIds(dataDir);
	const title = past.check.titleOf({arm: 'north deck', date: filedCheck(dataDir, id).check.startedAt.slice(0, 10)});
	await program.waitFor((screen) => isTitled(screen, title));
	return allPages(program);
}

test('A level that is out and a clearance that is wrong can be gone past with a reason, which stays beside the verdict', async () => {
	const dataDir = playedFolder([played.start, ...played.describeAll]);
	const overrideLevel: readonly Turn[] = [
		turn('2', words.pages.level.fails, goOn),
		turn('1', whyGoOn, option(1, words.reasons['cannot-level'])),
	];
	const overrideHeight: readonly Turn[] = [
		typed('guard-gap', '6.2', words.faces.hints.accept),
		// The blank shows that it is no bounce of the Enter before.
		turn(' \r', tooHigh, words.faces.field.waysOut),
		turn('2', tooHigh, goOn),
		turn('3', whyGoOn, option(3, says.label({id: 'other-reason', values: {}}))),
		turn('the stand, of "wood" & felt\r', whyGoOn, '>'),
	];
	const program = begin(dataDir);
	await walk(program, [
		played.resume,
		...played.readLevel(['0.9 right', '0.9 right', '0.1 back', '0.1 back']),
		...overrideLevel,
		...played.levelToForce,
		...overrideHeight,
		...played.letGo,
		...played.probeAll(played.springy),
	]);
	await program.waitFor(asks(played.readVerdict));
	const reasons = [
		overridden('level-fb-2', words.reasons['cannot-level']),
		overridden('guard-gap', 'the stand, of "wood" & felt'),
	];
	const verdict = await allPages(program);
	for (const reason of reasons) expect(verdict).toMatch(reason);
	await walk(program, [played.readVerdict, ...played.putBack]);
	await program.waitFor(played.filed);
	program.type('1\r');
	await program.exited;
	const past = await pastCheck(dataDir);
	for (const reason of reasons) expect(past).toMatch(reason);
});

test('A reading at the end of the scale gives the verdict off scale, and no figures at that radius', async () => {
	const dataDir = playedFolder([played.start, ...played.prepare]);
	const program = begin(dataDir);
	await walk(program, [
		played.resume,
		...played.probe('inner', [['16 out', '20 out']]).slice(0, -1),
		turn('3', offScale, option(3, says.label({id: 'without-figures', values: {}}))),
		...played.probe('outer', played.springy.outer),
		...played.probe('closing', [['16 out', '18 out']]),
		...played.endProbe,
	]);
	await program.waitFor(asks(played.readVerdict));
	const verdict = await allPages(program);
	expect(verdict).toContain(words.pages.verdict.headline({verdict: 'off-scale', atWorst: 'off-scale'}));
	expect(verdict).toMatch(noFiguresInside);
	expect(verdict).toContain(words.findings['off-scale'].found({radiiMm: [68], topOfScale: 20, unit: 'percent'}));
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
