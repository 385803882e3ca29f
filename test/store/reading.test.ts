import fs from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {words} from '../helpers/said.js';
import {bundleChild, startNode} from './child-process.js';
import {openBareStore, sample} from './children/bare-store.js';
import {newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const ID = '20261125-090000-invented';
const READS = 400;
const NOBODY = 65_534;

describe('reading while another copy writes', () => {
	it('sees whole checks, old or new, never an older one than before, and has nothing to remark', async () => {
		const folder = newFolder();
		const child = startNode(bundleChild('saver'), [folder]);
		await child.line();
		let last = '';
		for (let count = 0; count < READS; count++) {
			const store = openBareStore(folder);
			const {check, notices} = store.draft();
			expect(notices).toEqual([]);
			const seen = check === undefined ? last : `${check.id} ${check.answer}`;
			expect(seen >= last).toBe(true);
			last = seen;
			expect(store.list({offset: 0, limit: 5}).notices).toEqual([]);
			await child.line();
		}
		child.process.kill('SIGKILL');
		expect((await child.ended).errors).toBe('');
	}, 30_000);
});

describe.runIf(process.getuid?.() === 0)('a file that this user may not read', () => {
	it('gives one sentence with its path and the way out, and stays where it is', async () => {
		const folder = newFolder();
		await openBareStore(folder).saveDraft(sample(ID, 1));
		fs.chmodSync(folder, 0o755);
		const reader = bundleChild('reader');
		fs.chmodSync(path.dirname(reader), 0o755);
		const {output, errors} = await startNode(reader, [folder], {uid: NOBODY}).ended;
		expect(errors).toBe('');
		const values = {
			thing: {id: 'draft', values: {}},
			file: path.join(folder, 'draft-a.json'),
			system: 'EACCES',
		} as const;
		expect(output).toBe(words.store['not-read'](values));
		expect(openBareStore(folder).draft().check).toMatchObject({answer: 1});
	});
});
