import {expect, onTestFinished, test} from 'vitest';
import {filed, fullCheck, resume, start} from '../helpers/check-turns.js';
import {playPlain} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {bareCheck, filedCheck, filedIds} from '../helpers/saved-checks.js';
import {asks, turn} from '../helpers/walk.js';

test('Killed after every confirmed answer and started again, it stands where it was left and has lost nothing', async () => {
	const dataDir = freshFolder();
	const end = turn('', filed);
	let left: string | undefined;
	for (const [index, one] of fullCheck.entries()) {
		const program = startProgram({dataDir});
		onTestFinished(() => program.stop());
		// Before the first frame, as by someone in a hurry.
		program.type(left === undefined ? start.keys : resume.keys);
		await program.waitFor((screen) => (left === undefined ? asks(one)(screen) : screen === left));
		program.type(one.keys);
		left = await program.waitFor(asks(fullCheck[index + 1] ?? end));
		await program.stop();
	}
	const undisturbed = freshFolder();
	playPlain(undisturbed, [start, ...fullCheck]);
	const [killed, whole] = [dataDir, undisturbed].map((folder) => filedCheck(folder, filedIds(folder)[0] ?? ''));
	expect(killed?.check.resumedAt).toHaveLength(fullCheck.length - 1);
	expect(bareCheck(killed)).toEqual(bareCheck(whole));
});
