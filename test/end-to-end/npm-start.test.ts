import {fileURLToPath} from 'node:url';
import {expect, onTestFinished, test} from 'vitest';
import {leftOpen, lineAsked, makeSafe, start} from '../helpers/check-turns.js';
import {type RunningProgram, startProgram} from '../helpers/pty.js';
import {flat, words} from '../helpers/said.js';
import {option, walk} from '../helpers/walk.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Started as in a fresh clone, with the first line of the first list ticked. */
async function startedByNpm(): Promise<RunningProgram> {
	const program = startProgram({command: ['npm', '--prefix', ROOT, 'start']});
	onTestFinished(() => program.stop());
	await walk(program, [start, ...makeSafe.slice(0, 1)]);
	await program.waitFor(lineAsked('safe', 'platter'));
	return program;
}

test('npm start ends with the parting line as the last thing on the screen, after Ctrl+C too', async () => {
	const program = await startedByNpm();
	program.press('ctrl+c');
	await program.exited;
	expect(flat(program.normalScreen())).toMatch(leftOpen);
});

test('npm start ends with the parting line after leaving with a check open', async () => {
	const program = await startedByNpm();
	program.press('esc');
	await program.waitFor(option(7, words.beside.home.leave));
	program.type('7\r');
	await program.exited;
	expect(flat(program.normalScreen())).toMatch(leftOpen);
});
