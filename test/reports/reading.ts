import markdownIt from 'markdown-it';
import type {CheckSource} from '../../source/reports/check-source.js';
import {formsOf} from './support.js';

const entities: Readonly<Record<string, string>> = {amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'"};

/** What a reader sees of a page: its texts, entities turned back, a line for each element; a blank is one, whether a line may end there or not. */
export const textOfPage = (html: string): string =>
	html
		.replace(/<(style|title|desc)\b.*?<\/\1>/gs, '')
		.replaceAll(/<\/?(?:bdi|span|strong)\b[^>]*>/g, '')
		.replaceAll(/<[^>]*>/g, '\n')
		.replaceAll(/&(amp|lt|gt|quot|#39);/g, (whole, name: string) => entities[name] ?? whole)
		.replaceAll('\u00a0', ' ');

const parser = markdownIt({html: true, linkify: false}).enable(['table', 'strikethrough']);

export type Markdown = {
	readonly text: string;
	/** Kinds of markup in it. */
	readonly kinds: ReadonlySet<string>;
	/** Cells by table and row, with the heading as the first row. */
	readonly tables: readonly (readonly (readonly string[])[])[];
};

/** A Markdown text as a kept parser (CommonMark, with tables) understands it. */
export function parsedMarkdown(source: string): Markdown {
	const tokens = parser.parse(source, {});
	const tables: string[][][] = [];
	const texts: string[] = [];
	const kinds = new Set<string>();
	for (const [index, token] of tokens.entries()) {
		kinds.add(token.type);
		if (token.type === 'table_open') tables.push([]);
		if (token.type === 'tr_open') tables.at(-1)?.push([]);
		if (token.type !== 'inline') continue;
		for (const child of token.children ?? []) kinds.add(child.type);
		const text = (token.children ?? [])
			.map((child) => (child.type === 'softbreak' ? '\n' : child.content))
			.join('')
			.replaceAll('\u00a0', ' ');
		texts.push(text);
		if (tokens[index - 1]?.type.startsWith('t')) tables.at(-1)?.at(-1)?.push(text);
	}
	return {text: texts.join('\n'), kinds, tables};
}

/** What a reader reads, by kind of report. */
export const textsOf = (source: CheckSource) => {
	const {html, markdown, maker, arm, armMarkdown} = formsOf(source);
	return {
		html: textOfPage(html),
		markdown: parsedMarkdown(markdown).text,
		maker: textOfPage(maker),
		arm: textOfPage(arm),
		armMarkdown: parsedMarkdown(armMarkdown).text,
	};
};
