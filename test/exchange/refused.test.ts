import {existsSync, writeFileSync} from 'node:fs';
import {beforeAll, describe, expect, it} from 'vitest';
import {Addition} from '../../source/exchange/addition.js';
import {ImportFile} from '../../source/exchange/import-file.js';
import {checkedIds, importPlan} from '../../source/exchange/import-plan.js';
import type {Damage} from '../../source/store/store-fault.js';
import {
	type DataFolder,
	dataFolder,
	documentOf,
	type ExportDocument,
	exported,
	exportForms,
	fileWith,
	fullFolder,
	plainId,
	refusedImport,
} from '../helpers/data-folders.js';
import {anything, withAnything, words} from '../helpers/said.js';

const say = words.commands.exchange;

let from: DataFolder;
let text: string;
beforeAll(async () => {
	from = await fullFolder();
	text = exported(from);
});

/** The export with a value put at a path in it: `checks.3.record.outcome`. */
const put = (path: string, value: unknown): ExportDocument => {
	const document = documentOf(text);
	const keys = path.split('.');
	const last = keys.pop() ?? '';
	const at = keys.reduce<unknown>(
		(one, key) => (typeof one === 'object' && one !== null ? Reflect.get(one, key) : undefined),
		document,
	);
	if (typeof at !== 'object' || at === null) throw new Error(`there is no ${path}`);
	Reflect.set(at, last, value);
	return document;
};

/** Refused in one sentence, with nothing made on the disk. */
const refused = async (content: string | Buffer) => {
	const to = dataFolder();
	const file = fileWith(content);
	const {code, sentence} = await refusedImport(file, to);
	expect(existsSync(to.dataDir)).toBe(false);
	expect(sentence).toContain(file);
	return {code, sentence};
};

/** The sentence with which a file is refused, for one reason in it. */
const because = (part: string) => expect.stringContaining(part);
const unusable = (damage: Damage) => words.store.unusable({file: '', damage}).split(': ').slice(1).join(': ');
const anyLine = new RegExp(
	unusable({id: 'not-object', values: {line: 1}})
		.replace(/[()]/g, '\\$&')
		.replace('1', '\\d+'),
);

describe.each(exportForms)('An import of a file with $form that is not whole', ({written}) => {
	it('changes nothing, wherever the file was cut', async () => {
		const bytes = Buffer.from(written(documentOf(text)).trimEnd());
		for (let percent = 0; percent < 100; percent++) {
			const {code, sentence} = await refused(bytes.subarray(0, Math.floor((bytes.length * percent) / 100)));
			expect(code).toBe('damaged');
			const known = [unusable({id: 'empty', values: {}}), 'UTF-8', say.cutShort].some((one) => sentence.includes(one));
			expect(known || anyLine.test(sentence)).toBe(true);
		}
	});

	it('changes nothing when only the last letter is missing', async () => {
		const {sentence} = await refused(written(documentOf(text)).trimEnd().slice(0, -1));
		expect(sentence).toMatch(anyLine);
	});
});

it('An import of a file that ends after any whole line but the last is refused', async () => {
	const lines = text.trimEnd().split('\n');
	for (let count = 1; count < lines.length; count++) {
		const {code, sentence} = await refused(`${lines.slice(0, count).join('\n')}\n`);
		expect([code, sentence]).toEqual(['damaged', because(say.cutShort)]);
	}
});

describe('An import of a foreign file', () => {
	it.each([
		['JSON of something else', '{"name": "x", "version": 1}', say.notOurs({kind: 'armdrift-export'})],
		['a list', '[]', unusable({id: 'not-object', values: {line: 1}})],
		['a text', 'date;arm\n1;2', unusable({id: 'not-object', values: {line: 1}})],
		['lines of something else', '{"a":1}\n{"b":2}\n', unusable({id: 'not-object', values: {line: 2}})],
		['a text in UTF-16', Buffer.from('\uFEFF{"a":1}', 'utf16le'), unusable({id: 'utf-16', values: {}})],
	])('is refused: %s', async (_, content, part) => {
		expect(await refused(content)).toEqual({code: 'damaged', sentence: because(part)});
	});

	it.each(exportForms)(
		'of a newer version is refused with the version that is needed, before its contents are looked at: $form',
		async ({written}) => {
			const {code, sentence} = await refused(written({...documentOf(text), version: 99, checks: [{new: true}]}));
			const newer = words.store.newer({thing: {id: 'export', values: {}}, file: anything, version: 99});
			expect([code, sentence]).toEqual(['newer', expect.stringMatching(withAnything(newer))]);
		},
	);
});

describe.each(exportForms)('An import of something wrong in $form names the key:', ({written, where}) => {
	const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
	const check = (path: string) => `checks.3.record.check.${path}`;
	/** That a check is not what is wanted at a key; why is the id of what is, where it has one. */
	const misfit = (at: string, why: string, of = where(3)) => say.misfit({where: of, at, why});
	it.each<[string, () => string | ExportDocument, string]>([
		[
			'a version that is none',
			() => put('version', '1'),
			say.wanted({where: 'version', found: '"1"', wanted: 'version'}),
		],
		['no program', () => put('program', 5), say.wanted({where: 'program', found: '5', wanted: 'text'})],
		['a check that is none', () => put('checks.3', 'x'), say.wanted({where: where(3), found: '"x"', wanted: 'check'})],
		[
			'a typed text that is none',
			() => put(check('answers.mat.typed'), 4),
			misfit('record.check.answers.mat.typed', 'string'),
		],
		[
			'a time that is none',
			() => put(check('startedAt'), '2026-02-30T10:00:00Z'),
			misfit('record.check.startedAt', 'instant'),
		],
		['an unknown outcome', () => put('checks.3.record.outcome', 'x'), misfit('record.outcome', '')],
		[
			'an id that is no file name of ours',
			() => put('checks.3.id', '../../x'),
			say.wanted({where: `${where(3)}.id`, found: '"../../x"', wanted: 'id'}),
		],
		[
			'an id that is another one inside',
			() => put(check('id'), plainId),
			say.wanted({where: `${where(3)}.id`, found: `"2025${anything}"`, wanted: 'id'}),
		],
		[
			'figures that cannot be shown',
			() => put('checks.3.record.issued.figures.probe', [{place: 1}]),
			say.notIssued({where: where(3)}),
		],
		['figures that are none', () => put('checks.3.record.issued.figures', 1), misfit('record.issued.figures', '')],
		[
			'a later note of another shape',
			() => put('checks.0.remark.void', 'yes'),
			misfit('remark.void', 'object', where(0)),
		],
		[
			'a profile of another kind',
			() => put('profiles.profiles.1.kind', 'gauge'),
			misfit('profiles.1.kind', '', 'profiles'),
		],
		['a setting below zero', () => put('settings.settleSeconds', -1), misfit('settleSeconds', 'positive', 'settings')],
		[
			'a number beyond all numbers',
			() => written(put('checks.3.record.more', 'HUGE')).replace('"HUGE"', '1e999'),
			say.value({at: `${where(3)}.record.more`, found: Number.POSITIVE_INFINITY}),
		],
		[
			'a check nested too deeply',
			() => written(put('checks.3.record.more', 'DEEP')).replace('"DEEP"', deep),
			unusable({id: 'too-deep', values: {line: 0}}).replace('0', anything),
		],
		[
			'the same check twice',
			() => {
				const document = documentOf(text);
				return {...document, checks: [...document.checks, document.checks[3]]};
			},
			say.checkTwice({where: where(7), id: anything}),
		],
	])('%s', async (_, content, part) => {
		const given = content();
		const {code, sentence} = await refused(typeof given === 'string' ? given : written(given));
		expect({code, sentence}).toEqual({code: 'damaged', sentence: expect.stringMatching(withAnything(part))});
	});
});

it('A single document without a list of checks is refused', async () => {
	const {checks: _, ...others} = documentOf(text);
	const {code, sentence} = await refused(JSON.stringify({...others, checks: {}}));
	const wanted = say.wanted({where: 'checks', found: words.documents.shownValue({}), wanted: 'checks'});
	expect([code, sentence]).toEqual(['damaged', because(wanted)]);
});

it.each(['settings', 'profiles'])('Lines that hold %s twice are refused', async (key) => {
	const [head = '', ...rest] = text.split('\n');
	const again = JSON.stringify({[key]: documentOf(text)[key]});
	const {code, sentence} = await refused([head, again, ...rest].join('\n'));
	expect([code, sentence]).toEqual(['damaged', because(say.twice({key}))]);
});

it.each(exportForms)(
	'A file that is changed between the look at it and the yes is not taken: $form',
	async ({written}) => {
		const to = dataFolder();
		const content = written(documentOf(text));
		const file = fileWith(content);
		const opened = new ImportFile(file);
		const plan = importPlan(opened, checkedIds(opened), to.store);
		writeFileSync(file, content.replaceAll('north deck', 'south deck'));
		await expect(new Addition(opened, to.store).run(plan)).rejects.toThrow(say.changedMeanwhile);
		opened.close();
		expect(existsSync(to.dataDir)).toBe(false);
	},
);
