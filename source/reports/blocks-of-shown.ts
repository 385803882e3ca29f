import type {Shown} from '../pages/shown-lines.js';
import {type Block, sentence, type Words} from './report.js';

type Names = {
	/** Caption of a table that has no heading line before it. */
	readonly table: Words;
	/** Title over a picture. */
	readonly picture: string;
	/** The figures of its pictures stand in tables too. */
	readonly isTold?: boolean;
};

/** What a screen would show, as blocks of a report. A heading line right before a table becomes its caption. */
export function blocksOfShown(shown: readonly Shown[], names: Names): Block[] {
	return shown.flatMap((one, index) => {
		const [before, after] = [shown[index - 1], shown[index + 1]];
		if (isHeading(one) && after?.kind === 'table') return [];
		return [blockOf(one, isHeading(before) ? before.text : names.table, names)];
	});
}

type Line = Extract<Shown, {kind: 'line'}>;

const isHeading = (one: Shown | undefined): one is Line => one?.kind === 'line' && one.tone === 'strong';

function blockOf(one: Shown, caption: Words, {picture, isTold = false}: Names): Block {
	switch (one.kind) {
		case 'line':
			return sentence(one.text, one.tone);
		case 'table':
			return {kind: 'table', caption, head: one.head, rows: one.rows};
		case 'history':
			return {kind: 'picture', title: one.label, drawing: one, isTold};
		case 'bands':
		case 'curve':
		case 'lever':
			return {
				kind: 'picture',
				title: one.kind === 'lever' ? 'The lever on its clock face' : picture,
				drawing: one,
				isTold,
			};
		case 'window':
		case 'gauged-arm':
		case 'plan':
			return sentence(one.caption);
	}
}
