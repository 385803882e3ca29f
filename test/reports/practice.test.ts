import {existsSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/desk/filing.js';
import type {CheckSource} from '../../source/reports/check-source.js';
import {
	dataFolder,
	exported,
	fileWith,
	importing,
	inventedRecords,
	plainId,
	refusedImport,
} from '../helpers/data-folders.js';
import {practised} from '../helpers/practised.js';
import {freshFolder} from '../helpers/program-environment.js';
import {withAnyNumbers, words} from '../helpers/said.js';
import {textsOf} from './reading.js';
import {formsOf, storySource} from './support.js';

const {check} = practised({arm: 'sticky-bearing', seed: 1, isPrepared: true});
const record = finishedCheck(check, '2026-03-02T12:00:00Z');
const source: CheckSource = {record, history: []};
const forms = formsOf(source);
const texts = textsOf(source);
const everyForm = Object.keys(forms).flatMap((form) => (isForm(form) ? [form] : []));

const {sections, titles} = words.reports;
const {truth} = words.practice;
/** What a title of practice begins with. */
const [mark = 'none'] = titles.check({arm: '?', isPractice: true}).split(titles.check({arm: '?', isPractice: false}));

function isForm(form: string): form is keyof typeof forms {
	return form in forms;
}

describe.each(everyForm)('the report of a practice check as %s', (form) => {
	it('says in its title that it is practice', () => {
		const title = form.toLowerCase().endsWith('markdown')
			? forms[form].split('\n')[0]
			: /<title>(.*?)<\/title>/s.exec(forms[form])?.[1];
		expect(title?.replace(/^# /, '')).toSatisfy((one: string) => one.startsWith(mark));
	});

	it('says so before its verdict, and before any figure', () => {
		const text = texts[form];
		const said = text.indexOf(words.beside.practice.notice);
		expect(said).toBeGreaterThanOrEqual(0);
		const verdict = text.toLowerCase().indexOf(words.figures.verdictWord.beyond.toLowerCase());
		expect(verdict === -1 || verdict > said).toBe(true);
		expect(text.search(/[\d.]+ % ± [\d.]+ %/)).toBeGreaterThan(said);
	});
});

describe('the report of a practice check', () => {
	it('sets what was hidden beside what was found, in the page and in Markdown', () => {
		for (const text of [texts.html, texts.markdown]) {
			expect(text).toContain(truth.hidden({arm: 'sticky-bearing'}));
			expect(text).toContain(truth.named({likely: '', found: ''}).trim());
			expect(text).toContain(truth.again({arm: 'sticky-bearing', extent: 'probe', seed: 1}));
			expect(text).toContain(' --on sticky-bearing --extent probe --seed 1');
		}
	});

	it('has in the page for the maker and in the history of the arm no hidden truth: nobody knows it of a real one', () => {
		for (const form of ['maker', 'arm', 'armMarkdown'] as const) expect(texts[form]).not.toContain(sections.hidden);
	});

	it('has no word of practice where the arm is a real one', () => {
		for (const text of Object.values(formsOf(storySource)))
			for (const said of [mark.trim(), sections.hidden]) expect(text.toLowerCase()).not.toContain(said.toLowerCase());
	});
});

describe('an import', () => {
	const withPractice = async () => {
		const from = dataFolder(path.join(freshFolder(), 'from'));
		for (const one of inventedRecords) await from.store.finish(one.check.id, one);
		// No export writes it; another hand may.
		const [head, ...lines] = exported(from).split('\n');
		return [head, JSON.stringify({check: {id: record.check.id, record}}), ...lines].join('\n');
	};

	it('of a file with a practice check is refused, naming the check, and nothing is made of it', async () => {
		const to = dataFolder();
		const {code, message} = await refusedImport(fileWith(await withPractice()), to);
		expect(code).toBe('damaged');
		const where = words.commands.exchange.checkInLine({line: 1});
		const practice = words.commands.exchange.practice({where, id: record.check.id});
		expect(message).toMatch(withAnyNumbers(practice));
		expect(existsSync(to.dataDir)).toBe(false);
	});

	it('of the same file without it is taken', async () => {
		const lines = (await withPractice()).split('\n');
		const others = lines.filter((line) => !line.startsWith(`{"check":{"id":"${record.check.id}"`));
		expect(others).toHaveLength(lines.length - 1);
		const to = dataFolder();
		await importing(fileWith(others.join('\n')), to);
		expect(to.store.ids()).toContain(plainId);
		expect(to.store.ids()).toHaveLength(inventedRecords.length);
	});
});
