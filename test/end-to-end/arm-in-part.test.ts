import {readFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, test} from 'vitest';
import {filed, folderWith} from '../helpers/filed-checks.js';
import {run} from '../helpers/plain-run.js';
import {words} from '../helpers/said.js';

const {armNamed, desk} = words.commands;

const arms = ['north deck', 'south deck', 'Öland'];
let data = '';
beforeAll(async () => {
	data = await folderWith(arms.map((arm, index) => filed({at: `2025-0${index + 1}-11T09:00:00Z`, arm})));
});

describe('An arm named by a part of its name', () => {
	test('is refused in one sentence where several fit, and nothing begins', () => {
		for (const args of [
			['--arm', 'deck'],
			['recheck', 'deck'],
			['report', '--arm', 'deck', '--as', 'html'],
		])
			expect(run(data, ['--plain', ...args])).toEqual({
				status: 2,
				out: '',
				faults: `${armNamed.several({typed: 'deck', arms: ['south deck', 'north deck']})}\n`,
			});
	});

	test('is taken for a report, and that is said on standard error', () => {
		const {status, out, faults} = run(data, ['report', '--arm', 'oland', '--as', 'json']);
		expect([status, faults]).toEqual([0, `${armNamed.taken({typed: 'oland', arm: 'Öland'})}\n`]);
		expect(JSON.parse(out)).toMatchObject({arm: 'Öland', checks: [{arm: 'Öland'}]});
	});

	test('is taken for a repeated check and for the check that is open; one that fits none is not', () => {
		const first = run(data, ['--plain', 'recheck', 'SOUTH'], {input: ''});
		expect([first.status, first.faults]).toEqual([3, `${armNamed.taken({typed: 'SOUTH', arm: 'south deck'})}\n`]);
		const open = () => readFileSync(path.join(data, 'draft-a.json'), 'utf8');
		expect(open()).toContain('"south deck"');
		const again = run(data, ['--plain', '--arm', 'sou'], {input: ''});
		expect([again.status, again.faults]).toEqual([3, `${armNamed.takenOrNew({typed: 'sou', arm: 'south deck'})}\n`]);
		expect(run(data, ['--plain', 'recheck', 'xyz'], {input: ''}).faults).toBe(
			`${desk.nothingToRepeatOf({arm: 'xyz'})}\n`,
		);
	});
});
