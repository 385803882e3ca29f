import {describe, expect, it} from 'vitest';
import {remedyAfter} from '../../source/check/series.js';
import {checkReport} from '../../source/reports/check-report.js';
import type {CheckSource} from '../../source/reports/check-source.js';
import {htmlOf} from '../../source/reports/html/html-of.js';
import {markdownOf} from '../../source/reports/markdown-of.js';
import {phraseText, type ReportBlock} from '../../source/reports/report.js';
import {words} from '../helpers/said.js';
import {parsedMarkdown, textOfPage} from './reading.js';
import {
	formsOf,
	halfSource,
	imprint,
	leftSource,
	nasty,
	offScaleSource,
	poorSource,
	sources,
	storySource,
	voidSource,
} from './support.js';

const {sheet} = words.reports;
const reportOf = (source: CheckSource) => checkReport(source, imprint);
const sheetOf = (source: CheckSource) => reportOf(source).sheet ?? [];
const blocksOf = (source: CheckSource): readonly ReportBlock[] => sheetOf(source).flatMap(({blocks}) => blocks);

function textsOf(block: ReportBlock): readonly string[] {
	switch (block.kind) {
		case 'line':
		case 'notice':
		case 'verdict':
			return [phraseText(block.phrase)];
		case 'list':
			return block.items.map(phraseText);
		case 'picture':
			return [block.title];
		case 'table':
		case 'facts':
		case 'findings':
			throw new Error(`${block.kind} on the customer's sheet`);
	}
}
const linesOf = (source: CheckSource): readonly string[] => blocksOf(source).flatMap(textsOf);

/** Letters of the sheet's size in a line of A4, 178 mm; and lines on the page beside the picture, both on the safe side. */
const [lettersInLine, linesOnPage] = [80, 36];

describe.each(Object.entries(sources))("The customer's sheet of %s", (_name, source) => {
	it('comes before everything else, with a page of its own', () => {
		const {html, markdown} = formsOf(source);
		const [first] = reportOf(source).sections;
		for (const {title} of sheetOf(source)) {
			expect(html.indexOf(`>${title}</h2>`)).toBeGreaterThan(0);
			expect(html.indexOf(`>${title}</h2>`)).toBeLessThan(html.indexOf(`>${first?.title}</h2>`));
			expect(markdown.indexOf(`## ${title}`)).toBeLessThan(markdown.indexOf(`## ${first?.title}`));
		}
		expect(html).toMatch(/<main>\n<div class="sheet">/);
		expect(/<style>(.*?)<\/style>/s.exec(html)?.[1]).toMatch(/\.sheet \{[^}]*break-after: page/);
	});

	it('fits one page, whatever was found', () => {
		const typed = [...Object.values(nasty), ''].reduce((longest, one) => Math.max(longest, one.length), 0);
		const lines = linesOf(source).reduce((sum, one) => sum + Math.ceil(one.length / lettersInLine), 0);
		expect(lines).toBeLessThanOrEqual(linesOnPage - 2 * sheetOf(source).length - Math.ceil(typed / lettersInLine));
		expect(blocksOf(source).filter(({kind}) => kind === 'picture').length).toBeLessThanOrEqual(1);
	});

	it('has no figure with its ±, in the picture neither', () => {
		expect(linesOf(source).join('\n')).not.toContain('±');
		for (const block of blocksOf(source))
			if (block.kind === 'picture' && block.drawing.kind === 'bands')
				for (const row of block.drawing.rows) {
					expect(row.pullUncertaintyPct).toBeUndefined();
					expect(row.earlier).toBeUndefined();
				}
	});

	it('ends with cautions, and stands in no report for the maker and in none over the years', () => {
		expect(linesOf(source).slice(-sheet.care.length)).toEqual(sheet.care);
		const {maker, arm} = formsOf(source);
		for (const html of [maker, arm]) expect(html).not.toContain('<div class="sheet">');
	});
});

describe("The customer's sheet", () => {
	const {figures, findings} = storySource.record.issued ?? {};

	it('has the word, what it means, what was done, and what comes next and when', () => {
		const lines = linesOf(storySource);
		const {check} = storySource.record;
		const remedies = check.series.flatMap((series) => remedyAfter(series) ?? []);
		expect(remedies.length).toBeGreaterThan(0);
		expect(figures && sheet.word(figures)).toBe(words.figures.verdictWord.beyond);
		for (const said of [
			words.figures.verdictWord.beyond,
			sheet.means({atWorst: 'beyond', of: 'both', isDecided: true}),
			sheet.done.measured({day: '14 Nov 2026'}),
			sheet.done.level({passes: true}),
			sheet.done.tried({remedies}),
			sheet.done.bias({setting: '2.4 g, third notch'}),
			// 21 mN / 9.80665 m/s².
			sheet.done.force({force: '2.14 g = 21 mN'}),
			sheet.done.ready,
			sheet.next.by[findings?.[0]?.who ?? 'owner'],
			sheet.next.check({day: '14 Dec 2026'}),
		])
			expect(lines).toContain(said);
	});

	it('of a deck in pieces warns, and does not call it ready', () => {
		expect(linesOf(leftSource)).toContain(sheet.notReady);
		expect(linesOf(leftSource)).not.toContain(sheet.done.ready);
		expect(linesOf(storySource)).not.toContain(sheet.notReady);
	});

	it('of a check that went past what did not pass says so', () => {
		expect(linesOf(poorSource)).toContain(sheet.done.overridden);
	});

	it('of a check without a verdict says what that leaves open', () => {
		expect(linesOf(halfSource)).toEqual(expect.arrayContaining([sheet.noWord, sheet.meansNothing, sheet.next.finish]));
		expect(linesOf(offScaleSource)).toContain(sheet.means({atWorst: 'off-scale', of: 'both', isDecided: true}));
	});

	it('of a void check says so first, and hands out no day', () => {
		const [first = ''] = linesOf(voidSource);
		expect(first).toBe(words.results.void({at: '2026-11-20', reason: 'the level had slipped'}));
		expect(linesOf(voidSource)).not.toContain(sheet.next.check({day: '14 Dec 2026'}));
	});

	it('never says of what is not decided more than is sure', () => {
		const open = ['usable', 'beyond'] as const;
		const said = open.map((atWorst) => sheet.word({verdict: 'undecided', atWorst}));
		for (const [index, atWorst] of open.entries()) expect(said[index]).not.toBe(words.figures.verdictWord[atWorst]);
		expect(sheet.means({atWorst: 'beyond', of: 'pull', isDecided: false})).not.toBe(
			sheet.means({atWorst: 'beyond', of: 'pull', isDecided: true}),
		);
	});

	it('names shop, customer and complaint where they are known, and prints nothing in their place', () => {
		const known = {shop: nasty.markup, name: nasty.rightToLeft, complaint: 'it skips at the end'};
		const typed = (text: string) => ({typed: text, value: text, at: '2026-03-02T09:00:00Z'});
		const {record} = storySource;
		const answers = {
			...record.check.answers,
			'customer-name': typed(known.name),
			'customer-complaint': typed(known.complaint),
		};
		const check = {...record.check, shop: known.shop, answers};
		const report = reportOf({...storySource, record: {...record, check}});
		const html = textOfPage(htmlOf(report));
		const {text} = parsedMarkdown(markdownOf(report));
		for (const name of Object.values(sheet.about)) {
			expect(html).toContain(name);
			expect(text).toContain(name);
			expect(textOfPage(htmlOf(reportOf(storySource)))).not.toContain(`\n${name}\n`);
		}
		for (const all of [html, text]) expect(all).toContain(known.shop);
		expect(htmlOf(report)).not.toContain('<script>');
	});
});
