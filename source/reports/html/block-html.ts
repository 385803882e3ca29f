import type {Tone} from '../../pages/shown-lines.js';
import type {AtWorst, Verdict} from '../../results/figures-types.js';
import type {IssuedFinding} from '../../results/issued.js';
import {reportWords} from '../../words/reports.js';
import {type Drawing, isJudged, type LineBlock, type Phrase, type ReportBlock, type TableCell} from '../report.js';
import {bandsSvg} from '../svg/bands-svg.js';
import {curveSvg} from '../svg/curve-svg.js';
import {historySvg} from '../svg/history-svg.js';
import {leverSvg} from '../svg/lever-svg.js';
import {markSvg, type Told} from '../svg/shapes.js';
import {escapeHtml, sentenceHtml} from './markup.js';

type Of<K extends ReportBlock['kind']> = Extract<ReportBlock, {kind: K}>;

/** A block as markup. @param id unique on the page, for what needs a name there */
export function blockHtml(block: ReportBlock, id: string): string {
	switch (block.kind) {
		case 'line':
			return lineHtml(block);
		case 'notice':
			return `<p class="notice ${block.tone}">${toneMark(block.tone)}<strong>${inline(block.phrase)}</strong></p>`;
		case 'verdict':
			return verdictHtml(block);
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

const lineHtml = ({phrase, tone}: LineBlock): string => `<p class="${tone}">${toneMark(tone)}${inline(phrase)}</p>`;

const verdictHtml = ({phrase, verdict, atWorst, beside = []}: Of<'verdict'>): string =>
	[
		`<div class="verdict ${colourOf(atWorst)}">`,
		`<p class="word">${markSvg(verdict)} <strong>${inline(phrase)}</strong></p>`,
		...beside.map(lineHtml),
		'</div>',
	].join('\n');

/** A table with no more rows is not torn apart where it is printed. */
const fewRows = 12;
/** A table with more columns is set row under row on a phone, each cell with the heading of its column. */
const fewColumns = 3;

function tableHtml({caption, head, rows}: Of<'table'>): string {
	const heads = head.map((text) => (text === '' ? '<td></td>' : `<th scope="col">${sentenceHtml(text)}</th>`));
	const isWide = head.length > fewColumns;
	const classes = [...(rows.length > fewRows ? [] : ['short']), ...(isWide ? ['wide'] : [])];
	return [
		classes.length === 0 ? '<table>' : `<table class="${classes.join(' ')}">`,
		`<caption>${inline(caption)}</caption>`,
		`<thead><tr>${heads.join('')}</tr></thead>`,
		bodyHtml(rows, isWide ? head : []),
		'</table>',
	].join('\n');
}

const factsHtml = ({caption, facts}: Of<'facts'>): string =>
	`<table class="facts">\n<caption>${inline(caption)}</caption>\n${bodyHtml(facts)}\n</table>`;

/** The rows of a table; each begins with its heading, and names its columns where that may be wanted. */
function bodyHtml(rows: readonly (readonly TableCell[])[], head: readonly string[] = []): string {
	const dataCell = (cell: TableCell, index: number): string => {
		const of = head[index + 1];
		return `<td${of === undefined ? '' : ` data-of="${escapeHtml(of)}"`}>${cellHtml(cell)}</td>`;
	};
	const lines = rows.map(
		([first = '', ...rest]) => `<tr><th scope="row">${cellHtml(first)}</th>${rest.map(dataCell).join('')}</tr>`,
	);
	return `<tbody>\n${lines.join('\n')}\n</tbody>`;
}

const findingsHtml = ({findings}: Of<'findings'>): string =>
	`<ol class="findings">\n${findings.map(findingHtml).join('\n')}\n</ol>`;

const findingHtml = ({found, likely}: IssuedFinding): string =>
	[
		'<li>',
		`<p><strong>${sentenceHtml(found)}</strong></p>`,
		...(likely === '' ? [] : [`<p>${sentenceHtml(reportWords.findings.likely({likely}))}</p>`]),
		'</li>',
	].join('');

const pictureHtml = ({title, drawing}: Of<'picture'>, id: string): string =>
	`<figure>\n${drawingSvg(drawing, {id, title, description: drawing.caption})}\n<figcaption>${sentenceHtml(title)}</figcaption>\n</figure>`;

/** Any drawing as a picture. */
function drawingSvg(drawing: Drawing, told: Told): string {
	switch (drawing.kind) {
		case 'bands':
			return bandsSvg(drawing, told);
		case 'curve':
			return curveSvg(drawing, told);
		case 'history':
			return historySvg(drawing, told);
		case 'lever':
			return leverSvg(drawing, told);
	}
}

/** A phrase as markup; what somebody typed keeps its own direction to itself. */
export function inline(phrase: Phrase): string {
	if (typeof phrase === 'string') return sentenceHtml(phrase);
	if ('typed' in phrase) return `<bdi>${escapeHtml(phrase.typed)}</bdi>`;
	return phrase.map(inline).join('');
}

/** The shape that goes with a tone that has a colour. */
const markOfTone: Readonly<Partial<Record<Tone, Verdict>>> = {good: 'good', warn: 'usable', bad: 'beyond'};

function toneMark(tone: Tone): string {
	const mark = markOfTone[tone];
	return mark ? `${markSvg(mark)} ` : '';
}

/** The colour that goes with a verdict at its worst; the shape and the words say it without. */
const colourOf = (atWorst: AtWorst): string => (atWorst === 'good' ? 'good' : atWorst === 'usable' ? 'warn' : 'bad');

const cellHtml = (cell: TableCell): string =>
	isJudged(cell)
		? `<span class="judged ${colourOf(cell.atWorst)}">${markSvg(cell.verdict)}<span>${inline(cell.phrase)}</span></span>`
		: inline(cell);
