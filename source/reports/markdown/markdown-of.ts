import type {IssuedFinding} from '../../results/issued.js';
import {
	type Block,
	type Cell,
	isJudged,
	type Part,
	plainWords,
	type Report,
	type Section,
	type Words,
} from '../report.js';
import {escapeMarkdown} from './escape.js';

/** A report as Markdown for an e-mail: sentences and tables, no pictures. */
export function markdownOf({title, about, sections, foot}: Report): string {
	const parts = [
		`# ${text(title)}`,
		about.map(([name, value]) => `- ${escapeMarkdown(name)}: ${text(value)}`).join('\n'),
		...sections.flatMap(sectionText),
		'---',
		escapeMarkdown(foot),
	];
	return `${parts.join('\n\n')}\n`;
}

// Spaces before a line would make it a block of code.
const text = (words: Words): string => escapeMarkdown(plainWords(words).trim());

const sectionText = ({title, blocks, parts = []}: Section): string[] => [
	`## ${escapeMarkdown(title)}`,
	...blocks.flatMap(blockText),
	...parts.flatMap(partText),
];

const partText = ({title, blocks}: Part): string[] => [`### ${escapeMarkdown(title)}`, ...blocks.flatMap(blockText)];

function blockText(block: Block): string[] {
	switch (block.kind) {
		case 'line':
			return [block.tone === 'strong' ? bold(block.words) : text(block.words)];
		case 'notice':
		case 'verdict':
			return [bold(block.words)];
		case 'list':
			return [block.items.map((item) => `- ${text(item)}`).join('\n')];
		case 'table':
			return [bold(block.caption), tableText(block)];
		case 'facts':
			return [
				bold(block.caption),
				block.facts.map(([name, value]) => `- ${text(name)}: ${cellText(value)}`).join('\n'),
			];
		case 'findings':
			return block.findings.map(findingText);
		case 'picture':
			return block.isTold ? [] : [text(block.drawing.caption)];
	}
}

const bold = (words: Words): string => `**${text(words)}**`;

function tableText({head, rows}: Extract<Block, {kind: 'table'}>): string {
	const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
	return [
		line(head.map(escapeMarkdown)),
		line(head.map(() => '---')),
		...rows.map((cells) => line(cells.map(cellText))),
	].join('\n');
}

const cellText = (cell: Cell): string => text(isJudged(cell) ? cell.words : cell);

const findingText = ({found, likely, next, who}: IssuedFinding, index: number): string =>
	[
		`${index + 1}. ${bold(found)}`,
		...(likely === '' ? [] : [`   Likely: ${escapeMarkdown(likely)}.`]),
		`   Next (${escapeMarkdown(who)}): ${escapeMarkdown(next)}.`,
	].join('\n');
