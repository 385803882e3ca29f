import fs from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import {bundleChild, leftByKills, startChild, startNode} from './child-process.js';
import {openBareStore} from './children/bare-store.js';
import {newFolder, removeFoldersAfterwards} from './support.js';

removeFoldersAfterwards();

const SLOW_MS = 60_000;
const ID = '20261125-090000-invented';
const NOBODY = 65_534;

describe('a file call that fails', () => {
	let story: string;
	beforeAll(() => {
		story = bundleChild('fault-story');
	});

	// The way of SQLite's I/O error tests (sqlite.org/testing.html, 3.2): the N-th call fails, for every N, once and for good.
	it.concurrent.each([
		['once, with a fault of the disk', 100, ['error', 'EIO']],
		['and all later ones, with a full disk', 100, ['error', 'ENOSPC', 'sticky']],
		['by taking only half of the text, and saying nothing', 10, ['short']],
		['by taking only half of every text, and saying nothing', 10, ['short', '', 'sticky']],
	])(
		'%s, loses nothing that was confirmed, gives a sentence, and can be tried again',
		async (_, fewest, parameters) => {
			const {output, errors} = await startNode(story, [newFolder(), ...parameters]).ended;
			expect(errors).toBe('');
			const {stories, broken} = JSON.parse(output);
			expect(broken).toEqual([]);
			expect(stories).toBeGreaterThan(fewest);
		},
		SLOW_MS,
	);
});

describe('a process killed at any file call of finishing', () => {
	it(
		'leaves the check open or finished, never lost and never twice',
		async () => {
			const left = await leftByKills(bundleChild('finisher'));
			expect(left.length).toBeGreaterThan(20);
			for (const folder of left) {
				const store = openBareStore(folder);
				const {check, notices} = store.draft();
				expect(notices).toEqual([]);
				if (check === undefined) expect(store.record(ID)).toMatchObject({answer: 1});
				else await store.finish(ID, check);
				expect(store.draft()).toEqual({notices: []});
				expect(store.list({offset: 0, limit: 9})).toMatchObject({total: 1, notices: []});
			}
		},
		SLOW_MS,
	);
});

describe('limits of the system', () => {
	it('a file size limit that cuts a save short is told, and the answer before stays', async () => {
		const saver = bundleChild('saver');
		const folder = newFolder();
		// In units of 512 bytes (POSIX ulimit): the draft of this child takes about 30,000.
		const limited = startChild('sh', [
			'-c',
			`trap '' XFSZ; ulimit -f 40; exec "${process.execPath}" "${saver}" "${folder}"`,
		]);
		const {output, errors, status} = await limited.ended;
		expect(output).toBe('');
		expect(status).not.toBe(0);
		expect(errors).toContain('StoreError');
		expect(errors).toMatch(/"thing":\{"id":"draft".*draft-a\.json/);
		expect(openBareStore(folder).draft()).toEqual({notices: []});
		expect(fs.readdirSync(folder).filter((name) => name.startsWith('draft-'))).toEqual([]);
	});

	it.runIf(process.getuid?.() === 0)(
		'another user’s folder gives one sentence at once, without hammering',
		async () => {
			const saver = bundleChild('saver');
			fs.chmodSync(path.dirname(saver), 0o755);
			const folder = newFolder();
			fs.chmodSync(folder, 0o755);
			await openBareStore(folder).saveSettings({answer: 1});
			const {errors, status} = await startNode(saver, [folder], {uid: NOBODY}).ended;
			expect(status).not.toBe(0);
			expect(errors).toContain('"system":"EACCES"');
			expect(errors).toContain(folder);
			expect(errors).not.toContain('"locked"');
		},
	);
});
