import {existsSync, readdirSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {parse} from 'csv-parse/sync';
import {beforeAll, expect, onTestFinished, test} from 'vitest';
import {describeArm, fullCheck, pickKnown, start} from '../helpers/check-turns.js';
import {documentOf} from '../helpers/data-folders.js';
import {anotherCopy, playedFolder, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {PROGRAM, startProgram} from '../helpers/pty.js';
import {anything, broken, withAnyNumbers, withAnything, words} from '../helpers/said.js';
import {filedIds} from '../helpers/saved-checks.js';
import {walk} from '../helpers/walk.js';

const {exchange} = words.commands;
/** What the sample export holds. */
const parts = {checks: 1, remarks: 0, profiles: 2, settings: false};
const tooLarge = words.store['not-saved']({
	thing: {id: 'export', values: {}},
	file: `${anything}all.json`,
	system: 'EFBIG',
	option: '--out',
});

let from: string;
let file: string;
/** A folder with one finished check and one in progress, and its export. */
beforeAll(() => {
	from = playedFolder([start, ...fullCheck], [start, ...pickKnown]);
	file = path.join(freshFolder(), 'all.json');
	const ended = run(from, ['export', '--as', 'json', '--out', file]);
	expect(ended).toEqual({
		status: 0,
		out: '',
		faults: `${exchange.openLeftOut}\n`,
	});
});

const lines = (text: string): string[] => text.trimEnd().split('\n');
const elsewhere = (): string => path.join(freshFolder(), 'data');

test('What was exported is imported elsewhere: the same list, the same figures, and nothing new the second time', () => {
	const to = elsewhere();
	const shown = run(from, ['--data', to, 'import', file]);
	expect(shown.status).toBe(2);
	expect(lines(shown.out)[1]).toBe(exchange.newParts(parts));
	expect(shown.faults).toBe(`${exchange.nobodyToAsk}\n`);
	expect(existsSync(to)).toBe(false);

	const added = run(from, ['--data', to, 'import', file, '--yes']);
	expect([added.status, added.faults, lines(added.out).at(-1)]).toEqual([0, '', exchange.added(parts)]);
	const [id = ''] = filedIds(to);
	for (const args of [['list'], ['list', '--as', 'json'], ['compute', '--id', id]])
		expect(run(from, ['--data', to, ...args])).toEqual(run(from, args));

	const again = run(from, ['--data', to, 'import', file, '--yes']);
	expect([again.status, lines(again.out)[1]]).toEqual([0, exchange.nothingNew]);
	expect(readFileSync(path.join(to, 'checks', `${id}.json`), 'utf8')).toContain('north deck');
});

test('At a terminal it asks: n changes nothing, y adds', async () => {
	const to = elsewhere();
	const asked = () => {
		const program = startProgram({args: ['--data', to, 'import', file]});
		onTestFinished(() => program.stop());
		return program;
	};
	const declined = asked();
	await declined.waitFor(exchange.addIt);
	await declined.answer(
		'perhaps',
		new RegExp(`${broken(exchange.addIt).source}[\\s\\S]*${broken(exchange.addIt).source}`),
	);
	declined.type('n\r');
	expect((await declined.exited).exitCode).toBe(0);
	expect(declined.normalScreen()).toContain(exchange.nothingChanged);
	expect(existsSync(path.join(to, 'checks'))).toBe(false);

	const interrupted = asked();
	await interrupted.waitFor(exchange.addIt);
	interrupted.press('ctrl+c');
	expect((await interrupted.exited).exitCode).toBe(130);
	expect(readdirSync(to)).toEqual([]);

	const accepted = asked();
	await accepted.waitFor(exchange.addIt);
	accepted.type('y\r');
	expect((await accepted.exited).exitCode).toBe(0);
	expect(accepted.normalScreen()).toContain(exchange.added(parts));
	expect(filedIds(to)).toEqual(filedIds(from));
});

test('While another copy works on a check nothing is imported: status 4', async () => {
	const to = freshFolder();
	const other = startProgram({dataDir: to});
	onTestFinished(() => other.stop());
	await walk(other, [start, ...describeArm]);
	const {status, faults} = run(from, ['--data', to, 'import', file, '--yes']);
	expect(status).toBe(4);
	expect(lines(faults)).toHaveLength(1);
	expect(faults).toMatch(new RegExp(`^${withAnyNumbers(anotherCopy(1)).source}`));
	expect(existsSync(path.join(to, 'checks'))).toBe(false);
	// Looking is allowed.
	expect(run(from, ['--data', to, 'import', file]).status).toBe(2);
});

test('The table goes to standard output, and another parser reads it', () => {
	const {status, out} = run(from, ['export', '--as', 'csv']);
	expect(status).toBe(0);
	expect(out.endsWith('\r\n')).toBe(true);
	expect(out.startsWith('check_id,')).toBe(true);
	const rows = parse(out, {columns: true, record_delimiter: '\r\n'});
	expect(rows).toMatchObject([
		{check_id: filedIds(from)[0], arm: 'north deck', place: 'inner', radius_mm: '68'},
		{check_id: filedIds(from)[0], arm: 'north deck', place: 'outer', radius_mm: '136'},
	]);
});

test('A check that cannot be read is named and missing in the export, all others are in it: status 1', () => {
	const damaged = freshFolder();
	run(damaged, ['import', file, '--yes']);
	const id = '20200101-000000-invented';
	writeFileSync(path.join(damaged, 'checks', `${id}.json`), '{"half');
	const {status, out, faults} = run(damaged, ['export', '--as', 'json']);
	expect([status, lines(faults)]).toEqual([1, [expect.stringContaining(id)]]);
	const ids = documentOf(out).checks.map((one) => Object.assign({id: ''}, one).id);
	expect(ids).toEqual(filedIds(from));
});

test('A file that is there is not overwritten unless that is said', () => {
	const target = path.join(freshFolder(), 'mine.csv');
	writeFileSync(target, 'mine');
	const refused = run(from, ['export', '--as', 'csv', '--out', target]);
	expect([refused.status, refused.out, lines(refused.faults)]).toEqual([
		2,
		'',
		[expect.stringContaining(words.store['target-there']({file: target, option: '--out', mayForce: true}))],
	]);
	expect(readFileSync(target, 'utf8')).toBe('mine');
	expect(run(from, ['export', '--as', 'csv', '--out', target, '--force']).status).toBe(0);
	expect(readFileSync(target, 'utf8')).toMatch(/^check_id,/);
});

const shell = async (line: string, folder = freshFolder()): Promise<string> => {
	const program = startProgram({dataDir: from, command: ['sh', '-c', `cd "${folder}"; ${line}`], cols: 400});
	onTestFinished(() => program.stop());
	await program.exited;
	return program.normalScreen();
};
const exporting = `"${process.execPath}" "${PROGRAM}" export --as json`;

test('A reader that goes away ends it quietly, with 1', async () => {
	const writer = `while [ ! -e gone ]; do sleep 0.05; done; ${exporting}; echo "status $?" >&2`;
	const shown = await shell(`{ ${writer}; } | { exec 0<&-; touch gone; }; echo over`);
	expect(lines(shown)).toEqual(['status 1', 'over']);
});

test.runIf(existsSync('/dev/full'))('A full disk is one sentence, with 1', async () => {
	const shown = await shell(`${exporting} > /dev/full; echo "status $?"`);
	expect(lines(shown)).toEqual([words.commands.outputFailed({code: 'ENOSPC'}), 'status 1']);
});

test('Where the system cuts files short nothing is left of the export, and it is said', async () => {
	const folder = freshFolder();
	// In blocks of 512 bytes (POSIX ulimit -f): less than one check takes.
	const shown = await shell(`ulimit -f 8; ${exporting} --out all.json; echo "status $?"`, folder);
	expect(lines(shown)).toEqual([expect.stringMatching(withAnything(tooLarge)), 'status 1']);
	expect(readdirSync(folder)).toEqual([]);
});

test('Names are shown at a terminal with everything in them to be seen', async () => {
	const odd = path.join(freshFolder(), 'odd.json');
	writeFileSync(odd, readFileSync(file, 'utf8').replaceAll('north deck', 'deck\\u001b]0;x\\u0007\u202e'));
	const to = elsewhere();
	expect(run(from, ['--data', to, 'import', odd, '--yes']).status).toBe(0);
	const program = startProgram({args: ['--data', to, 'export', '--as', 'csv']});
	onTestFinished(() => program.stop());
	await program.exited;
	expect(program.raw()).not.toMatch(/\u001B\]|\u202E/);
	expect(program.normalScreen()).toContain('deck');
});

test.each([
	[['export'], '--as'],
	[['export', '--as', 'xml'], 'json, csv'],
	[['import'], 'file'],
	[['import', 'nothing.json'], words.store['no-file']({file: 'nothing.json'})],
])('%j is refused with 2 and one line', (args, meant) => {
	const {status, out, faults} = run(from, args);
	expect([status, out, lines(faults)]).toEqual([2, '', [expect.stringContaining(meant)]]);
});
