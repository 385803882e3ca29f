import {readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, it} from 'vitest';
import {newCheck} from '../../source/check/reduce.js';
import type {Remark} from '../../source/desk/stored-forms.js';
import {hasClashes} from '../../source/exchange/import-plan.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {storeText} from '../../source/words/store-text.js';
import {
	type DataFolder,
	dataFolder,
	documentOf,
	exported,
	exportForms,
	fileWith,
	fullFolder,
	fullId,
	importing,
	inventedProfile,
	inventedRecords,
	leftId,
	plainId,
} from '../helpers/data-folders.js';
import {words} from '../helpers/said.js';

const say = words.commands.exchange;

let from: DataFolder;
let file: string;
beforeAll(async () => {
	from = await fullFolder();
});

describe.each(exportForms)('An export with $form', ({written}) => {
	beforeAll(() => {
		file = fileWith(written(documentOf(exported(from))));
	});

	const recordOf = (id: string) => {
		const record = inventedRecords.find(({check}) => check.id === id);
		if (!record) throw new Error(`there is no check ${id}`);
		return record;
	};

	describe('A check that is here with other content', () => {
		it('is never overwritten, and named by its id; all the rest is added', async () => {
			const to = dataFolder();
			const ours = {...recordOf(fullId), finishedAt: '2020-01-01T00:00:00Z'};
			await to.store.finish(fullId, ours);
			const {plan, lines} = await importing(file, to);
			expect(plan).toMatchObject({clashes: [fullId], same: 0});
			expect(lines).toContain(say.checkClash({id: fullId}));
			expect(to.store.record(fullId)).toEqual(ours);
			expect(to.store.ids()).toEqual(from.store.ids());
			expect((await importing(file, to)).plan).toMatchObject({newChecks: [], clashes: [fullId], same: 6});
		});

		it('brings none of its later notes along', async () => {
			const to = dataFolder();
			await to.store.finish(plainId, {...recordOf(plainId), finishedAt: '2020-01-01T00:00:00Z'});
			await importing(file, to);
			expect(to.store.remark(plainId)).toBeUndefined();
		});

		it('is left out while it is in progress here, so that its answers of today are not lost', async () => {
			const to = dataFolder();
			const at = '2026-11-14T09:40:00+01:00';
			const open = newCheck({id: fullId, at, program: '0.0.0', limits: limitsOf(usualSettings), setAnew: true});
			await to.store.saveDraft(open);
			const {lines} = await importing(file, to);
			expect(lines).toContain(say.openHere({id: fullId}));
			expect(to.store.draft().check).toEqual(open);
			expect(to.store.ids()).toHaveLength(6);
		});

		it('is made good where its file here is damaged, which is set aside', async () => {
			const to = dataFolder();
			await importing(file, to);
			writeFileSync(path.join(to.dataDir, 'checks', `${fullId}.json`), '{"half');
			rmSync(path.join(to.dataDir, 'checks', `${plainId}.json`));
			const {plan} = await importing(file, to);
			expect(plan).toMatchObject({same: 5, clashes: []});
			expect(plan.newChecks).toHaveLength(2);
			expect(to.store.record(fullId)).toEqual(recordOf(fullId));
		});
	});

	describe('Later notes on a check that is here', () => {
		it('are added where there are none, and left out, by id, where others are here', async () => {
			const to = dataFolder();
			for (const id of [plainId, leftId]) await to.store.finish(id, recordOf(id));
			const ours: Remark = {void: {reason: 'only tried out', at: '2026-06-02T08:00:00+02:00'}};
			await to.store.saveRemark(plainId, ours);
			const {plan, lines} = await importing(file, to);
			expect(lines[1]).toBe(say.newParts({checks: 5, remarks: 1, profiles: 3, settings: true}));
			expect(lines).toContain(say.remarkClash({id: plainId}));
			expect(plan.remarkClashes).toEqual([plainId]);
			expect(to.store.remark(plainId)).toEqual(ours);
			expect(to.store.remark(leftId)).toEqual(from.store.remark(leftId));
			expect((await importing(file, to)).plan).toMatchObject({newRemarks: [], remarkClashes: [plainId]});
		});

		it.each([
			['here', () => {}],
			['gone', (dataDir: string) => rmSync(path.join(dataDir, 'checks', `${leftId}.json`))],
		])('take the place of a damaged one only where they mark the check void, the check being %s', async (_, harm) => {
			const to = dataFolder();
			await importing(file, to);
			const fileOf = (id: string) => path.join(to.dataDir, 'remarks', `${id}.json`);
			for (const id of [plainId, leftId]) writeFileSync(fileOf(id), `damaged ${id}`);
			harm(to.dataDir);
			const {plan, lines} = await importing(file, to);
			const fault = {id: 'remark-damaged', values: expect.objectContaining({file: fileOf(leftId)})};
			expect(plan.remarksUnread).toEqual([{id: leftId, fault}]);
			expect(hasClashes(plan)).toBe(true);
			const [said = ''] = plan.remarksUnread.map((one) => storeText(one.fault));
			expect(lines).toContain(say.remarkUnread({id: leftId, sentence: said}));
			expect(readFileSync(fileOf(leftId), 'utf8')).toBe(`damaged ${leftId}`);
			expect(to.store.ids()).toContain(leftId);
			expect(to.store.remark(plainId)).toEqual(from.store.remark(plainId));
			const [aside = ''] = readdirSync(path.join(to.dataDir, 'remarks')).filter((name) => name.includes('.damaged-'));
			expect(readFileSync(path.join(to.dataDir, 'remarks', aside), 'utf8')).toBe(`damaged ${plainId}`);
		});
	});

	describe('Profiles and settings', () => {
		it('that are left out are told in a sentence each', async () => {
			const to = dataFolder();
			const arm = inventedProfile('north deck');
			await to.store.saveProfiles({profiles: [arm]});
			await to.store.saveSettings({...usualSettings, settleSeconds: 9});
			const {lines} = await importing(file, to);
			expect(lines.slice(1)).toEqual([
				say.newParts({checks: 7, remarks: 0, profiles: 2, named: 1, settings: false}),
				say.profileNamed({kind: 'arm', name: arm.name, here: arm.name, there: arm.name, isTwofold: false}),
				say.profileClash({theirs: arm, ours: arm}),
				say.ownSettings,
			]);
			const kept = to.store.profiles().value?.profiles[0];
			// The names of both sides come together; the answers stay ours.
			expect(kept).toMatchObject({...arm, usedAt: expect.any(String), formerNames: ['an older name']});
			expect(kept?.answers).toEqual(arm.answers);
			expect(to.store.settings().value?.settleSeconds).toBe(9);
		});

		it('that were renamed here are named by both names', async () => {
			const to = dataFolder();
			const ours = inventedProfile('south deck', {formerNames: ['north deck']});
			await to.store.saveProfiles({profiles: [ours]});
			const theirs = inventedProfile('north deck');
			expect((await importing(file, to)).lines).toContain(say.profileClash({theirs, ours}));
		});
	});

	it('What this version has no place for is left out aloud', async () => {
		const {checks, ...others} = documentOf(exported(from));
		const [first, ...rest] = checks;
		const text = written({...others, photographs: {}, checks: [Object.assign({weather: 1}, first), ...rest]});
		expect((await importing(fileWith(text), dataFolder())).lines.slice(-2)).toEqual([
			say.unknownKey({key: 'photographs'}),
			say.unknownKey({key: 'weather'}),
		]);
	});
});
