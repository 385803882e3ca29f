import {radiusTable} from '../../pages/radius-lines.js';
import {figuresSoFar, notMeasured, noVerdictLines, zeroLine} from '../../pages/verdict-lines.js';
import {dayText} from '../../pages/years/day-text.js';
import type {AtWorst, Figures, RadiusFigures, Verdict} from '../../results/figures-types.js';
import {words} from '../../words/index.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import {type Block, type Cell, type Section, sentence} from '../report.js';
import {bandsBlock} from './bands-block.js';
import {deckNotice, voidNotices} from './notices.js';
import {overridesTable} from './overrides-part.js';
import {practiceNotices} from './practice-part.js';

const names = {
	table: 'Side pull and hold band, percent of the playing force, each with its ± for 95 %',
	picture: 'Hold bands',
	isTold: true,
};

/** What a check came to: the verdict, its figures with limits, and what must be known beside it. */
export function verdictPart(source: CheckSource): Section {
	const {check, issued, nextCheck} = source.record;
	return {
		title: 'Verdict',
		blocks: [
			...practiceNotices(source),
			...voidNotices(source),
			...(issued ? [verdictBlock(issued.figures)] : blocksOfShown(noVerdictLines(check), names)),
			...deckNotice(source),
			...(issued ? figuresOfVerdict(source, issued.figures) : blocksOfShown(figuresSoFar(check), names)),
			...overridesTable(check),
			// What does not count gives no date either.
			...(nextCheck && !check.practice && !source.voids?.voided
				? [sentence(`Next check: ${dayText(nextCheck.date)}. ${nextCheck.because}`)]
				: []),
		],
	};
}

const verdictBlock = (figures: Figures): Block => ({
	kind: 'verdict',
	words: words.pages.verdict.headline(figures),
	verdict: figures.verdict,
	atWorst: figures.atWorst,
});

const figuresOfVerdict = (source: CheckSource, {probe, ...figures}: Figures): Block[] => [
	...blocksOfShown([radiusTable(probe, source.record.check.limits)], names).map((block) => judgedTable(block, probe)),
	...blocksOfShown([...notMeasured(source.record.check), ...zeroLine(source.record.check, {probe, ...figures})], names),
	...bandsBlock(source, probe),
];

/** The table of the radii with the shape of each verdict; its last row, the limits, has none. */
function judgedTable(block: Block, probe: readonly RadiusFigures[]): Block {
	if (block.kind !== 'table') return block;
	return {
		...block,
		head: ['radius', ...block.head.slice(1)],
		rows: block.rows.map((cells, index) => judgedRow(cells, probe[index])),
	};
}

function judgedRow(cells: readonly Cell[], figures: RadiusFigures | undefined): readonly Cell[] {
	const [name = '', pull, band] = cells;
	if (!figures) return cells;
	const judged = (cell: Cell | undefined, verdict: Verdict, atWorst: AtWorst): Cell =>
		typeof cell === 'string' ? {words: cell, verdict, atWorst} : '';
	return [
		name,
		judged(pull, figures.pullVerdict, figures.pullAtWorst),
		judged(band, figures.bandVerdict, figures.bandAtWorst),
	];
}
