import {cpSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {positionOf} from '../../source/check/dialogue.js';
import {reduce} from '../../source/check/reduce.js';
import {respond} from '../../source/check/respond.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {afterSaving} from '../../source/pages/check-turn.js';
import {eventAdded} from '../../source/results/event-changes.js';
import type {Workbench} from '../../source/workbench.js';
import {freshFolder} from '../helpers/program-environment.js';

// On the disk: a data folder of an earlier form, and two copies of the program on it.
const saved = path.resolve(import.meta.dirname, '../../fixtures/saved/version-3');
const arm = 'larch nine, oak plinth';
const now = '2026-11-29T10:00:00Z';

const folder = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	cpSync(saved, dataDir, {recursive: true, filter: (file) => !path.basename(file).startsWith('draft')});
	return dataDir;
};
const deskOn = (dataDir: string) => new OpenWorkbench({dataDir, version: '0.0.0', clock: () => new Date(now)});
const idOf = (desk: Workbench) => desk.profiles().find(({name}) => name === arm)?.id ?? '';
const note = (desk: Workbench, day: string) =>
	desk.archive.changeProfiles((all) => eventAdded(all, {id: idOf(desk), kind: 'moved', day, at: now}));

describe('What is noted as done to an arm', () => {
	it('is read back by the next start, and told among what its checks told', async () => {
		const dataDir = folder();
		expect(await note(deskOn(dataDir), '2026-02-01')).toEqual({ok: true});
		expect(deskOn(dataDir).archive.events(arm)).toMatchObject([
			{kind: 'bearing', on: '2025-10-25'},
			{kind: 'moved', on: '2026-02-01', noted: {at: now}},
			{kind: 'other', on: '2026-04-23', note: 'a new belt'},
		]);
	});

	it('is not lost to another copy that keeps what it answers', async () => {
		const dataDir = folder();
		const first = deskOn(dataDir);
		const opened = await first.recheck(arm);
		if (!opened.ok) throw new Error(opened.sentence);
		const {dialogue} = opened;
		first.release();
		expect(await note(deskOn(dataDir), '2026-11-01')).toEqual({ok: true});
		const check = reduce(dialogue.check, {
			type: 'answer',
			step: 'arm-serial',
			value: '77',
			typed: '77',
			at: '2026-11-29T10:01:00Z',
		});
		expect((await first.save({...dialogue, check})).ok).toBe(true);
		first.release();
		const profile = deskOn(dataDir)
			.profiles()
			.find(({name}) => name === arm);
		expect(profile?.answers['arm-serial']?.value).toBe('77');
		expect(profile?.events?.map(({on}) => on)).toEqual(['2026-11-01']);
	});
});

describe('A new check of an arm that is on file', () => {
	it('asks what was done since, at its start where the arm is named, else once it is picked', async () => {
		const named = await deskOn(folder()).start(arm);
		expect(named.ok && positionOf(named.dialogue).step?.id).toBe('done-since');
		const desk = deskOn(folder());
		const blank = await desk.start();
		if (!blank.ok) throw new Error(blank.sentence);
		expect(positionOf(blank.dialogue).step?.id).toBe('arm-profile');
		const picked = respond(blank.dialogue, {kind: 'choose', id: idOf(desk)}, now);
		if (!picked) throw new Error('left');
		const kept = await desk.save(picked);
		if (!kept.ok) throw new Error(kept.sentence);
		expect(positionOf(afterSaving(picked, kept, desk)).step?.id).toBe('done-since');
	});
});
