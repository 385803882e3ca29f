import {beforeAll, describe, expect, it} from 'vitest';
import {runImport} from '../../source/commands/import.js';
import {Shelf} from '../../source/desk/shelf.js';
import type {Profile} from '../../source/procedure/facts.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {dueArms} from '../../source/results/years/due.js';
import {EXIT} from '../../source/terminal/exit-paths.js';
import {dataFolder, exported, fileWith, fullFolder, inventedRecords, plainId} from '../helpers/data-folders.js';
import {armProfile, filed, folderWith} from '../helpers/filed-checks.js';
import {printedBy} from '../helpers/printed.js';
import {words} from '../helpers/said.js';

const say = words.commands.exchange;

let file = '';
beforeAll(async () => {
	file = fileWith(exported(await fullFolder()));
});
const importInto = (data: string, from = file) => printedBy(() => runImport({file: from, yes: true, data}));

describe('How an import ends', () => {
	it('with 0 where all of it was added, is here already, or where only the settings of here stay', async () => {
		const {dataDir, store} = dataFolder();
		await store.saveSettings({...usualSettings, settleSeconds: 9});
		for (const _ of ['added', 'here already']) expect(await importInto(dataDir)).toMatchObject({status: 0, faults: ''});
	});

	it('with a status of its own where something is otherwise here, after all else was added', async () => {
		const {dataDir, store} = dataFolder();
		const [record] = inventedRecords.filter(({check}) => check.id === plainId);
		if (!record) throw new Error('there is no check');
		await store.finish(plainId, {...record, finishedAt: '2020-01-01T00:00:00Z'});
		const {status, out} = await importInto(dataDir);
		expect([status, EXIT.leftOut]).toEqual([5, 5]);
		expect(out).toContain(say.checkClash({id: plainId}));
		expect(store.ids()).toHaveLength(inventedRecords.length);
		// The clash is still there when nothing else is new.
		expect((await importInto(dataDir)).status).toBe(5);
	});
});

describe('An arm that was renamed there', () => {
	const early = filed({at: '2025-11-20T10:00:00+01:00', next: {date: '2026-05-20', because: 'In six months.'}});
	const late = filed({at: '2026-05-20T10:00:00+02:00', arm: 'bench deck'});
	const before = armProfile('north deck');
	const after: Profile = {
		...armProfile('bench deck'),
		id: before.id,
		formerNames: ['north deck'],
		correctedAt: '2026-04-01T10:00:00Z',
	};
	const fileOf = async (profile: Profile) =>
		fileWith(exported(dataFolder(await folderWith([early, late], {profiles: [profile]}))));
	const armsIn = (data: string) => {
		const shelf = new Shelf(data, () => new Date());
		return {names: shelf.profiles().map(({name, formerNames}) => [name, formerNames]), rows: shelf.all(), shelf};
	};

	it('is one arm here with both names, and its history is one', async () => {
		const here = await folderWith([early], {profiles: [before]});
		const {status, out} = await importInto(here, await fileOf(after));
		expect(status).toBe(0);
		const told = {kind: 'arm', name: 'bench deck', here: 'north deck', there: 'bench deck', isTwofold: false} as const;
		expect(out).toContain(`${say.profileNamed(told)}\n`);
		const {names, rows, shelf} = armsIn(here);
		expect(names).toEqual([['bench deck', ['north deck']]]);
		expect(rows).toHaveLength(2);
		// The newest check has no date, so the date of the one before does not count: it is the same arm.
		expect(dueArms(rows, shelf.profiles(), '2026-06-01')).toEqual([]);
	});

	it('and otherwise here, is told, keeps its name of here, and is found under all of them', async () => {
		const ours: Profile = {...before, ...armProfile('wall deck'), id: before.id, formerNames: ['north deck']};
		const here = await folderWith([early], {profiles: [ours]});
		const {status, out} = await importInto(here, await fileOf(after));
		expect(status).toBe(EXIT.leftOut);
		const told = {kind: 'arm', name: 'wall deck', here: 'wall deck', there: 'bench deck', isTwofold: true} as const;
		expect(out).toContain(`${say.profileNamed(told)}\n`);
		expect(armsIn(here).names).toEqual([['wall deck', ['north deck', 'bench deck']]]);
	});
});
