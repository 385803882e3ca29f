import fs from 'node:fs';
import path from 'node:path';
import {beforeAll, describe, expect, onTestFinished, test} from 'vitest';
import {storeOf} from '../../source/desk/stored-forms.js';
import {commandLine} from '../../source/words/command-line.js';
import {dataFolder, fullFolder} from '../helpers/data-folders.js';
import {folderWith} from '../helpers/filed-checks.js';
import {anotherCopy, run} from '../helpers/plain-run.js';
import {freshFolder} from '../helpers/program-environment.js';
import {startProgram} from '../helpers/pty.js';
import {anything, around, flat, withAnything, words} from '../helpers/said.js';

const {delete: deleting, desk} = words.commands;
const northDeck = {name: 'north deck', checks: 7, hasProfile: true};
const wayBack = new RegExp(
	`${withAnything(deleting.wayBack({file: anything, command: `armdrift import ${anything}`}), '(.*)').source}$`,
	'm',
);
const backUp = {id: 'back-up', values: {}} as const;
const notSaved = words.store['not-saved']({thing: backUp, file: anything, system: 'ENOENT', option: '--backup'});
const inTheWay = desk.remarkInTheWay({sentence: anything});
const voided = words.beside.past.state({outcome: 'complete', verdict: null, voidBecause: 'only tried out'});

let source: string;
beforeAll(async () => {
	source = (await fullFolder()).dataDir;
});

/** Seven checks of the north deck, with notes on two, and its profile beside those of cartridge and tools. */
const folder = (): string => {
	const dataDir = path.join(freshFolder(), 'data');
	fs.cpSync(source, dataDir, {recursive: true});
	return dataDir;
};

/** What lies under a folder, with its bytes; locks and leftovers of saving apart. */
const bytesIn = (dataDir: string, name: string): Record<string, string> =>
	Object.fromEntries(
		(fs.existsSync(path.join(dataDir, name)) ? fs.readdirSync(path.join(dataDir, name)).sort() : []).map((one) => [
			one,
			fs.readFileSync(path.join(dataDir, name, one), 'utf8'),
		]),
	);
const filesIn = (dataDir: string, name: string): string[] => Object.keys(bytesIn(dataDir, name));
const namesOf = (dataDir: string): string[] =>
	dataFolder(dataDir)
		.store.profiles()
		.value?.profiles.map(({name}) => name) ?? [];
const listOf = (dataDir: string): string => run(dataDir, ['list']).out;

const twice = ['delete', '--arm', 'north deck', '--name', 'north deck'];

describe('armdrift delete', () => {
	test('writes a back-up and deletes the arm, and the import that it names brings everything back', () => {
		const dataDir = folder();
		const [checks, remarks, list] = [bytesIn(dataDir, 'checks'), bytesIn(dataDir, 'remarks'), listOf(dataDir)];
		const profiles = namesOf(dataDir);
		const {status, out, faults} = run(dataDir, [...twice]);
		expect(faults).toBe('');
		expect(status).toBe(0);
		expect(out.split('\n')).toContain(deleting.going({...northDeck, days: ['2024-05-11', '2026-11-14'], remarks: 2}));
		expect(out).toContain(deleting.formerNames({names: ['an older name']}));
		expect(out.split('\n')).toContain(deleting.gone(northDeck));
		expect(filesIn(dataDir, 'checks')).toEqual([]);
		expect(filesIn(dataDir, 'remarks')).toEqual([]);
		expect(namesOf(dataDir)).toEqual(profiles.filter((name) => name !== 'north deck'));
		expect(listOf(dataDir)).toBe('');
		const [, backup = '', command] = wayBack.exec(out) ?? [];
		expect(command).toMatch(/^\S+$/);
		expect(path.dirname(backup)).toBe(path.join(dataDir, 'backups'));
		expect(path.basename(backup)).toMatch(/^\d{4}-\d\d-\d\d-north-deck\.jsonl$/);
		expect(run(dataDir, ['import', backup, '--yes']).status).toBe(0);
		const contentOf = (files: Record<string, string>, key: string) =>
			Object.entries(files).map(([name, text]) => [name, JSON.parse(text)[key]]);
		expect(contentOf(bytesIn(dataDir, 'checks'), 'record')).toEqual(contentOf(checks, 'record'));
		expect(contentOf(bytesIn(dataDir, 'remarks'), 'remark')).toEqual(contentOf(remarks, 'remark'));
		expect(namesOf(dataDir).sort()).toEqual(profiles.toSorted());
		expect(listOf(dataDir)).toBe(list);
	});

	test('a second arm of another name is not touched, nor are the settings', async () => {
		const dataDir = folder();
		const store = storeOf(
			dataDir,
			() => new Date(),
			() => {},
		);
		const [id = ''] = store.ids();
		const filed = store.record(id);
		if (filed instanceof Error) throw filed;
		const other = '20261120-090000-invented';
		const named = {...filed.check.answers['arm-name'], value: 'south deck', typed: 'south deck', at: filed.finishedAt};
		await store.finish(other, {
			...filed,
			check: {...filed.check, id: other, answers: {...filed.check.answers, 'arm-name': named}},
		});
		await store.saveRemark(other, {void: {reason: 'only tried out', at: '2026-11-21T09:00:00Z'}});
		const [checks, settings] = [bytesIn(dataDir, 'checks'), store.settings().value];
		expect(run(dataDir, [...twice]).status).toBe(0);
		expect(bytesIn(dataDir, 'checks')).toEqual({[`${other}.json`]: checks[`${other}.json`]});
		expect(filesIn(dataDir, 'remarks')).toEqual([`${other}.json`]);
		expect(dataFolder(dataDir).store.settings().value).toEqual(settings);
		expect(listOf(dataDir)).toMatch(new RegExp(`^2026-11-14 +south deck +${voided} .*\n$`));
	});

	test('may be told a former name, but wants the name of today', () => {
		const dataDir = folder();
		const wrong = run(dataDir, ['delete', '--arm', 'an older name', '--name', 'an older name']);
		expect(wrong).toMatchObject({status: 2});
		expect(wrong.faults).toContain(deleting.otherName({given: 'an older name', name: 'north deck'}));
		expect(filesIn(dataDir, 'checks')).toHaveLength(7);
		expect(run(dataDir, ['delete', '--arm', 'an older name', '--name', 'north deck']).status).toBe(0);
		expect(filesIn(dataDir, 'checks')).toEqual([]);
	});

	test.each([
		['without an arm', ['delete'], deleting.nameArm],
		['without a terminal to ask at', twice.slice(0, 3), deleting.nobodyToAsk],
		['with another name', [...twice.slice(0, 4), 'north'], deleting.otherName({given: 'north', name: 'north deck'})],
		[
			'of an unknown arm',
			['delete', '--arm', 'nord deck', '--name', 'nord deck'],
			deleting.unknownArm({arm: 'nord deck', meant: 'north deck'}),
		],
		[
			'of an unknown arm, before its name is asked for',
			['delete', '--arm', 'nord deck'],
			deleting.unknownArm({arm: 'nord deck', meant: 'north deck'}),
		],
		[
			'with --yes alone',
			[...twice.slice(0, 3), '--yes'],
			commandLine.unknownOption({option: '--yes', meant: undefined, command: 'delete'}),
		],
	])('%s changes nothing and says why, with status 2', (_, args, sentence) => {
		const dataDir = folder();
		const before = bytesIn(dataDir, 'checks');
		const {status, faults} = run(dataDir, args);
		expect(faults).toContain(sentence);
		expect(status).toBe(2);
		expect(bytesIn(dataDir, 'checks')).toEqual(before);
		expect(filesIn(dataDir, 'backups')).toEqual([]);
	});

	test('writes its back-up where it is told, over nothing that is there, and never twice over one of the same day', () => {
		const named = path.join(freshFolder(), 'deck of mine.json');
		const dataDir = folder();
		const {out} = run(dataDir, [...twice, '--backup', named]);
		expect(out).toContain(`armdrift import '${named}'`);
		expect(fs.existsSync(named)).toBe(true);
		expect(filesIn(dataDir, 'backups')).toEqual([]);
		const bytes = fs.readFileSync(named, 'utf8');
		const other = folder();
		const refused = run(other, [...twice, '--backup', named]);
		expect(refused).toMatchObject({status: 2});
		const there = words.store['target-there']({file: named, option: '--backup', mayForce: false});
		expect(refused.faults).toBe(`${there} ${deleting.nothingDeleted}\n`);
		expect(fs.readFileSync(named, 'utf8')).toBe(bytes);
		expect(filesIn(other, 'checks')).toHaveLength(7);
		expect(run(dataDir, ['import', named, '--yes']).status).toBe(0);
		for (const count of [1, 2]) {
			expect(run(dataDir, twice).status).toBe(0);
			expect(filesIn(dataDir, 'backups')).toHaveLength(count);
			expect(run(dataDir, ['import', named, '--yes']).status).toBe(0);
		}
	});

	test('deletes nothing where the back-up cannot be written', () => {
		const dataDir = folder();
		const {status, faults} = run(dataDir, [...twice, '--backup', path.join(dataDir, 'no', 'such', 'folder.json')]);
		expect(status).toBe(1);
		expect(faults).toMatch(new RegExp(`^${withAnything(`${notSaved} ${deleting.nothingDeleted}`).source}\n$`));
		expect(filesIn(dataDir, 'checks')).toHaveLength(7);
		expect(namesOf(dataDir)).toContain('north deck');
	});

	test('deletes nothing where a part of it cannot be read, so could not be backed up', () => {
		const dataDir = folder();
		const [remark = ''] = filesIn(dataDir, 'remarks');
		fs.writeFileSync(path.join(dataDir, 'remarks', remark), 'x');
		const {status, faults} = run(dataDir, twice);
		expect(faults).toContain(remark);
		expect(faults).toMatch(new RegExp(`${withAnything(`${inTheWay} ${deleting.nothingDeleted}`).source}\n$`));
		expect(status).toBe(1);
		expect(filesIn(dataDir, 'checks')).toHaveLength(7);
	});

	test('is refused while a check of the arm is open, with the way out', async () => {
		const dataDir = folder();
		const opened = run(dataDir, ['--plain', '--arm', 'north deck'], {input: '1\n'});
		expect(opened.status).toBe(3);
		const {status, faults} = run(dataDir, twice);
		expect(status).toBe(2);
		expect(faults).toBe(`${deleting.isOpen({name: 'north deck'})}\n`);
		expect(filesIn(dataDir, 'checks')).toHaveLength(7);
	});

	test('deletes an arm that has a profile only', async () => {
		const profile = {id: 'arm-1', kind: 'arm' as const, name: 'west deck', usedAt: '2026-03-02T09:00:00Z', answers: {}};
		const dataDir = await folderWith([], {profiles: [profile]});
		const {out, status} = run(dataDir, ['delete', '--arm', 'west deck', '--name', 'west deck']);
		const west = {name: 'west deck', checks: 0, hasProfile: true, days: [], remarks: 0};
		expect(out.split('\n')).toContain(deleting.going(west));
		expect(status).toBe(0);
		expect(namesOf(dataDir)).toEqual([]);
	});
});

describe('armdrift delete at a terminal', () => {
	const begin = (dataDir: string) => {
		const program = startProgram({dataDir, args: ['delete', '--arm', 'north deck'], cols: 160});
		onTestFinished(() => program.stop());
		return program;
	};
	const asked = deleting.typeName;
	const otherName = (given: string): string => deleting.otherName({given, name: 'north deck'});

	test('asks for the name, and deletes when it is typed exactly', async () => {
		const dataDir = folder();
		const program = begin(dataDir);
		await program.waitFor(asked);
		program.type('north deck\r');
		expect((await program.exited).exitCode).toBe(0);
		expect(flat(program.normalScreen())).toContain(deleting.gone(northDeck));
		expect(filesIn(dataDir, 'checks')).toEqual([]);
	});

	test.each([
		['y\r', 2, otherName('y')],
		['\r', 2, otherName('')],
		['North Deck\r', 2, otherName('North Deck')],
		['\u0004', 3, deleting.inputEnded],
		['north deck\u0003', 130, deleting.nothingDeleted],
	])('anything else than its name deletes nothing: %j', async (keys, exitCode, sentence) => {
		const dataDir = folder();
		const program = begin(dataDir);
		await program.waitFor(asked);
		program.type(keys);
		expect((await program.exited).exitCode).toBe(exitCode);
		expect(flat(program.normalScreen())).toContain(sentence);
		expect(filesIn(dataDir, 'checks')).toHaveLength(7);
		expect(filesIn(dataDir, 'backups')).toEqual([]);
		expect(fs.existsSync(path.join(dataDir, 'lock'))).toBe(false);
	});

	test('is refused while another copy is writing', async () => {
		const dataDir = folder();
		const program = begin(dataDir);
		await program.waitFor(asked);
		const {status, faults} = run(dataDir, twice);
		expect(status).toBe(4);
		expect(faults).toContain(around(anotherCopy(program.pid))[0]);
	});
});
