import type {Check} from '../../check/check.js';
import {overriddenIn} from '../../pages/verdict-lines.js';
import {type Block, typed} from '../report.js';

/** What was gone past although it did not pass, with the reasons; it stays beside the verdict for good. */
export function overridesTable(check: Check): Block[] {
	const overridden = overriddenIn(check);
	if (overridden.length === 0) return [];
	return [
		{
			kind: 'table',
			caption: 'Overridden: gone on although it did not pass',
			head: ['step', 'what did not pass', 'reason given', 'state'],
			rows: overridden.map(({title, sentence, reason, series, holds}) => [
				title,
				sentence,
				typed(reason),
				holds ? 'still\u00A0so' : `earlier, in series ${series}`,
			]),
		},
	];
}
