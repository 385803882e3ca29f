import {
	existsSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmdirSync,
	statSync,
	writeFileSync,
} from 'node:fs';
import path from 'node:path';
import {expect, onTestFinished, test} from 'vitest';
import {
	biasOff,
	coverStylus,
	fullCheck,
	lookAlongArm,
	makeSafe,
	matOff,
	pickKnown,
	readLevel,
	resume,
	start,
	weigh,
} from '../helpers/check-turns.js';
import {playedFolder, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {PROGRAM, type ProgramOptions, type RunningProgram, startProgram} from '../helpers/pty.js';
import {anything, around, bare, broken, flat, words} from '../helpers/said.js';
import {asks, option, turn, typed, waitForTurn, walk} from '../helpers/walk.js';

const {answer: unsaved} = words.faces.unsaved;
const draft = {id: 'draft', values: {}} as const;

const begin = (options: ProgramOptions): RunningProgram => {
	const program = startProgram(options);
	onTestFinished(() => program.stop());
	return program;
};

/** A folder with one finished check, and a second one open at the level. */
const usedFolder = (): string =>
	playedFolder([start, ...fullCheck], [start, ...pickKnown, ...makeSafe, coverStylus, ...matOff]);

const draftFiles = (dataDir: string): [older: string, newer: string] => {
	const files = ['draft-a.json', 'draft-b.json'].map((name) => path.join(dataDir, name));
	const numberIn = (file: string): number => JSON.parse(readFileSync(file, 'utf8')).number;
	const [first = '', second = ''] = files.sort((one, other) => numberIn(one) - numberIn(other));
	return [first, second];
};

const damage = {id: 'unreadable', values: {}} as const;
const [begun = '', , ended = ''] = around(
	words.store['set-aside']({thing: draft, file: anything, damage, aside: anything}),
);

test('A damaged file of the check is set aside, both names are said, and the older copy is gone on with', async () => {
	const dataDir = usedFolder();
	const [, newer] = draftFiles(dataDir);
	const half = readFileSync(newer).subarray(0, 700);
	writeFileSync(newer, half);
	const program = begin({dataDir});
	const home = await program.waitFor(asks(turn('', begun, ended)));
	const aside = readdirSync(dataDir).find((name) => name.startsWith(`${path.basename(newer)}.damaged-`)) ?? 'none';
	expect(bare(home)).toContain(bare(newer));
	expect(bare(home)).toContain(aside);
	expect(readFileSync(path.join(dataDir, aside))).toEqual(half);
	await walk(program, [resume]);
	// The last answer was in the damaged copy only, so its question comes again.
	await waitForTurn(program, typed('mat-thickness', ''));
});

const one = words.beside.past.span({first: 1, last: 1, total: 1, hasKeys: true});

test('With both files of the check damaged, past checks and profiles are still there', async () => {
	const dataDir = usedFolder();
	for (const file of draftFiles(dataDir)) writeFileSync(file, 'not JSON');
	const program = begin({dataDir});
	await program.waitFor(asks(start));
	expect(readdirSync(dataDir).filter((name) => name.includes('.damaged-'))).toHaveLength(2);
	await walk(program, [turn('4', option(4, words.beside.home.past))]);
	await program.waitFor(new RegExp(`${broken(one).source}[\\s\\S]*north deck`));
	program.press('esc');
	await walk(program, [turn('5', option(5, words.beside.home.profiles))]);
	await program.waitFor('north deck');
});

test.each(['terminal', 'pipe'])(
	'A file of a newer version stays as it is: one sentence and status 1, at a %s',
	async (at) => {
		const dataDir = usedFolder();
		const [, newer] = draftFiles(dataDir);
		const future = JSON.stringify({...JSON.parse(readFileSync(newer, 'utf8')), version: 99});
		writeFileSync(newer, future);
		const names = readdirSync(dataDir);
		let said: string;
		if (at === 'terminal') {
			const program = begin({dataDir});
			expect(await program.exited).toEqual({exitCode: 1, signal: 0});
			said = program.normalScreen();
		} else {
			const ended = run(dataDir, ['--plain']);
			expect([ended.status, ended.out]).toEqual([1, '']);
			said = ended.faults;
		}
		expect(bare(said)).toContain(bare(words.store.newer({thing: draft, file: newer, version: 99})));
		expect(readFileSync(newer, 'utf8')).toBe(future);
		expect(readdirSync(dataDir)).toEqual(names);
	},
);

test('An answer that cannot be saved is kept on the screen and saved by Enter once the obstacle is gone', async () => {
	const dataDir = usedFolder();
	const program = begin({dataDir});
	await walk(program, [resume]);
	await waitForTurn(program, readLevel()[0]);
	// The next save goes to the older of the two files; root may write anything else, but not over a folder.
	const [older] = draftFiles(dataDir);
	renameSync(older, `${older}.away`);
	mkdirSync(older);
	program.type('0.15 right\r');
	const shown = flat(await program.waitFor(unsaved.title));
	const because = words.store['not-plain']({thing: draft, file: older, found: 'folder'});
	expect(bare(shown)).toContain(bare(because));
	expect(shown).toContain(unsaved.whatIsSaved);
	// The deck stands as it does, whatever the disk does.
	expect(shown).toContain(words.pages.view.notReadyToPlay);
	program.press('enter');
	await program.waitFor(unsaved.title);
	rmdirSync(older);
	program.press('enter');
	await waitForTurn(program, readLevel()[1]);
	await program.stop();
	const again = begin({dataDir});
	await walk(again, [resume]);
	await waitForTurn(again, readLevel()[1]);
});

test('Where the system cuts files short, no half-saved answer counts, and nothing before it is lost', async () => {
	const dataDir = usedFolder();
	// Of an arm that is known.
	const toCome = [...readLevel(), ...biasOff, ...lookAlongArm, weigh];
	const [, newer] = draftFiles(dataDir);
	// In blocks of 512 bytes (POSIX ulimit -f): room for taking the check up, not for many answers.
	const blocks = Math.ceil((statSync(newer).size + 150) / 512);
	const program = begin({
		dataDir,
		command: ['sh', '-c', `ulimit -f ${blocks}; exec "${process.execPath}" "${PROGRAM}"`],
	});
	await walk(program, [resume]);
	let asked = 0;
	for (const one of toCome) {
		await waitForTurn(program, one);
		program.type(one.keys);
		const next = asks(toCome[asked + 1] ?? one);
		if ((await program.waitFor((screen) => screen.includes(unsaved.title) || next(screen))).includes(unsaved.title))
			break;
		asked++;
	}
	expect(flat(program.screen())).toMatch(new RegExp(`${unsaved.title}.*${broken(unsaved.whatIsSaved).source}`));
	program.press('ctrl+c');
	expect(await program.exited).toEqual({exitCode: 130, signal: 0});
	const again = begin({dataDir});
	await walk(again, [resume]);
	await waitForTurn(again, toCome[asked] ?? start);
});

test('A folder for the data that is a file is refused with one sentence', () => {
	const dataDir = freshFolder();
	const file = path.join(dataDir, 'a file');
	writeFileSync(file, 'mine');
	const {status, faults} = run(dataDir, ['--plain', '--data', file], {input: '1\ny\n'});
	expect(status).toBe(1);
	expect(faults.trim().split('\n')).toHaveLength(1);
	expect(readFileSync(file, 'utf8')).toBe('mine');
	expect(existsSync(file)).toBe(true);
});
