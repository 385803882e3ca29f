import {radiusTable} from '../../pages/radius-lines.js';
import {figuresSoFar, notMeasured, noVerdictLines, zeroLine} from '../../pages/verdict-lines.js';
import type {AtWorst, Figures, RadiusFigures, Verdict} from '../../results/figures-types.js';
import {isKnownToCount} from '../../results/voids.js';
import {dayText} from '../../words/dates.js';
import {words} from '../../words/index.js';
import {reportWords} from '../../words/reports.js';
import {blocksOfShown} from '../blocks-of-shown.js';
import type {CheckSource} from '../check-source.js';
import {type LineBlock, type ReportBlock, type Section, sentenceBlock, type TableCell} from '../report.js';
import {answersOf} from './answers.js';
import {bandsBlock, deckNotice, overridesTable, practiceNotices, voidNotices} from './beside-verdict.js';

const {captions, columns, sections, verdict: said} = reportWords;

const names = {table: captions.radii, picture: captions.bands, isTold: true};

/** What a check came to: the verdict, its figures with limits, and what must be known beside it. */
export function verdictPart(source: CheckSource): Section {
	const {check, issued, nextCheck} = source.record;
	return {
		title: sections.verdict,
		blocks: [
			...practiceNotices(source),
			...voidNotices(source),
			...(issued
				? [verdictBlock(issued.figures, answersOf(source))]
				: [...blocksOfShown(noVerdictLines(check), names), ...answersOf(source)]),
			...deckNotice(source),
			...(issued ? figuresOfVerdict(source, issued.figures) : blocksOfShown(figuresSoFar(check), names)),
			...overridesTable(check),
			// What does not count gives no date either.
			...(nextCheck && !check.practice && isKnownToCount(source.voids)
				? [sentenceBlock(said.nextCheck({day: dayText(nextCheck.date), because: nextCheck.because}))]
				: []),
		],
	};
}

const verdictBlock = (figures: Figures, beside: readonly LineBlock[]): ReportBlock => ({
	kind: 'verdict',
	phrase: words.pages.verdict.headline(figures),
	verdict: figures.verdict,
	atWorst: figures.atWorst,
	beside,
});

const figuresOfVerdict = (source: CheckSource, {probe, ...figures}: Figures): ReportBlock[] => [
	...blocksOfShown([radiusTable(probe, source.record.check.limits)], names).map((block) => judgedTable(block, probe)),
	...blocksOfShown([...notMeasured(source.record.check), ...zeroLine(source.record.check, {probe, ...figures})], names),
	...bandsBlock(source, probe),
];

/** The table of the radii with the shape of each verdict; its last row, the limits, has none. */
function judgedTable(block: ReportBlock, probe: readonly RadiusFigures[]): ReportBlock {
	if (block.kind !== 'table') return block;
	return {
		...block,
		head: [columns.radius, ...block.head.slice(1)],
		rows: block.rows.map((cells, index) => judgedRow(cells, probe[index])),
	};
}

function judgedRow(cells: readonly TableCell[], figures: RadiusFigures | undefined): readonly TableCell[] {
	const [name = '', pull, band] = cells;
	if (!figures) return cells;
	const judged = (cell: TableCell | undefined, verdict: Verdict, atWorst: AtWorst): TableCell =>
		typeof cell === 'string' ? {phrase: cell, verdict, atWorst} : '';
	return [
		name,
		judged(pull, figures.pullVerdict, figures.pullAtWorst),
		judged(band, figures.bandVerdict, figures.bandAtWorst),
	];
}
