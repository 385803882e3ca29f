import {existsSync} from 'node:fs';
import path from 'node:path';
import {describe, expect, it} from 'vitest';
import {finishedCheck} from '../../source/commands/filing.js';
import type {CheckSource} from '../../source/reports/check-source.js';
import {
	dataFolder,
	exported,
	fileWith,
	importing,
	inventedRecords,
	plainId,
	refusalOf,
} from '../helpers/data-folders.js';
import {practised} from '../helpers/practised.js';
import {freshFolder} from '../helpers/program-environment.js';
import {words} from '../helpers/said.js';
import {textsOf} from './reading.js';
import {formsOf, storySource} from './support.js';

const {check} = practised({arm: 'sticky-bearing', seed: 1, isPrepared: true});
const record = finishedCheck(check, '2026-03-02T12:00:00Z');
const source: CheckSource = {record, history: []};
const forms = formsOf(source);
const texts = textsOf(source);
const everyForm = Object.keys(forms).flatMap((form) => (isForm(form) ? [form] : []));

function isForm(form: string): form is keyof typeof forms {
	return form in forms;
}

describe.each(everyForm)('the report of a practice check as %s', (form) => {
	it('says in its title that it is practice', () => {
		const title = form.toLowerCase().endsWith('markdown')
			? forms[form].split('\n')[0]
			: /<title>(.*?)<\/title>/s.exec(forms[form])?.[1];
		expect(title?.replace(/^# /, '')).toMatch(/^PRACTICE: /);
	});

	it('says so before its verdict, and before any figure', () => {
		const text = texts[form].replaceAll('\u00a0', ' ');
		const said = text.indexOf(words.beside.practice.notice);
		expect(said).toBeGreaterThanOrEqual(0);
		const verdict = text.search(/BEYOND LIMITS|beyond limits/);
		expect(verdict === -1 || verdict > said).toBe(true);
		expect(text.search(/[\d.]+ % ± [\d.]+ %/)).toBeGreaterThan(said);
	});
});

describe('the report of a practice check', () => {
	it('sets what was hidden beside what was found, in the page and in Markdown', () => {
		for (const text of [texts.html, texts.markdown].map((one) => one.replaceAll('\u00a0', ' '))) {
			expect(text).toContain('What was hidden: an arm with a sticky bearing');
			expect(text).toContain('Your findings name it');
			expect(text).toContain('armdrift practice --on sticky-bearing --extent probe --seed 1');
		}
	});

	it('has in the page for the maker and in the history of the arm no hidden truth: nobody knows it of a real one', () => {
		for (const form of ['maker', 'arm', 'armMarkdown'] as const)
			expect(texts[form]).not.toContain(words.reports.sections.hidden);
	});

	it('has no word of practice where the arm is a real one', () => {
		for (const text of Object.values(formsOf(storySource)))
			expect(text.toLowerCase()).not.toMatch(/practice:|was hidden/);
	});
});

describe('an import', () => {
	const withPractice = async () => {
		const from = dataFolder(path.join(freshFolder(), 'from'));
		for (const one of [...inventedRecords, record]) await from.store.finish(one.check.id, one);
		return exported(from);
	};

	it('of a file with a practice check is refused, naming the check, and nothing is made of it', async () => {
		const to = dataFolder();
		const {code, message} = await refusalOf(fileWith(await withPractice()), to);
		expect(code).toBe('damaged');
		expect(message).toContain(`the check ${record.check.id} is practice on an invented arm. Take it out of the file.`);
		expect(message).toMatch(/checks\[\d\]/);
		expect(existsSync(to.dataDir)).toBe(false);
	});

	it('of the same file without it is taken', async () => {
		const document: {checks: {id: string}[]} = JSON.parse(await withPractice());
		const others = {...document, checks: document.checks.filter(({id}) => id !== record.check.id)};
		const to = dataFolder();
		await importing(fileWith(JSON.stringify(others)), to);
		expect(to.store.ids()).toContain(plainId);
		expect(to.store.ids()).toHaveLength(inventedRecords.length);
	});
});
