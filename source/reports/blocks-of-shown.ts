import type {Shown} from '../pages/shown-lines.js';
import {reportWords} from '../words/reports.js';
import {type Phrase, type ReportBlock, sentenceBlock} from './report.js';

type Names = {
	/** Caption of a table that has no heading line before it. */
	readonly table?: Phrase;
	/** Title over a picture that has none of its own. */
	readonly picture?: string;
	/** The figures of its pictures stand in tables too. */
	readonly isTold?: boolean;
};

/** What a screen would show, as blocks of a report. A heading line right before a table becomes its caption. */
export function blocksOfShown(shown: readonly Shown[], names: Names = {}): ReportBlock[] {
	return shown.flatMap((one, index) => {
		const [before, after] = [shown[index - 1], shown[index + 1]];
		if (isHeading(one) && after?.kind === 'table') return [];
		return [blockOf(one, isHeading(before) ? {...names, table: before.text} : names)];
	});
}

const isHeading = (one: Shown | undefined): one is Extract<Shown, {kind: 'line'}> =>
	one?.kind === 'line' && one.tone === 'strong';

function blockOf(one: Shown, {table = '', picture = '', isTold = false}: Names): ReportBlock {
	switch (one.kind) {
		case 'line':
			return sentenceBlock(one.text, one.tone);
		case 'table':
			return {kind: 'table', caption: table, head: one.head, rows: one.rows};
		case 'history':
			return {kind: 'picture', title: one.label, drawing: one, isTold};
		case 'lever':
			return {kind: 'picture', title: reportWords.captions.lever, drawing: one, isTold};
		case 'bands':
		case 'curve':
			return {kind: 'picture', title: picture, drawing: one, isTold};
		case 'clearance':
		case 'friction':
		case 'figure':
		case 'countdown':
		case 'level':
		case 'deck':
		case 'gauged-arm':
		case 'plan':
			return sentenceBlock(one.caption);
	}
}
