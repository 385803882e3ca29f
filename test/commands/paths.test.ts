import {existsSync} from 'node:fs';
import path from 'node:path';
import {expect, it} from 'vitest';
import * as z from 'zod/mini';
import {runPaths} from '../../source/commands/paths.js';
import {backupPlace} from '../../source/exchange/back-up.js';
import {readyPracticeFolder} from '../../source/store/practice-folder.js';
import {jsonKeys} from '../../source/words/en/commands/scripts.js';
import {filed, folderWith} from '../helpers/filed-checks.js';
import {printedBy} from '../helpers/printed.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';

const say = words.commands.paths;
const places = async (data: string) =>
	z.record(z.string(), z.string()).parse(JSON.parse((await printedBy(() => runPaths({as: 'json', data}))).out));

it('Data, checks and index lie where paths says', async () => {
	const data = await folderWith([filed({at: '2025-11-20T10:00:00+01:00'})]);
	const found = await places(data);
	expect(found.data).toBe(data);
	for (const name of ['checks', 'index']) expect(existsSync(found[name] ?? ''), name).toBe(true);
	expect(path.dirname(backupPlace(data, 'north deck', new Date()))).toBe(found.backups);
	expect(readyPracticeFolder(data, 'invented')).toBe(found.practice);
	expect(path.dirname(found.reports ?? '')).toBe(data);
});

it('The keys are those that the help tells of, and every place is a full path in the data folder', async () => {
	const data = freshFolder();
	const found = await places(data);
	expect(Object.keys(found)).toEqual(Object.keys(jsonKeys.paths));
	for (const one of Object.values(found)) expect(one === data || one.startsWith(data + path.sep)).toBe(true);
});

it('Plain, each place has its name, and nothing is made', async () => {
	const data = path.join(freshFolder(), 'not there', 'Werkbank ü');
	const {status, out} = await printedBy(() => runPaths({as: 'text', data}));
	expect([status, out.trimEnd().split('\n').length]).toEqual([0, Object.keys(say).length]);
	for (const [name, where] of Object.entries(await places(data)))
		expect(out).toMatch(new RegExp(`^${say[name as keyof typeof say]} +${where}$`, 'm'));
	expect(existsSync(data)).toBe(false);
});

it('A folder that cannot be named is refused', async () => {
	expect(await printedBy(() => runPaths({as: 'text', data: ' '}))).toMatchObject({status: 1, out: ''});
});
