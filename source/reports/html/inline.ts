import type {AtWorst} from '../../results/figures-types.js';
import {type Cell, isJudged, type Words} from '../report.js';
import {markSvg} from '../svg/mark-svg.js';
import {escapeHtml} from './escape.js';

/** Words as markup; what somebody typed keeps its own direction to itself. */
export function inline(words: Words): string {
	if (typeof words === 'string') return escapeHtml(words);
	if ('typed' in words) return `<bdi>${escapeHtml(words.typed)}</bdi>`;
	return words.map(inline).join('');
}

/** The colour that goes with a verdict at its worst; the shape and the words say it without. */
export const colourOf = (atWorst: AtWorst): string =>
	atWorst === 'good' ? 'good' : atWorst === 'usable' ? 'warn' : 'bad';

export const cellHtml = (cell: Cell): string =>
	isJudged(cell)
		? `<span class="judged ${colourOf(cell.atWorst)}">${markSvg(cell.verdict)}<span>${inline(cell.words)}</span></span>`
		: inline(cell);
