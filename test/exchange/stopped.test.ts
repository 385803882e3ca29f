import {beforeAll, describe, expect, it} from 'vitest';
import {
	dataFolder,
	documentOf,
	type ExportDocument,
	exported,
	exportForms,
	fileWith,
	fullFolder,
	importing,
	inventedRecords,
	plainId,
} from '../helpers/data-folders.js';
import {freshFolder} from '../helpers/program-environment.js';
import {bundleChild, leftByKills, startNode} from '../store/child-process.js';
import {removeFoldersAfterwards} from '../store/support.js';

removeFoldersAfterwards();

const SLOW_MS = 120_000;

let importer: string;
let file: string;
let wanted: ExportDocument;
/** Two checks, one of them with a later note, profiles and settings. */
beforeAll(async () => {
	importer = bundleChild('importer');
	const {store} = await fullFolder();
	const one = dataFolder();
	for (const record of inventedRecords.slice(0, 2)) await one.store.finish(record.check.id, record);
	const [remark, profiles, settings] = [store.remark(plainId), store.profiles().value, store.settings().value];
	if (remark && !(remark instanceof Error)) await one.store.saveRemark(plainId, remark);
	if (profiles) await one.store.saveProfiles(profiles);
	if (settings) await one.store.saveSettings(settings);
	const text = exported(one);
	wanted = documentOf(text);
});

describe.each(exportForms)('An import of $form that is stopped in the middle', ({written}) => {
	beforeAll(() => {
		file = fileWith(written(wanted));
	});

	// The way of SQLite's I/O error tests (sqlite.org/testing.html, 3.2): the N-th call fails, for N after N, once and for good.
	it.concurrent.each([
		['by a fault of the disk, once', 30, ['error', 'EIO']],
		['by a full disk', 30, ['error', 'ENOSPC', 'sticky']],
		['by a disk that takes only half of a text, and says nothing', 3, ['short']],
	])(
		'%s, says so in a sentence, and the next one goes on',
		async (_, fewest, parameters) => {
			const {output, errors} = await startNode(importer, [file, freshFolder(), ...parameters]).ended;
			expect(errors).toBe('');
			const {stories, broken} = JSON.parse(output);
			expect(broken).toEqual([]);
			expect(stories).toBeGreaterThan(fewest);
		},
		SLOW_MS,
	);

	it.concurrent(
		'by being killed at a file call, whichever it is, has added whole checks or none, and the next one adds the rest',
		async () => {
			const left = await leftByKills(bundleChild('stopped-importer'), file);
			// All of them would take long; a call of a kind that matters comes many times, so none is missed.
			const everyThird = left.filter((_, index) => index % 3 === 0);
			for (const dataDir of everyThird) {
				const to = dataFolder(dataDir);
				const {rows, notices} = to.store.list({offset: 0, limit: 9});
				expect(notices).toEqual([]);
				const {plan} = await importing(file, to);
				expect(plan).toMatchObject({same: rows.length, clashes: [], remarkClashes: []});
				expect(documentOf(exported(to))).toEqual(wanted);
				expect(to.notices).toEqual([]);
			}
			expect(everyThird.length).toBeGreaterThan(50);
		},
		SLOW_MS,
	);
});
