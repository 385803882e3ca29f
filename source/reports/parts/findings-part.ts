import {beforeAndAfter} from '../../pages/before-and-after.js';
import {biasLines} from '../../pages/bias/lines.js';
import {detailLines} from '../../pages/radius-lines.js';
import type {Issued} from '../../results/issued.js';
import {truthLines} from '../../teaching/truth-lines.js';
import {words} from '../../words/index.js';
import {reportWords} from '../../words/reports.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import type {Section} from '../report.js';

const {captions, sections} = reportWords;
const {setGaugeTo} = words.bias.setting.columns;

/** The hidden truth of an invented arm beside what was found. */
export const practicePart = ({record: {check, issued}}: CheckSource): Section[] =>
	check.practice
		? [{title: sections.hidden, blocks: blocksOfShown(truthLines(check, issued), {table: captions.hidden})}]
		: [];

/** What it means; what comes next stands beside the verdict. */
export const findingsPart = ({record: {issued}}: CheckSource): Section[] =>
	issued && issued.findings.length > 0
		? [
				{
					title: sections.findings,
					blocks: [{kind: 'findings', findings: issued.findings}],
				},
			]
		: [];

/** Earlier series beside the last one: what each remedy did. */
export function beforeAndAfterPart({record: {check, issued}}: CheckSource): Section[] {
	const shown = issued ? beforeAndAfter(check, issued.figures) : [];
	if (shown.length === 0) return [];
	return [{title: sections.beforeAndAfter, blocks: blocksOfShown(shown, {table: captions.beforeAndNow})}];
}

/** What the readings with the bias on came to; nothing where there are none. */
export function biasOnPart({record: {check}}: CheckSource): Section[] {
	const shown = biasLines(check);
	if (shown.length === 0) return [];
	const isToBeSet = shown.some((one) => one.kind === 'table' && one.head.includes(setGaugeTo));
	const table = isToBeSet ? captions.biasToBeSet({column: setGaugeTo}) : captions.bias;
	return [{title: sections.bias, blocks: blocksOfShown(shown, {table, picture: captions.curve})}];
}

/** The smaller figures, for those who want to know more. */
export const detailsPart = ({figures}: Issued): Section => ({
	title: sections.details,
	blocks: blocksOfShown(detailLines(figures)),
});
