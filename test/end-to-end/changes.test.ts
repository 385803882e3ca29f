import fs from 'node:fs';
import path from 'node:path';
import {expect, onTestFinished, test} from 'vitest';
import {fullFolder} from '../helpers/data-folders.js';
import {run} from '../helpers/plain-run.js';
import {startProgram} from '../helpers/pty.js';
import {flat, titleOf, withAnyNumbers, words} from '../helpers/said.js';
import {option, turn, walk} from '../helpers/walk.js';

const {past, profiles} = words.beside;
const disturbed = words.results.voidReasons.disturbed;
const voided = past.state({outcome: 'complete', verdict: null, voidBecause: disturbed});
/** The serial number of an arm as its profile shows it. */
const serial = (typed: string): string => profiles.answer({title: titleOf('arm-serial'), text: profiles.text({typed})});

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
		turn('5', option(5, words.beside.home.profiles)),
		turn('3', option(3, profiles.inList({kind: 'arm', name: 'north deck', isAside: false}))),
		turn('1', option(1, profiles.actions.rename)),
		turn(
			'upper deck\r',
			profiles.rename({name: 'north deck'}),
			words.faces.field.keeps({text: 'north deck', mayBeEmpty: false}),
		),
		turn('2', profiles.formerNames({names: ['an older name', 'north deck']}), option(2, profiles.actions.answers)),
		turn('6', profiles.correct({name: 'upper deck'}), option(6, serial('N 0042'))),
		turn('-\r', profiles.now({text: 'N 0042'}), words.faces.field.keeps({text: 'N 0042', mayBeEmpty: true})),
	]);
	await program.waitFor(option(6, serial('')));
	for (const shown of [
		option(1, profiles.actions.rename),
		profiles.inList({kind: 'arm', name: 'upper deck', isAside: false}),
		option(4, words.beside.home.past),
	]) {
		program.press('esc');
		await program.waitFor(shown);
	}
	await walk(program, [
		turn('4', option(4, words.beside.home.past)),
		turn('1', past.span({first: 1, last: 7, total: 7, hasKeys: true})),
		turn('2', option(2, past.check.markVoid)),
		turn('2', past.reason.title, option(2, disturbed)),
	]);
	expect(flat(await program.waitFor(option(2, past.check.countAgain)))).toContain(
		words.results.void({at: new Date().toISOString(), reason: disturbed}),
	);
	program.press('esc');
	await program.waitFor(new RegExp(`1 2026-11-14 +north deck +${voided}`));
	program.press('esc');
	await program.waitFor(option(4, words.beside.home.past));
	program.press('esc');
	expect((await program.exited).exitCode).toBe(0);
	expect(run(dataDir, ['list']).out).toMatch(new RegExp(`^2026-11-14 +north deck +${voided} `));
	const today = new Date().toISOString();
	const {out, status} = run(dataDir, ['--plain'], {
		input: [
			words.beside.home.past,
			'1',
			past.check.countAgain,
			'/back',
			'/back',
			words.beside.home.profiles,
			'3',
			'/leave',
		].join('\n'),
	});
	expect(status).toBe(0);
	expect(flat(out)).toMatch(withAnyNumbers(words.results.void({at: today, reason: disturbed})));
	expect(flat(out)).toMatch(withAnyNumbers(words.results.wasVoid({at: today, takenBackAt: today, reason: disturbed})));
	expect(out.split('\n')).toContain(serial(''));
	expect(run(dataDir, ['list']).out).toMatch(new RegExp(`^2026-11-14 +north deck +(?!${voided})`));
	expect(checksIn(dataDir)).toEqual(before);
});
