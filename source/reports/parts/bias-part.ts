import {biasLines} from '../../pages/bias/lines.js';
import {words} from '../../words/index.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import type {Section} from '../report.js';

/** What the readings with the bias on came to; nothing where there are none. */
export function biasPart({record: {check}}: CheckSource): Section[] {
	const shown = biasLines(check);
	if (shown.length === 0) return [];
	const {setGaugeTo: gaugeColumn} = words.bias.setting.columns;
	const isToBeSet = shown.some((one) => one.kind === 'table' && one.head.includes(gaugeColumn));
	const table = `Bias by radius, percent of the playing force${isToBeSet ? `; '${gaugeColumn}' is what this gauge itself shows in the middle of both limits` : ''}`;
	const names = {table, picture: 'Wanted reading over the record, percent of the playing force'};
	return [{title: 'Bias against skating', blocks: blocksOfShown(shown, names)}];
}
