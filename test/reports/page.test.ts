import {HtmlValidate, type Report} from 'html-validate';
import {SaxesParser} from 'saxes';
import {describe, expect, it} from 'vitest';
import {pages} from './support.js';

const validator = new HtmlValidate({
	extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'],
});
const faultsOf = ({results}: Report): string[] =>
	results.flatMap(({messages}) => messages.map(({ruleId, message, line}) => `${line}: ${ruleId}: ${message}`));

/** Every picture of a page. */
const picturesOf = (html: string): string[] => html.match(/<svg.*?<\/svg>/gs) ?? [];

/** Names of the elements of an XML text. @throws Error where it is not well-formed */
function elementsOf(xml: string): string[] {
	const names: string[] = [];
	const parser = new SaxesParser();
	parser.on('error', (error) => {
		throw error;
	});
	parser.on('opentag', ({name}) => names.push(name));
	parser.write(xml).close();
	return names;
}

// The HTML standard as html-validate holds it, with its rules for a whole document and for accessibility.
describe.each(pages)('The page of %s', (_name, html) => {
	it('is valid HTML', async () => {
		expect(faultsOf(await validator.validateString(html))).toEqual([]);
	});

	it('needs nothing from outside and runs nothing', () => {
		const tags = html.match(/<[a-z][^>]*>/gi) ?? [];
		expect(tags.filter((tag) => /^<(?:script|link|img|iframe|object|embed|a|form|use|image)\b/i.test(tag))).toEqual([]);
		expect(tags.filter((tag) => /\s(?:on\w+|src|srcset|href|xlink:href|style)=|https?:/i.test(tag))).toEqual([]);
		expect(/<style>(.*?)<\/style>/s.exec(html)?.[1]).not.toMatch(/url\(|@import|https?:|</);
		expect(html).toContain("default-src 'none'");
	});

	it('has well-formed pictures, each with a title and a description', () => {
		const pictures = picturesOf(html);
		for (const picture of pictures) expect(() => elementsOf(picture)).not.toThrow();
		for (const picture of pictures.filter((one) => one.includes('role="img"')))
			expect(elementsOf(picture).slice(0, 3)).toEqual(['svg', 'title', 'desc']);
	});

	it('has headings in order, and tables with a caption and headings of rows', () => {
		const levels = [...html.matchAll(/<h(\d)/g)].map(([, level]) => Number(level));
		expect(levels[0]).toBe(1);
		expect(levels.filter((level) => level === 1)).toHaveLength(1);
		levels.slice(1).forEach((level, index) => {
			expect(level - (levels[index] ?? 1)).toBeLessThanOrEqual(1);
		});
		const tables = html.match(/<table.*?<\/table>/gs) ?? [];
		expect(tables.length).toBeGreaterThan(0);
		for (const table of tables) {
			expect(table).toMatch(/^<table[^>]*>\n<caption>[^<]/);
			expect(table.match(/<tr>/g)?.length).toBe(
				(table.match(/<th scope="row">/g)?.length ?? 0) + (table.includes('<thead>') ? 1 : 0),
			);
		}
	});

	it('hides nothing: no control, direction change or invisible character is left in it', () => {
		// A joiner within an emoji is what it is there for.
		expect(html.replaceAll(/\p{Extended_Pictographic}(?:\p{Emoji_Modifier}|\uFE0F)?\u200D/gu, '')).not.toMatch(
			/[^\P{Cc}\n\t]|\p{Cf}|\p{Cs}|\p{Zl}|\p{Zp}|\p{Noncharacter_Code_Point}/u,
		);
	});
});
