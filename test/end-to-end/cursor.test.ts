import {onTestFinished, test} from 'vitest';
import {KEYS} from '../../source/terminal/keys.js';
import {describeArm, resume, start} from '../helpers/check-turns.js';
import {playPlain} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {words} from '../helpers/said.js';
import {typed, waitForTurn, walk} from '../helpers/walk.js';

test('A length typed after arrows in the empty field is filed as it was typed', async () => {
	const dataDir = freshFolder();
	playPlain(dataDir, [start, ...describeArm.slice(0, 1)]);
	const program = startProgram({dataDir});
	onTestFinished(() => program.stop());
	await walk(program, [resume, typed('arm-length', `${KEYS.left}${KEYS.right}233`)]);
	await waitForTurn(program, typed('arm-pivot-distance', ''));
	program.press('esc');
	await program.waitFor(words.faces.field.keeps({text: '233 mm', mayBeEmpty: false}));
});
