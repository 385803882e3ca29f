import {biasLines} from '../../findings/bias/lines.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import type {Section} from '../report.js';

/** What the readings with the bias on came to; nothing where there are none. */
export function biasPart({record: {check}}: CheckSource): Section[] {
	const shown = biasLines(check);
	if (shown.length === 0) return [];
	const names = {table: 'Bias by radius, percent of the playing force', picture: 'Wanted reading over the record'};
	return [{title: 'Bias against skating', blocks: blocksOfShown(shown, names)}];
}
