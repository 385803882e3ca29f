import type {IssuedFinding} from '../../results/issued.js';
import type {Block, Cell} from '../report.js';
import {drawingSvg} from '../svg/drawing-svg.js';
import {markSvg} from '../svg/mark-svg.js';
import {escapeHtml} from './escape.js';
import {cellHtml, colourOf, inline} from './inline.js';

type Of<K extends Block['kind']> = Extract<Block, {kind: K}>;

/** A block as markup. @param id unique on the page, for what needs a name there */
export function blockHtml(block: Block, id: string): string {
	switch (block.kind) {
		case 'line':
			return `<p class="${block.tone}">${inline(block.words)}</p>`;
		case 'notice':
			return `<p class="notice ${block.tone}"><strong>${inline(block.words)}</strong></p>`;
		case 'verdict':
			return `<p class="verdict ${colourOf(block.atWorst)}">${markSvg(block.verdict)} <strong>${inline(block.words)}</strong></p>`;
		case 'list':
			return `<ul>\n${block.items.map((item) => `<li>${inline(item)}</li>`).join('\n')}\n</ul>`;
		case 'table':
			return tableHtml(block);
		case 'facts':
			return factsHtml(block);
		case 'findings':
			return findingsHtml(block);
		case 'picture':
			return pictureHtml(block, id);
	}
}

/** A table with no more rows is not torn apart where it is printed. */
const fewRows = 12;

function tableHtml({caption, head, rows}: Of<'table'>): string {
	const heads = head.map((text) => (text === '' ? '<td></td>' : `<th scope="col">${escapeHtml(text)}</th>`));
	return [
		rows.length > fewRows ? '<table>' : '<table class="short">',
		`<caption>${inline(caption)}</caption>`,
		`<thead><tr>${heads.join('')}</tr></thead>`,
		bodyHtml(rows),
		'</table>',
	].join('\n');
}

const factsHtml = ({caption, facts}: Of<'facts'>): string =>
	`<table class="facts">\n<caption>${inline(caption)}</caption>\n${bodyHtml(facts)}\n</table>`;

/** The rows of a table; each begins with its heading. */
function bodyHtml(rows: readonly (readonly Cell[])[]): string {
	const lines = rows.map(
		([first = '', ...rest]) =>
			`<tr><th scope="row">${cellHtml(first)}</th>${rest.map((cell) => `<td>${cellHtml(cell)}</td>`).join('')}</tr>`,
	);
	return `<tbody>\n${lines.join('\n')}\n</tbody>`;
}

const findingsHtml = ({findings}: Of<'findings'>): string =>
	`<ol class="findings">\n${findings.map(findingHtml).join('\n')}\n</ol>`;

const findingHtml = ({found, likely, next, who}: IssuedFinding): string =>
	[
		'<li>',
		`<p><strong>${escapeHtml(found)}</strong></p>`,
		...(likely === '' ? [] : [`<p>Likely: ${escapeHtml(likely)}.</p>`]),
		`<p><span class="who">${escapeHtml(who)}</span> Next: ${escapeHtml(next)}.</p>`,
		'</li>',
	].join('');

const pictureHtml = ({title, drawing}: Of<'picture'>, id: string): string =>
	`<figure>\n${drawingSvg(drawing, {id, title})}\n<figcaption>${escapeHtml(title)}</figcaption>\n</figure>`;
