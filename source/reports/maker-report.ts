import {noVerdictLines} from '../pages/verdict-lines.js';
import {documentOfCheck} from '../results/document-of-check.js';
import type {Document} from '../results/document-schema.js';
import {isMeasured, type MeasuredRadius, type RadiusFigures} from '../results/figures-types.js';
import type {Issued} from '../results/issued.js';
import {sideForce} from '../words/figure-text.js';
import {span} from '../words/numbers.js';
import {reportWords} from '../words/reports.js';
import {placeLabel} from '../words/step-text.js';
import {blocksOfShown} from './blocks-of-shown.js';
import type {CheckSource, Imprint} from './check-source.js';
import {aboutCheck, armName, imprinted, runningHead} from './parts/about.js';
import {bandsBlock, deckNotice, overridesTable, practiceNotices, voidNotices} from './parts/beside-verdict.js';
import {conditionsPart} from './parts/conditions-part.js';
import {beforeAndAfterPart} from './parts/findings-part.js';
import {methodPart} from './parts/method-part.js';
import {readingsPart} from './parts/readings-part.js';
import {ruledOutPart} from './parts/ruled-out-part.js';
import {yearsPart} from './parts/years-part.js';
import {around, type Report, type ReportBlock, type Section, sentenceBlock, type TableCell} from './report.js';

const {about, captions, maker, sections, titles} = reportWords;

/** What a maker needs to judge a repair: what was measured, how, and what was ruled out; no word on blame. */
export function makerReport(source: CheckSource, imprint: Imprint): Report {
	const {check, issued} = source.record;
	const isPractice = check.practice !== undefined;
	return {
		title: around(armName(check), (arm) => titles.maker({arm, isPractice})),
		running: runningHead(armName(check), check),
		about: aboutCheck(check),
		sections: [
			measuredPart(source),
			...(issued ? [ruledOutPart(check, issued.figures)] : []),
			...beforeAndAfterPart(source),
			...readingsPart(check),
			...yearsPart(source),
			conditionsPart(check),
			methodPart(check, issued),
		],
		foot: about.foot(imprinted(imprint, check)),
	};
}

function measuredPart(source: CheckSource): Section {
	const {check, issued} = source.record;
	return {
		title: sections.measured,
		blocks: [
			...practiceNotices(source),
			...voidNotices(source),
			...deckNotice(source),
			sentenceBlock(maker.purpose),
			...(issued ? issuedFigures(source, issued) : blocksOfShown(noVerdictLines(check))),
			...overridesTable(check),
		],
	};
}

function issuedFigures(source: CheckSource, {figures, findings}: Issued): ReportBlock[] {
	const found = documentOfCheck(source.record.check);
	return [
		...(found.ok ? [figuresTable(figures.probe, found.document)] : []),
		...bandsBlock(source, figures.probe),
		...(findings.length === 0
			? []
			: [sentenceBlock(maker.inWords, 'strong'), {kind: 'list', items: findings.map((one) => one.found)} as const]),
	];
}

/** One column a radius, so that the table stays narrow. */
function figuresTable(probe: readonly RadiusFigures[], document: Document): ReportBlock {
	return {
		kind: 'table',
		caption: captions.figures,
		head: ['', ...probe.map(({place, radiusMm}) => maker.radius({place: placeLabel(place), radiusMm}))],
		rows: linesFor(document).map(([line, of]) => [
			maker.figures[line],
			...probe.map((one): TableCell => (isMeasured(one) ? of(one) : maker.offScale)),
		]),
	};
}

type FigureLine = readonly [line: keyof typeof maker.figures, of: (figures: MeasuredRadius) => string];

function linesFor({arm, trackingForce: {playingMn}, probe}: Document): readonly FigureLine[] {
	const mn = (pct: number) => (pct / 100) * playingMn;
	return [
		['pull', ({pullPct, pullUncertaintyPct}) => sideForce(pullPct, pullUncertaintyPct)],
		['force', ({pullPct, pullUncertaintyPct}) => maker.force({mn: mn(pullPct), uncertaintyMn: mn(pullUncertaintyPct)})],
		[
			'torque',
			({torqueMicroNm, pullUncertaintyPct}) =>
				maker.torque({
					microNm: torqueMicroNm,
					uncertaintyMicroNm: mn(pullUncertaintyPct) * arm.effectiveLengthMm,
				}),
		],
		[
			'tiltShare',
			({tiltSharePct, tiltShareUncertaintyPct}) =>
				tiltSharePct === null ? maker.notKnown : sideForce(tiltSharePct, tiltShareUncertaintyPct ?? 0),
		],
		['band', ({bandPct, bandUncertaintyPct}) => span(bandPct, bandUncertaintyPct)],
		['breakaway', ({breakawayPct, bandUncertaintyPct}) => span(breakawayPct, bandUncertaintyPct / 2)],
		['rounds', ({radiusMm}) => String(probe.find((one) => one.radiusMm === radiusMm)?.rounds.length ?? 0)],
	];
}
