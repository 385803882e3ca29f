import {answerOf, type Check} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {factsOfSeries, type Progress, progressOf} from '../check/progress.js';
import {openSeries} from '../check/series.js';
import {shownAtIn} from '../check/short-series.js';
import {documentOfCheck, partialDocument, seriesThatCounts} from '../results/document-of-check.js';
import {type Figures, figuresOf, isMeasured} from '../results/figures.js';
import type {Issued} from '../results/issued.js';
import type {NextAction} from '../results/next-action.js';
import {briefly} from '../words/finding-text.js';
import {words} from '../words/index.js';
import {overriddenText, reasonText} from '../words/says.js';
import {titleOf} from '../words/step-text.js';
import {bandsShown, judgedTone, lastBands} from './band-rows.js';
import {beforeAndAfter, earlierRows, lastOutcome, remedyLines} from './before-and-after.js';
import {biasLines} from './bias/lines.js';
import {decidingFigure} from './deciding-figure.js';
import {issuedOf} from './issued.js';
import {actionLines, besideAction} from './next-action.js';
import {zeroText} from './on-gauge.js';
import {detailLines, radiusTable} from './radius-lines.js';
import {line, type Shown, unheard} from './shown-lines.js';
import {yearsOf} from './years/years-lines.js';

const {verdict} = words.pages;

/**
 * Everything that a check came to, in the order in which a technician wants it; a filed one as it was issued.
 *
 * @param action what is to be done now, while a check goes on: a voice tells that, and the details once it is filed
 */
export function verdictLines(
	check: Check,
	issued: Issued | null = issuedOf(check),
	history: readonly PastCheck[] = [],
	progress: Progress = progressOf(check),
	action?: NextAction,
): readonly Shown[] {
	const open = openSeries(check);
	if (action && !check.stopped && shownAtIn(check, open))
		return [...remedyLines(check, open, action), ...overrideLines(check, progress)];
	if (!issued) return [...noVerdictLines(check), ...overrideLines(check, progress), ...figuresSoFar(check)];
	const {figures, findings} = issued;
	const years = yearsOf(check, history, issued);
	// Whether anything changed since the last check is told first, by how much further down.
	const [change, ...changes] = years?.changes ?? [];
	return [
		line(headlineOf(issued), judgedTone(figures.verdict, figures.atWorst)),
		...(change ? [change] : []),
		...notMeasured(check),
		...lastOutcome(check),
		// What is to be done, and its caution, come before what bears it out: on a small screen that is a page further.
		...actionLines(findings, action),
		...overrideLines(check, progress),
		...(action ? decidingFigure(figures.probe, check.limits) : []),
		...bandsShown(figures.probe, check.limits, [...earlierRows(check), ...lastBands(history)]).map(unheard),
		{...radiusTable(figures.probe, check.limits), leaf: verdict.numbers},
		...besideAction(findings),
		...(figures.probe.some(({repeatability}) => repeatability === 'assumed')
			? [line(words.results.repeatabilityAssumed, 'aside')]
			: []),
		...zeroLine(check, figures),
		...(issued.form === 1 ? [] : setAnewLine(check)),
		...changes,
		...biasLines(check),
		...beforeAndAfter(check, figures),
		...(years ? [line(verdict.overYears, 'strong'), ...years.trend, ...years.pictures] : []),
		...(action ? detailLines(figures).map(unheard) : detailLines(figures)),
	];
}

/** The word, and what the arm does. */
const headlineOf = ({figures: {verdict: found, atWorst}, findings: [first]}: Issued): string =>
	verdict.told({verdict: found, atWorst, does: first && briefly(first)});

/** A check that was stopped in a series that was begun only: the figures are those of the one before. */
export function notMeasured(check: Check): Shown[] {
	if (!check.stopped || documentOfCheck(check, openSeries(check)).ok) return [];
	return [line(verdict.lastNotMeasured, 'warn')];
}

/** That there is no verdict, and why. */
export function noVerdictLines(check: Check): Shown[] {
	const found = documentOfCheck(check);
	return [line(verdict.none, 'strong'), ...(found.ok ? [] : [line(words.results.missing[found.missing])])];
}

/** What was measured in a check that came to no verdict. */
export function figuresSoFar(check: Check): Shown[] {
	const document = partialDocument(factsOfSeries(check, openSeries(check)));
	const probe = document ? figuresOf(document).probe : [];
	return [
		...(probe.length > 0 ? [radiusTable(probe, check.limits)] : []),
		...bandsShown(probe, check.limits).map(unheard),
	];
}

/** Something that was gone past although it did not pass. */
export type Overridden = {
	readonly step: string;
	readonly title: string;
	/** What did not pass. */
	readonly sentence: string;
	readonly reason: string;
	readonly series: number;
	/** Still so; else it was put right later. */
	readonly holds: boolean;
};

/** What was gone past, in order; it stays beside the verdict for good, also where it no longer holds. */
export function overriddenIn(check: Check, progress?: Progress): readonly Overridden[] {
	if (check.overrides.length === 0) return [];
	const {visible, stateOf} = progress ?? progressOf(check);
	return check.overrides.map((given) => {
		const {step: id, at, series} = given;
		const step = visible.find((one) => one.id === id);
		const holds = step !== undefined && stateOf(step) === 'overridden' && answerOf(check, id)?.override?.at === at;
		const [sentence, reason] = [overriddenText(given), reasonText(given.reason)];
		return {step: id, title: titleOf(id), sentence, reason, series, holds};
	});
}

/** What was gone past, in sentences. */
const overrideLines = (check: Check, progress?: Progress): Shown[] =>
	overriddenIn(check, progress).map((one) => line(verdict.overridden(one), one.holds ? 'warn' : 'plain'));

/** What is known of the zero of the gauge. */
export const zeroLine = (check: Check, {zero}: Figures): Shown[] => [
	line(zeroText(zero, factsOfSeries(check, seriesThatCounts(check))), zero.source === 'unchecked' ? 'warn' : 'aside'),
];

/** What it costs that the gauge was not set anew for each round; nothing where it was. */
function setAnewLine(check: Check): Shown[] {
	if (check.setAnew) return [];
	const found = documentOfCheck(check);
	if (!found.ok) return [];
	const {document} = found;
	const anew = figuresOf({...document, gauge: {...document.gauge, setAnew: true}});
	const costs = figuresOf(document).probe.flatMap((one, index) => {
		const other = anew.probe[index];
		return isMeasured(one) && other && isMeasured(other)
			? [{radiusMm: one.radiusMm, isPct: one.pullUncertaintyPct, couldBePct: other.pullUncertaintyPct}]
			: [];
	});
	return costs.length === 0 ? [] : [line(verdict.notSetAnew({costs}), 'aside')];
}
