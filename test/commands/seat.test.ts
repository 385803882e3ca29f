import {expect, it} from 'vitest';
import type {Dialogue} from '../../source/check/dialogue.js';
import {type Entry, respond} from '../../source/check/respond.js';
import {Seat, startedAs} from '../../source/commands/seat.js';
import {splitLine} from '../../source/commands/shell-words.js';
import {OpenWorkbench} from '../../source/desk/open-workbench.js';
import {PracticeWorkbench} from '../../source/desk/practice-workbench.js';
import {usualSettings} from '../../source/procedure/settings.js';
import {readyPracticeFolder} from '../../source/store/practice-folder.js';
import {StoreError} from '../../source/store/store-error.js';
import {freshFolder} from '../helpers/program-environment.js';
import {titleOf, words} from '../helpers/said.js';

const {parting: say} = words.commands;

async function seated() {
	const dataDir = freshFolder();
	const workbench = new OpenWorkbench({dataDir, version: '0.0.0'});
	const practise = async () => ({
		desk: new PracticeWorkbench({
			dataDir: readyPracticeFolder(dataDir, 'invented'),
			version: '0.0.0',
			settings: usualSettings,
			seed: () => 1,
		}),
		goOn: 'armdrift practice',
	});
	return {workbench, seat: new Seat({workbench, goOn: 'armdrift', practise})};
}

async function practising(seat: Seat) {
	const opened = await seat.door?.open();
	if (!opened?.ok) throw new Error('practice was not opened');
	return opened.desk;
}

it('what is said on leaving is about the workbench that was sat at', async () => {
	const {seat} = await seated();
	expect(seat.parting()).toEqual([say.nothingOpen]);
	const desk = await practising(seat);
	await desk.begin('stiff-wire', 'probe');
	expect(seat.parting().join(' ')).toContain(say.goOn({goOn: 'armdrift practice'}));
	expect(seat.isLeftOpen).toBe(true);
	seat.door?.close();
	expect(seat.parting()).toEqual([say.nothingOpen]);
	expect(seat.isLeftOpen).toBe(false);
	seat.release();
});

it('a real check that was left open is said too when practice is left, and decides how the program ends', async () => {
	const {seat, workbench} = await seated();
	const opened = await workbench.start('north deck');
	expect(opened.ok).toBe(true);
	await practising(seat);
	expect(seat.parting().join(' ')).toContain(say.saved({arm: 'north deck', step: titleOf('arm-length')}));
	expect(seat.isLeftOpen).toBe(true);
	seat.release();
});

it('the same practice is sat at again', async () => {
	const {seat} = await seated();
	const first = await practising(seat);
	seat.door?.close();
	expect(await practising(seat)).toBe(first);
	seat.release();
});

it('practice that cannot be kept is refused with a sentence, and the real workbench stays', async () => {
	const workbench = new OpenWorkbench({dataDir: freshFolder(), version: '0.0.0'});
	const fault = {id: 'practice-blocked', values: {file: '/x'}} as const;
	const practise = () => Promise.reject(new StoreError('blocked', fault));
	const seat = new Seat({workbench, goOn: 'armdrift', practise});
	expect(await seat.door?.open()).toEqual({ok: false, sentence: words.store['practice-blocked'](fault.values)});
	expect(seat.workbench).toBe(workbench);
});

it('a check that holds no reading goes without a trace when another one begins', async () => {
	const dataDir = readyPracticeFolder(freshFolder(), 'invented');
	const desk = new PracticeWorkbench({dataDir, version: '0.0.0', settings: usualSettings, seed: () => 1});
	await desk.begin('stiff-wire', 'probe');
	await desk.begin('sticky-bearing', 'probe');
	expect(desk.archive.past({offset: 0, limit: 9}).total).toBe(0);
	desk.release();
});

it('practice has the settings of real checks', async () => {
	const dataDir = readyPracticeFolder(freshFolder(), 'invented');
	const settings = {...usualSettings, pullGoodPct: 1.5, settleSeconds: 8};
	const desk = new PracticeWorkbench({dataDir, version: '0.0.0', settings, seed: () => 1});
	const opened = await desk.begin('stiff-wire', 'whole');
	expect(desk.settings()).toBe(settings);
	expect(opened.ok && opened.dialogue.check.limits.pullGoodPct).toBe(1.5);
	desk.release();
});

it('what hands put right between rounds closes the series, and says so', async () => {
	const dataDir = readyPracticeFolder(freshFolder(), 'invented');
	const desk = new PracticeWorkbench({dataDir, version: '0.0.0', settings: usualSettings, seed: () => 1});
	const opened = await desk.begin('bias-left-on', 'probe');
	if (!opened.ok) throw new Error(opened.sentence);
	const enter = async (dialogue: Dialogue, entry: Entry) => {
		desk.practice.shown(dialogue);
		const next = respond(dialogue, entry, desk.now());
		if (!next) throw new Error('left');
		const saved = await desk.save(next);
		if (!saved.ok) throw new Error(saved.sentence);
		return {saved, dialogue: {...next, check: saved.kept ?? next.check}};
	};
	const first = await enter(opened.dialogue, {kind: 'text', text: '+5'});
	const second = await enter(first.dialogue, {kind: 'text', text: '+6'});
	const visiting = {...second.dialogue, visiting: {step: 'bias-off' as const}};
	desk.practice.shown(visiting);
	expect(desk.practice.doByHand(visiting)).toBe(true);
	const {saved, dialogue} = await enter(visiting, {kind: 'yes'});
	expect(dialogue.check.series).toHaveLength(2);
	expect(saved.ok && saved.notice).toMatchObject({
		id: 'series-kept',
		values: {number: 1, because: {id: 'put-right-by-hand'}},
	});
	desk.release();
});

it.each([
	['/data/north', 'armdrift --data /data/north practice'],
	['/Werk bänk/Daten', "armdrift --data '/Werk bänk/Daten' practice"],
	["/d'en $HOME", "armdrift --data '/d'\\''en $HOME' practice"],
])('a data folder %s can be copied back into a shell as it is printed', (data, line) => {
	expect(startedAs({}, data, 'practice', 'linux')).toBe(line);
	expect(splitLine(line).words).toEqual(['armdrift', '--data', data, 'practice']);
});

it.each([
	['C:\\data', 'armdrift --data C:\\data practice'],
	['C:\\Werk bänk\\Daten', 'armdrift --data "C:\\Werk bänk\\Daten" practice'],
	// A backslash before the last quote would take its meaning from it.
	['C:\\Werk bänk\\', 'armdrift --data "C:\\Werk bänk\\\\" practice'],
	['an "old" folder', 'armdrift --data "an \\"old\\" folder" practice'],
	["it's & more", 'armdrift --data "it\'s & more" practice'],
])('a data folder %s can be copied back into cmd.exe on Windows', (data, line) => {
	expect(startedAs({}, data, 'practice', 'win32')).toBe(line);
});

it.each([
	[{npm_lifecycle_event: 'npx', npm_command: 'exec'}, 'npx armdrift practice'],
	[{npm_lifecycle_event: 'start', npm_command: 'start'}, 'npm start -- practice'],
	[{npm_lifecycle_event: 'mine', npm_command: 'run-script'}, 'armdrift practice'],
])('what is offered to be typed begins as the program was started: %j', (variables, line) => {
	expect(startedAs(variables, undefined, 'practice')).toBe(line);
});
