import {expect, onTestFinished, test} from 'vitest';
import {asksOuterLimit, filed, fullCheck, resume, roundAnew, start} from '../helpers/check-turns.js';
import {playedFolder} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {bareCheck, filedCheck, filedIds} from '../helpers/saved-checks.js';
import {asks, turn, waitForTurn} from '../helpers/walk.js';

type Filed = ReturnType<typeof filedCheck>;
const withoutWithdrawn = ({check, ...record}: Filed): unknown => ({
	...record,
	check: {...check, series: check.series.map((one) => ({...one, withdrawn: []}))},
});

test('Killed after every confirmed answer and started again, it stands where it was left, or at the beginning of its round, and has lost nothing', async () => {
	const dataDir = freshFolder();
	const end = turn('', filed);
	let left: string | undefined;
	for (const [index, one] of fullCheck.entries()) {
		const program = startProgram({dataDir});
		onTestFinished(() => program.stop());
		// Before the first frame, as by someone in a hurry.
		program.type(left === undefined ? start.keys : resume.keys);
		const before = fullCheck[index - 1];
		if (before && asksOuterLimit(one)) {
			await waitForTurn(program, {...before, shows: [...before.shows, roundAnew]});
			program.type(before.keys);
		} else await program.waitFor((screen) => (left === undefined ? asks(one)(screen) : screen === left));
		await waitForTurn(program, one);
		program.type(one.keys);
		left = await program.waitFor(asks(fullCheck[index + 1] ?? end));
		await program.stop();
	}
	const undisturbed = playedFolder([start, ...fullCheck]);
	const [killed, whole] = [dataDir, undisturbed].map((folder) => filedCheck(folder, filedIds(folder)[0] ?? ''));
	expect(killed?.check.resumedAt).toHaveLength(fullCheck.length - 1);
	const [ofKilled, ofWhole] = [killed, whole].map((record) => record?.check.series.flatMap(({withdrawn}) => withdrawn));
	expect(ofKilled).toHaveLength(fullCheck.filter(asksOuterLimit).length);
	expect(ofWhole).toEqual([]);
	const [inPieces, inOne] = [killed, whole].map((record) => bareCheck(record && withoutWithdrawn(record)));
	expect(inPieces).toEqual(inOne);
});
