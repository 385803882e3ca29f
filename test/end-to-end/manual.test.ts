import {chmodSync, cpSync, existsSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, onTestFinished, test} from 'vitest';
import {topics} from '../../source/words/help-topics.js';
import {run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {PROGRAM, startProgram} from '../helpers/pty.js';

const root = path.resolve(import.meta.dirname, '../..');
const manual = readFileSync(path.join(root, 'README.md'), 'utf8');
const answers = readFileSync(path.join(root, 'fixtures/answers/invented-full-check.txt'), 'utf8');

const typedInHelp = topics.flatMap(({blocks}) =>
	blocks.flatMap((block) => (typeof block !== 'string' && 'lines' in block ? block.lines : [])),
);
/** What wants a minute, a manual reader, another shell, or a practice that came to its end. */
const isElsewhere = (command: string): boolean => /--prove|report --practice|\| (?:man|source)/.test(command);

/** Every command of the program that manual and help tell, as it stands there; in a clone `npm start --` is the program. */
const commands = new Set(
	[...(manual.match(/^(?:armdrift|npm start --) .+$|`armdrift [^`]+`/gm) ?? []), ...typedInHelp]
		.map((typed) =>
			typed
				.replaceAll('`', '')
				.replace(/\s+# .*$|;.*$/, '')
				.replace(/^npm start --/, 'armdrift'),
		)
		.filter((command) => command.startsWith('armdrift ') && !isElsewhere(command)),
);
const opensScreens = (command: string): boolean =>
	/^armdrift (?:practice(?! --arms)|recheck|--arm|--plain$)/.test(command);

const binaries = freshFolder();
const filed = freshFolder();
beforeAll(() => {
	const file = path.join(binaries, 'armdrift');
	writeFileSync(file, `#!/bin/sh\nexec '${process.execPath}' '${PROGRAM}' "$@"\n`);
	chmodSync(file, 0o755);
	expect(run(filed, ['--plain'], {input: answers}).status).toBe(0);
	const {document} = JSON.parse(run(filed, ['report', '--as', 'json']).out);
	writeFileSync(path.join(filed, 'check.json'), JSON.stringify(document));
	expect(run(filed, ['export', '--as', 'json', '--out', 'all.jsonl']).status).toBe(0);
});

describe('A command of manual and help', () => {
	test.each([...commands])('%s runs as it stands there', async (command) => {
		const dataDir = freshFolder();
		// Answers are those of a first check; everything else is about one that is filed.
		if (command.includes(' < ')) writeFileSync(path.join(dataDir, 'answers.txt'), answers);
		else cpSync(filed, dataDir, {recursive: true});
		if (command.includes(' all.jsonl') && command.includes(' --out ')) rmSync(path.join(dataDir, 'all.jsonl'));
		const {PATH} = process.env;
		const program = startProgram({
			command: ['sh', '-c', command],
			dataDir,
			env: {PATH: `${binaries}${path.delimiter}${PATH}`},
		});
		onTestFinished(() => program.stop());
		if (opensScreens(command)) {
			await program.waitFor(/\S/);
			program.press('ctrl+c');
		}
		// A command that is refused ends with 2.
		const {exitCode} = await program.exited;
		expect(opensScreens(command) ? [0, 130] : [0], program.normalScreen()).toContain(exitCode);
		const [, out] = / --out (\S+)/.exec(command) ?? [];
		if (out !== undefined) expect(existsSync(path.join(dataDir, out)), out).toBe(true);
	});
});
