import {existsSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {fileURLToPath} from 'node:url';
import {expect, it} from 'vitest';
import {fullCheck, resume, start} from '../helpers/check-turns.js';
import {playedFolder, run} from '../helpers/plain-run.js';
import {anything, around, words} from '../helpers/said.js';
import {filedIds} from '../helpers/saved-checks.js';
import {asLines} from '../helpers/walk.js';

const preload = fileURLToPath(new URL('../faults/preload.cjs', import.meta.url));
const last = fullCheck.slice(-1);
/** A check at its last question, which is then answered. */
const atLast = (): string => playedFolder([start, ...fullCheck.slice(0, -1)]);
const answered = (dataDir: string, fault: Readonly<Record<string, string>>) =>
	run(dataDir, ['--plain'], {input: asLines([resume, ...last]), env: {NODE_OPTIONS: `--require=${preload}`, ...fault}});

const isCleared = (dataDir: string): boolean =>
	['a', 'b'].some((letter) => {
		const file = path.join(dataDir, `draft-${letter}.json`);
		return existsSync(file) && JSON.parse(readFileSync(file, 'utf8')).content === null;
	});

it('Whenever the disk fills up once a check is filed, plain lines say that it is filed, and what could not be cleared', () => {
	const counted = path.join(atLast(), 'calls');
	expect(answered(atLast(), {FAULT_COUNT: counted}).status).toBe(0);
	const calls = Number(readFileSync(counted, 'utf8'));
	let uncleared = 0;
	for (let at = calls; at > 0; at--) {
		const dataDir = atLast();
		const {status, out, faults} = answered(dataDir, {FAULT_AT: String(at), FAULT_KIND: 'ENOSPC'});
		// From here on it was not filed for sure, which is told otherwise.
		if (status !== 0) break;
		const [id = 'none'] = filedIds(dataDir);
		expect(out).toContain(around(words.commands.parting.filed({id, verdict: anything}))[0]);
		if (isCleared(dataDir)) continue;
		uncleared++;
		const system = 'ENOSPC';
		for (const part of around(words.store['not-cleared']({file: anything, id, system}))) expect(faults).toContain(part);
		// The next start does not offer it as open, and says nothing of it.
		const next = run(dataDir, ['--plain']);
		expect(next.faults).toBe('');
		expect(filedIds(dataDir)).toEqual([id]);
	}
	expect(uncleared).toBeGreaterThan(0);
});
