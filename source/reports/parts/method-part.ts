import type {Check} from '../../check/check.js';
import {factsOfSeries} from '../../check/progress.js';
import {showsHandForce} from '../../procedure/readings.js';
import {documentOfCheck, seriesThatCounts} from '../../results/document-of-check.js';
import type {Document} from '../../results/document-schema.js';
import {type Figures, isMeasured} from '../../results/figures-types.js';
import type {Issued} from '../../results/issued.js';
import {reportWords} from '../../words/reports.js';
import {type Phrase, type ReportBlock, type ReportPart, type Section, sentenceBlock} from '../report.js';

const {captions, limitsOfMethod, method, sections} = reportWords;
const {budget} = method;

/** How it was measured and how sure it is, in plain words, for a reader who was not at the bench. */
export const methodPart = (check: Check, issued: Issued | null): Section => ({
	title: sections.method,
	blocks: [],
	parts: [
		howMeasured(check),
		whatFiguresMean(check),
		howSure(check, issued),
		{title: sections.limitsOfMethod, blocks: [list(limitsOfMethod)]},
	],
});

const list = (items: readonly Phrase[]): ReportBlock => ({kind: 'list', items});

function howMeasured(check: Check): ReportPart {
	const isOfHand = showsHandForce(factsOfSeries(check, seriesThatCounts(check)));
	return {
		title: sections.howMeasured,
		blocks: [method.gauge, method.readings({isOfHand}), method.series].map((one) => sentenceBlock(one)),
	};
}

const whatFiguresMean = ({limits: {pullGoodPct, pullUsablePct, bandGoodPct, bandUsablePct}}: Check): ReportPart => ({
	title: sections.figures,
	blocks: [
		list([
			method.sidePull({goodPct: pullGoodPct, usablePct: pullUsablePct}),
			method.holdBand({goodPct: bandGoodPct, usablePct: bandUsablePct}),
			method.tiltShare,
			method.percent,
		]),
	],
});

function howSure(check: Check, issued: Issued | null): ReportPart {
	const found = documentOfCheck(check);
	return {
		title: sections.howSure,
		blocks: [
			sentenceBlock(method.intervals),
			...(issued?.form === 1 ? [sentenceBlock(method.issuedBefore)] : []),
			...(found.ok && issued && issued.form === undefined ? [budgetTable(found.document, issued.figures)] : []),
			sentenceBlock(method.squares),
		],
	};
}

/** What went into the ±, as it was stated or found. */
function budgetTable({gauge, trackingForce}: Document, {probe, zero}: Figures): ReportBlock {
	const {unit} = gauge;
	const inGauge = (value = 0) => budget.inGauge({value, unit});
	const ofFigure = (pct = 0) => budget.ofFigure({pct});
	const isPooled = probe.some((one) => isMeasured(one) && one.repeatability === 'pooled');
	const zeroIs = {
		turned: budget.zeroTurned,
		stated: budget.zeroStated({value: gauge.zeroUncertainty ?? 0, unit}),
		unchecked: budget.zeroUnchecked,
	}[zero.source];
	return {
		kind: 'facts',
		caption: captions.budget,
		facts: [
			[budget.step, inGauge(gauge.step)],
			[budget.nudge, inGauge(gauge.nudge)],
			[budget.zero, zeroIs],
			[budget.scale, ofFigure(gauge.relativeUncertaintyPct)],
			// With a percent gauge the gain of the stylus scale cancels.
			...(unit === 'percent' ? [] : [[budget.force, ofFigure(trackingForce.relativeUncertaintyPct)] as const]),
			[budget.repeats, isPooled ? budget.repeatsPooled : budget.repeatsAssumed],
			[budget.settingUp, gauge.setAnew ? budget.setAnew : budget.notSetAnew],
		],
	};
}
