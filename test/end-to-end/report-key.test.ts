import fs from 'node:fs';
import path from 'node:path';
import {expect, onTestFinished, test, vi} from 'vitest';
import {fullFolder} from '../helpers/data-folders.js';
import {run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {bare, words} from '../helpers/said.js';
import {option, turn, walk} from '../helpers/walk.js';

const {past, report} = words.beside;

/** A desktop whose only program notes what it was asked to open. */
function desktop() {
	const folder = freshFolder();
	const asked = path.join(folder, 'asked');
	fs.writeFileSync(path.join(folder, 'xdg-open'), `#!/bin/sh\nprintf %s "$1" >'${asked}'\n`, {mode: 0o755});
	return {asked, env: {PATH: `${folder}${path.delimiter}${process.env.PATH}`, DISPLAY: ':9'}};
}

const reportsIn = (dataDir: string): string[] =>
	(fs.existsSync(path.join(dataDir, 'reports')) ? fs.readdirSync(path.join(dataDir, 'reports')) : []).filter((name) =>
		name.endsWith('.html'),
	);

test('A report is one key away from a past check, says where it lies, and is as the command writes it', async () => {
	const {dataDir} = await fullFolder();
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [
		turn('4', option(4, words.beside.home.past)),
		turn('1', past.span({first: 1, last: 7, total: 7, hasKeys: true})),
		turn('4', option(4, report.write)),
	]);
	await vi.waitFor(() => expect(reportsIn(dataDir)).toHaveLength(1), {timeout: 60_000});
	const [name = ''] = reportsIn(dataDir);
	const file = path.join(dataDir, 'reports', name);
	const shown = await program.waitFor((screen) => bare(screen).includes(bare(report.written({file}))));
	expect(bare(shown)).toContain(bare(file));
	program.press('ctrl+c');
	await program.exited;
	const {out, status} = run(dataDir, ['report', name.replace('.html', ''), '--as', 'html']);
	expect(status).toBe(0);
	expect(fs.readFileSync(file, 'utf8')).toBe(out);
});

test('In plain lines it is a choice, a desktop opens what was written, and it goes with its arm', async () => {
	const {dataDir} = await fullFolder();
	const {asked, env} = desktop();
	const input = [words.beside.home.past, '2', report.write, '/leave'].join('\n');
	const {out, status, faults} = run(dataDir, ['--plain'], {input, env});
	expect([status, faults]).toEqual([0, '']);
	const [name = '', ...others] = reportsIn(dataDir);
	const file = path.join(dataDir, 'reports', name);
	expect(others).toEqual([]);
	expect(bare(out)).toContain(bare(report.written({file})));
	expect(fs.statSync(path.dirname(file)).mode & 0o077).toBe(0);
	await vi.waitFor(() => expect(fs.readFileSync(asked, 'utf8')).toBe(file), {timeout: 60_000});
	// Once more, it is replaced.
	fs.writeFileSync(file, 'an earlier one');
	run(dataDir, ['--plain'], {input, env: {DISPLAY: ':9', PATH: freshFolder()}});
	expect(fs.readFileSync(file, 'utf8')).toContain('</html>');
	expect(run(dataDir, ['delete', '--arm', 'north deck', '--name', 'north deck']).status).toBe(0);
	expect(reportsIn(dataDir)).toEqual([]);
});

test('A report that cannot be written is told, and nothing is opened', async () => {
	const {dataDir} = await fullFolder();
	const {asked, env} = desktop();
	fs.writeFileSync(path.join(dataDir, 'reports'), 'no folder');
	const input = [words.beside.home.past, '1', report.write].join('\n');
	const {status, out} = run(dataDir, ['--plain'], {input, env});
	expect(status).not.toBe(0);
	expect(out).not.toContain(report.written({file: ''}));
	expect(fs.existsSync(asked)).toBe(false);
});
