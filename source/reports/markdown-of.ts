import type {IssuedFinding} from '../results/issued.js';
import {visibleText} from '../visible-text.js';
import {heldTogether} from '../words/held-together.js';
import {reportWords} from '../words/reports.js';
import {
	isJudged,
	type Phrase,
	phraseWith,
	type Report,
	type ReportBlock,
	type ReportPart,
	type Section,
	type TableCell,
} from './report.js';

// What can begin markup anywhere in a line (CommonMark 0.31, section 2.4; tables and strikethrough of GitHub's dialect).
const MARKUP = /[\\`*_[\]<>&#|~$]/g;
// What can begin a list, a rule or an underlined heading at the start of a line; a number like 4.5 or -3 does not.
const LINE_START = /^([-+=](?=[-+=\s]|$)|\d+(?=[.)](?:\s|$)))/;

/** Any text as it may stand in Markdown: it is shown as it is, and nothing in it is markup. */
export const escapeMarkdown = (text: string): string =>
	visibleText(text)
		.replaceAll(MARKUP, '\\$&')
		.replace(LINE_START, (start) => (/\d/.test(start) ? `${start}\\` : `\\${start}`));

/** A report as Markdown for an e-mail: sentences and tables, no pictures. */
export function markdownOf({title, about, sheet = [], sections, foot}: Report): string {
	const parts = [
		`# ${plain(title)}`,
		about.map(([name, value]) => `- ${escapeMarkdown(name)}: ${plain(value)}`).join('\n'),
		...(sheet.length > 0 ? [...sheet.flatMap(sectionText), '---'] : []),
		...sections.flatMap(sectionText),
		'---',
		escapeMarkdown(foot),
	];
	return `${parts.join('\n\n')}\n`;
}

// Spaces before a line would make it a block of code.
const plain = (phrase: Phrase): string => escapeMarkdown(phraseWith(phrase, heldTogether).trim());

const sectionText = ({title, blocks, parts = []}: Section): string[] => [
	`## ${escapeMarkdown(title)}`,
	...blocks.flatMap(blockText),
	...parts.flatMap(partText),
];

const partText = ({title, blocks}: ReportPart): string[] => [
	`### ${escapeMarkdown(title)}`,
	...blocks.flatMap(blockText),
];

function blockText(block: ReportBlock): string[] {
	switch (block.kind) {
		case 'line':
			return [block.tone === 'strong' ? strong(block.phrase) : plain(block.phrase)];
		case 'notice':
			return [strong(block.phrase)];
		case 'verdict':
			return [strong(block.phrase), ...(block.beside ?? []).map(({phrase}) => plain(phrase))];
		case 'list':
			return [block.items.map((item) => `- ${plain(item)}`).join('\n')];
		case 'table':
			return [strong(block.caption), tableText(block)];
		case 'facts':
			return [
				strong(block.caption),
				block.facts.map(([name, value]) => `- ${plain(name)}: ${cellText(value)}`).join('\n'),
			];
		case 'findings':
			return block.findings.map(findingText);
		case 'picture':
			return block.isTold ? [] : [plain(block.drawing.caption)];
	}
}

const strong = (phrase: Phrase): string => `**${plain(phrase)}**`;

function tableText({head, rows}: Extract<ReportBlock, {kind: 'table'}>): string {
	const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
	return [
		line(head.map(escapeMarkdown)),
		line(head.map(() => '---')),
		...rows.map((cells) => line(cells.map(cellText))),
	].join('\n');
}

const cellText = (cell: TableCell): string => plain(isJudged(cell) ? cell.phrase : cell);

const findingText = ({found, likely}: IssuedFinding, index: number): string =>
	[
		`${index + 1}. ${strong(found)}`,
		...(likely === '' ? [] : [`   ${plain(reportWords.findings.likely({likely}))}`]),
	].join('\n');
