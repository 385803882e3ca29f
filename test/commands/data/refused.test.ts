import {existsSync, writeFileSync} from 'node:fs';
import {beforeAll, describe, expect, it} from 'vitest';
import * as z from 'zod/mini';
import {Addition} from '../../../source/commands/data/addition.js';
import {ImportFile} from '../../../source/commands/data/import-file.js';
import {checkedIds, importPlan} from '../../../source/commands/data/import-plan.js';
import {
	type DataFolder,
	dataFolder,
	exported,
	fileWith,
	fullFolder,
	plainId,
	refusalOf,
} from '../../helpers/data-folders.js';

let from: DataFolder;
let text: string;
beforeAll(async () => {
	from = await fullFolder();
	text = exported(from);
});

const loose = z.record(z.string(), z.unknown());
const documentSchema = z.looseObject({
	checks: z.array(z.looseObject({id: z.string(), record: z.looseObject({check: loose})})),
});
type Document = z.infer<typeof documentSchema>;

/** The export with one thing changed in it. */
const changed = (change: (document: Document) => unknown): string => {
	const document = documentSchema.parse(JSON.parse(text));
	return JSON.stringify(change(document) ?? document);
};

/** Puts a value at a path: `checks.3.record.outcome`. */
const put = (path: string, value: unknown) =>
	changed((document) => {
		const keys = path.split('.');
		const last = keys.pop() ?? '';
		const at = keys.reduce<unknown>(
			(one, key) => (typeof one === 'object' && one !== null ? Reflect.get(one, key) : undefined),
			document,
		);
		if (typeof at !== 'object' || at === null) throw new Error(`there is no ${path}`);
		Reflect.set(at, last, value);
		return undefined;
	});

/** Refused in one sentence, with nothing made on the disk. */
const refused = async (content: string | Buffer) => {
	const to = dataFolder();
	const file = fileWith(content);
	const {code, sentence} = await refusalOf(file, to);
	expect(existsSync(to.dataDir)).toBe(false);
	expect(sentence).toContain(file);
	return {code, sentence};
};

describe('An import of a file that is not whole', () => {
	it('changes nothing, wherever the file was cut', async () => {
		const bytes = Buffer.from(text.trimEnd());
		for (let percent = 0; percent < 100; percent++) {
			const {code, sentence} = await refused(bytes.subarray(0, Math.floor((bytes.length * percent) / 100)));
			expect([code, sentence]).toEqual([
				'damaged',
				expect.stringMatching(/it is empty|not a whole JSON object \(line \d+\)|not UTF-8/),
			]);
		}
	});

	it('changes nothing when only the last letter is missing', async () => {
		expect((await refused(text.trimEnd().slice(0, -1))).sentence).toMatch(/not a whole JSON object/);
	});
});

describe('An import of a foreign file', () => {
	it.each([
		['JSON of something else', '{"name": "x", "version": 1}', /it is no export of this program/],
		['a list', '[]', /not a whole JSON object/],
		['a text', 'date;arm\n1;2', /not a whole JSON object \(line 1\)/],
	])('is refused: %s', async (_, content, sentence) => {
		expect(await refused(content)).toEqual({code: 'damaged', sentence: expect.stringMatching(sentence)});
	});

	it('of a newer version is refused with the version that is needed, before its contents are looked at', async () => {
		const {code, sentence} = await refused(changed((document) => ({...document, version: 99, checks: [{new: true}]})));
		expect([code, sentence]).toEqual(['newer', expect.stringContaining('version 99')]);
	});
});

describe('An import of something wrong names the key:', () => {
	const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
	const check = (path: string) => `checks.3.record.check.${path}`;
	it.each([
		['a version that is none', () => put('version', '1'), /version: found "1"\. Wanted: a whole number/],
		['no program', () => put('program', 5), /program: found 5\. Wanted: a text/],
		['no list of checks', () => put('checks', {}), /checks: found a group of keys\. Wanted: a list of checks/],
		['a check that is none', () => put('checks.3', 'x'), /checks\[3\]: found "x"/],
		[
			'a typed text that is none',
			() => put(check('answers.mat.typed'), 4),
			/checks\[3\]\.record\.check\.answers\.mat\.typed is not/,
		],
		[
			'a time that is none',
			() => put(check('startedAt'), '2026-02-30T10:00:00Z'),
			/checks\[3\]\.record\.check\.startedAt is not/,
		],
		['an unknown outcome', () => put('checks.3.record.outcome', 'x'), /checks\[3\]\.record\.outcome is not/],
		[
			'an id that is no file name of ours',
			() => put('checks.3.id', '../../x'),
			/checks\[3\]\.id: found "\.\.\/\.\.\/x"/,
		],
		['an id that is another one inside', () => put(check('id'), plainId), /checks\[3\]\.id: found "2025/],
		[
			'figures that cannot be shown',
			() => put('checks.3.record.issued.figures.probe', [{place: 1}]),
			/checks\[3\]\.record\.issued is not/,
		],
		[
			'figures that are none',
			() => put('checks.3.record.issued.figures', 1),
			/checks\[3\]\.record\.issued\.figures is not/,
		],
		['a later note of another shape', () => put('checks.0.remark.void', 'yes'), /checks\[0\]\.remark\.void is not/],
		['a profile of another kind', () => put('profiles.profiles.1.kind', 'gauge'), /profiles\.profiles\.1\.kind is not/],
		['a setting below zero', () => put('settings.settleSeconds', -1), /settings\.settleSeconds is not/],
		[
			'a number beyond all numbers',
			() => put('checks.3.record.more', 'HUGE').replace('"HUGE"', '1e999'),
			/checks\[3\]\.record\.more is Infinity/,
		],
		[
			'a check nested too deeply',
			() => put('checks.3.record.more', 'DEEP').replace('"DEEP"', deep),
			/checks\[3\] is nested too deeply/,
		],
		[
			'the same check twice',
			() => changed((document) => ({...document, checks: [...document.checks, document.checks[3]]})),
			/checks\[7\]\.id: the check \S+ stands in it twice/,
		],
	])('%s', async (_, content, sentence) => {
		expect(await refused(content())).toEqual({code: 'damaged', sentence: expect.stringMatching(sentence)});
	});
});

it('A file that is changed between the look at it and the yes is not taken', async () => {
	const to = dataFolder();
	const file = fileWith(text);
	const opened = new ImportFile(file);
	const plan = importPlan(opened, checkedIds(opened), to.store);
	writeFileSync(file, text.replaceAll('north deck', 'south deck'));
	await expect(new Addition(opened, to.store).run(plan)).rejects.toThrow(/it was changed meanwhile/);
	opened.close();
	expect(existsSync(to.dataDir)).toBe(false);
});
