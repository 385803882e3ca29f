import {visibleText} from '../../visible-text.js';
import {reportWords} from '../../words/reports.js';
import {phraseText, type Report, type ReportBlock, type ReportPart, type Section} from '../report.js';
import {blockHtml, inline} from './block-html.js';
import {escapeHtml} from './markup.js';
import {pageStyle} from './style.js';

/** A report as one HTML page that needs nothing else: no script, no outside resource. */
export function htmlOf(report: Report): string {
	const {title, running, about, sheet = [], sections, foot} = report;
	return [
		'<!DOCTYPE html>',
		`<html lang="${reportWords.language}">`,
		'<head>',
		'<meta charset="utf-8">',
		`<title>${titleHtml(phraseText(title))}</title>`,
		'<meta name="viewport" content="width=device-width, initial-scale=1">',
		'<meta name="color-scheme" content="light dark">',
		// Should anything ever slip through the escaping, a browser still loads and runs nothing.
		`<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
		`<style>${pageStyle(running)}</style>`,
		'</head>',
		'<body>',
		'<header>',
		`<h1>${inline(title)}</h1>`,
		`<dl class="about">\n${about.map(([name, value]) => `<div><dt>${escapeHtml(name)}</dt><dd>${inline(value)}</dd></div>`).join('\n')}\n</dl>`,
		'</header>',
		'<main>',
		...(sheet.length > 0
			? ['<div class="sheet">', ...sheet.map((one, index) => sectionHtml(one, `c${index + 1}`)), '</div>']
			: []),
		...sections.map((one, index) => sectionHtml(one, `s${index + 1}`)),
		'</main>',
		`<footer><p>${escapeHtml(foot)}</p></footer>`,
		'</body>',
		'</html>',
		'',
	].join('\n');
}

function sectionHtml({title, blocks, parts = []}: Section, id: string): string {
	return [
		`<section aria-labelledby="${id}">`,
		`<h2 id="${id}">${escapeHtml(title)}</h2>`,
		...blocksHtml(blocks, id),
		...parts.map((part, number) => partHtml(part, `${id}-${number + 1}`)),
		'</section>',
	].join('\n');
}

const partHtml = ({title, blocks}: ReportPart, id: string): string =>
	[`<div class="part">`, `<h3>${escapeHtml(title)}</h3>`, ...blocksHtml(blocks, id), '</div>'].join('\n');

/** What is narrow stands side by side where there is room. */
const sideBySide: Readonly<Partial<Record<ReportBlock['kind'], string>>> = {picture: 'pictures', facts: 'columns'};

function blocksHtml(blocks: readonly ReportBlock[], id: string): string[] {
	return blocks.flatMap((block, index) => {
		const html = blockHtml(block, `${id}-b${index + 1}`);
		const group = sideBySide[block.kind];
		const isFirst = group !== undefined && blocks[index - 1]?.kind !== block.kind;
		const isLast = group !== undefined && blocks[index + 1]?.kind !== block.kind;
		return [...(isFirst ? [`<div class="${group}">`] : []), html, ...(isLast ? ['</div>'] : [])];
	});
}

/** Search results and window titles show no more; the page itself has the whole. */
const longestTitle = 70;

/** A title cut between what a reader sees as letters; its length is that of the markup. */
function titleHtml(title: string): string {
	const letters = [...new Intl.Segmenter().segment(visibleText(title))].map(({segment}) => escapeHtml(segment));
	if (letters.join('').length <= longestTitle) return letters.join('');
	let kept = '';
	for (const letter of letters) {
		if (kept.length + letter.length >= longestTitle) break;
		kept += letter;
	}
	return `${kept.trimEnd()}…`;
}
