import type {Check, Series} from '../check/check.js';
import {factsOfSeries} from '../check/progress.js';
import {remediesIn, remedyAfter} from '../check/series.js';
import {type RemedyId, remedyById} from '../procedure/remedies.js';
import {findingsOf} from './diagnose.js';
import {documentOfCheck, seriesThatCounts} from './document-of-check.js';
import {type Figures, figuresOf} from './figures.js';
import {outcomeOfRemedy, type SuspectOutcome} from './foretold.js';
import {type ActionCase, type NextAction, nextActionOf} from './next-action.js';

/** What was tried before the series that counts, oldest first. */
export const triedIn = (check: Check): readonly RemedyId[] =>
	remediesIn(check.series.slice(0, check.series.indexOf(seriesThatCounts(check))));

/** Figures of a series, where it has any. */
export function figuresOfSeries(check: Check, series: Series): Figures | undefined {
	const found = documentOfCheck(check, series);
	return found.ok ? figuresOf(found.document) : undefined;
}

/** What the remedy after a series did; undefined without one, and where either series has no figures. */
export function outcomeAfter(check: Check, series: Series): SuspectOutcome | undefined {
	const remedy = remedyAfter(series);
	const next = check.series[check.series.indexOf(series) + 1];
	const before = remedy && next && figuresOfSeries(check, series);
	const after = before && figuresOfSeries(check, next);
	return after && outcomeOfRemedy(remedy, before, after);
}

/** What the next action of a check hangs on; undefined before there are figures. */
export function caseOfCheck(check: Check): ActionCase | undefined {
	const series = seriesThatCounts(check);
	const found = documentOfCheck(check, series);
	if (!found.ok) return;
	const figures = figuresOf(found.document);
	const facts = factsOfSeries(check, series);
	return {
		figures,
		findings: findingsOf(found.document, figures),
		tried: triedIn(check),
		fits: (id) => remedyById[id].when?.(facts) ?? true,
	};
}

/** The one thing to do now in a check; undefined before there are figures. */
export function actionOfCheck(check: Check): NextAction | undefined {
	const given = caseOfCheck(check);
	return given && nextActionOf(given);
}
