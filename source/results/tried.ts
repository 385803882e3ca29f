import type {Check, Series} from '../check/check.js';
import {factsOfSeries} from '../check/progress.js';
import {openSeries, remediesIn, remedyAfter} from '../check/series.js';
import {shownAtIn} from '../check/short-series.js';
import {remedyById} from '../procedure/remedies.js';
import {findingsOf} from './diagnose.js';
import {documentOfCheck, partialDocument, seriesThatCounts} from './document-of-check.js';
import type {Document} from './document-schema.js';
import {type Figures, figuresOf} from './figures.js';
import {outcomeOfRemedy, type SuspectOutcome} from './foretold.js';
import {type ActionCase, type NextAction, nextActionOf} from './next-action.js';

/** Figures of a series, where it has any. */
export function figuresOfSeries(check: Check, series: Series): Figures | undefined {
	const found = documentOfCheck(check, series);
	return found.ok ? figuresOf(found.document) : undefined;
}

const isDocument = (one: Document | undefined): one is Document => one !== undefined;

/** What was read of a series, be it at one radius only. */
const readOf = (check: Check, series: Series): Document | undefined => {
	const document = partialDocument(factsOfSeries(check, series));
	return document && document.probe.length > 0 ? document : undefined;
};

/**
 * Figures of a series to hold beside those of another one. Where it only shows what a remedy did, its few rounds do not
 * tell how well they repeat: those of the series before it do.
 */
export function figuresToCompare(check: Check, series: Series): Figures | undefined {
	if (!shownAtIn(check, series)) return figuresOfSeries(check, series);
	const earlier = check.series.slice(0, check.series.indexOf(series)).map((one) => readOf(check, one));
	const document = readOf(check, series);
	return document && figuresOf(document, earlier.filter(isDocument));
}

/** What the remedy after a series did; undefined without one, and where either series has no figures. */
export function outcomeAfter(check: Check, series: Series): SuspectOutcome | undefined {
	const remedy = remedyAfter(series);
	const next = check.series[check.series.indexOf(series) + 1];
	const before = remedy && next && figuresToCompare(check, series);
	const after = before && figuresToCompare(check, next);
	return after && outcomeOfRemedy(remedy, before, after);
}

/** The last series that the arm was judged by: not one that only shows what a remedy did. */
const lastJudged = (check: Check): Series | undefined =>
	check.series.findLast((one) => !shownAtIn(check, one) && documentOfCheck(check, one).ok);

/** What the next action of a check hangs on; undefined before there are figures. */
export function caseOfCheck(check: Check): ActionCase | undefined {
	const before = check.series.at(-2);
	const isShown = before && !check.stopped && shownAtIn(check, openSeries(check));
	const series = (isShown ? lastJudged(check) : undefined) ?? seriesThatCounts(check);
	const found = documentOfCheck(check, series);
	if (!found.ok) return;
	const figures = figuresOf(found.document);
	const facts = factsOfSeries(check, series);
	return {
		figures,
		findings: findingsOf(found.document, figures),
		tried: remediesIn(check.series.slice(0, isShown ? -1 : check.series.indexOf(series))),
		fits: (id) => remedyById[id].when?.(facts) ?? true,
		...(isShown ? {shown: outcomeAfter(check, before) ?? null} : {}),
	};
}

/** The one thing to do now in a check; undefined before there are figures. */
export function actionOfCheck(check: Check): NextAction | undefined {
	const given = caseOfCheck(check);
	return given && nextActionOf(given);
}
