import {mkdirSync, readdirSync, rmSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import {expect, it} from 'vitest';
import {reduce} from '../../source/check/reduce.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';
import {filedIds} from '../helpers/saved-checks.js';

const open = (dataDir: string) => new OpenWorkbench({dataDir, version: '0.0.0'});

async function begun(workbench: OpenWorkbench, arm: string) {
	const opened = await workbench.start(arm);
	if (!opened.ok) throw new Error(opened.sentence);
	return opened.dialogue;
}

it('A check that was filed from elsewhere meanwhile goes on under an id of its own: both are kept, and that is said', async () => {
	const dataDir = freshFolder();
	const own = open(dataDir);
	const dialogue = await begun(own, 'north deck');
	const {id} = dialogue.check;
	rmSync(path.join(dataDir, 'lock'));
	const other = open(dataDir);
	await begun(other, 'south deck');
	other.release();
	expect(filedIds(dataDir)).toEqual([id]);

	const at = own.now();
	const answers = {'arm-serial': {typed: '17', value: '17', at}};
	const next = {...dialogue, check: reduce(dialogue.check, {type: 'fill', answers, at})};
	const saved = await own.save(next);
	if (!saved.ok || !saved.kept) throw new Error('It was not saved.');
	const {kept, notice} = saved;
	expect(kept.id).not.toBe(id);
	expect(kept.answers['arm-serial']?.value).toBe('17');
	const told = notice?.id === 'as-told' ? notice.values.sentence : '';
	expect(told).toContain(words.commands.desk.filedElsewhere({filed: id, own: kept.id}));
	// What the other copy had begun is kept beside it.
	const [aside = ''] = readdirSync(dataDir).filter((name) => name.includes('.other-'));
	expect(told).toContain(aside);

	// It is the one that is open, and is filed beside the other.
	const again = open(dataDir);
	expect(again.archive.record(id)).toMatchObject({ok: true, record: {outcome: 'interrupted'}});
	own.release();
	await begun(again, 'east deck');
	expect(filedIds(dataDir)).toEqual([id, kept.id].sort());
	const filed = again.archive.record(kept.id);
	expect(filed).toMatchObject({ok: true, record: {check: {answers: {'arm-serial': {value: '17'}}}}});
	again.release();
});

it('A file that cannot be read under the id of an open check is put aside, and that is said', async () => {
	const dataDir = freshFolder();
	const own = open(dataDir);
	const dialogue = await begun(own, 'north deck');
	const checks = path.join(dataDir, 'checks');
	mkdirSync(checks);
	writeFileSync(path.join(checks, `${dialogue.check.id}.json`), 'not a check');
	const saved = await own.save(dialogue);
	const [aside = 'none'] = readdirSync(checks);
	const told = saved.ok && saved.notice?.id === 'as-told' ? saved.notice.values.sentence : '';
	expect(aside).toContain('.damaged-');
	expect(told).toContain(aside);
	expect(own.openCheck?.id).toBe(dialogue.check.id);
	own.release();
});
