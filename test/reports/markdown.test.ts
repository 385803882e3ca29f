import fc from 'fast-check';
import {describe, expect, it} from 'vitest';
import type {CheckSource} from '../../source/reports/check-source.js';
import {escapeMarkdown} from '../../source/reports/markdown-of.js';
import {visibleText} from '../../source/visible-text.js';
import {parsedMarkdown} from './reading.js';
import {formsOf, sources} from './support.js';

const wanted = new Set([
	'heading_open',
	'heading_close',
	'paragraph_open',
	'paragraph_close',
	'inline',
	'text',
	'text_special',
	'softbreak',
	'hr',
	'bullet_list_open',
	'bullet_list_close',
	'ordered_list_open',
	'ordered_list_close',
	'list_item_open',
	'list_item_close',
	'table_open',
	'table_close',
	'thead_open',
	'thead_close',
	'tbody_open',
	'tbody_close',
	'tr_open',
	'tr_close',
	'th_open',
	'th_close',
	'td_open',
	'td_close',
	'strong_open',
	'strong_close',
]);

/** What somebody typed stands as it was typed. */
const typedIn = ({record: {check}}: CheckSource): readonly string[] => [JSON.stringify(check)];

describe.each(Object.entries(sources))('Markdown of %s', (_name, source) => {
	const forms = formsOf(source);
	const parsed = [forms.markdown, forms.armMarkdown].map(parsedMarkdown);

	it('holds headings, sentences, lists and tables, and nothing else', () => {
		for (const {kinds} of parsed) expect([...kinds].filter((kind) => !wanted.has(kind))).toEqual([]);
	});

	it('ends no line within a figure', () => {
		const figures =
			[forms.markdown, forms.armMarkdown].join('\n').match(/\d[ \u00a0](?:%|mN|±)(?!\p{L})|±[ \u00a0]\d/gu) ?? [];
		if (source.record.issued) expect(figures.length).toBeGreaterThan(10);
		expect(figures.filter((one) => one.includes(' ') && !typedIn(source).some((text) => text.includes(one)))).toEqual(
			[],
		);
	});

	it('has tables whose rows are as long as their headings', () => {
		for (const {tables} of parsed) {
			expect(tables.length).toBeGreaterThan(0);
			for (const [head = [], ...rows] of tables) {
				expect(rows.length).toBeGreaterThan(0);
				for (const row of rows) expect(row).toHaveLength(head.length);
			}
		}
	});

	it('has every table that begins in it: none is torn by a text', () => {
		for (const [index, text] of [forms.markdown, forms.armMarkdown].entries())
			expect(parsed[index]?.tables).toHaveLength(text.match(/^\|(?: --- \|)+$/gm)?.length ?? 0);
	});
});

// The CommonMark specification as markdown-it holds it: any text, escaped, is one paragraph or one cell of that text.
describe('Any text', () => {
	const pieces = fc.constantFrom(
		'\\',
		'`',
		'*',
		'_',
		'{',
		'}',
		'[',
		']',
		'(',
		')',
		'#',
		'+',
		'-',
		'.',
		'!',
		'|',
		'~',
		'=',
		'>',
		'<',
		'&',
		'&amp;',
		'$',
		':',
		'"',
		"'",
		'<b>',
		'1.',
		'2)',
		'---',
		'===',
		'- ',
		'+ ',
		'# ',
		'> ',
		' ',
		'  ',
		'\t',
		'\n',
		'a',
		'4.5',
		'<!--',
		'](',
		'![',
		'```',
		'~~~',
		'é',
	);
	const texts = fc
		.array(pieces, {minLength: 1, maxLength: 12})
		.map((list) => list.join('').trim())
		.filter((text) => text !== '');

	it('is one paragraph that reads as it was typed', () => {
		fc.assert(
			fc.property(texts, (typed) => {
				const {text, kinds} = parsedMarkdown(`${escapeMarkdown(typed)}\n`);
				expect(text).toBe(visibleText(typed));
				expect(
					[...kinds].filter(
						(kind) => !['paragraph_open', 'paragraph_close', 'inline', 'text', 'text_special'].includes(kind),
					),
				).toEqual([]);
			}),
			{numRuns: 2000},
		);
	});

	it('is one cell of a table', () => {
		fc.assert(
			fc.property(texts, (typed) => {
				const {tables} = parsedMarkdown(`| a | b |\n| --- | --- |\n| ${escapeMarkdown(typed)} | end |\n`);
				expect(tables[0]?.[1]).toEqual([visibleText(typed), 'end']);
			}),
			{numRuns: 2000},
		);
	});
});
