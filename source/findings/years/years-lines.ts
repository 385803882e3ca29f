import type {Check} from '../../check/check.js';
import type {PastCheck} from '../../check/past-check.js';
import {factsOfSeries} from '../../check/progress.js';
import {openSeries} from '../../check/series.js';
import {type Issued, issuedOf} from '../issued.js';
import {rowOf} from '../past-row.js';
import {line, type Shown} from '../shown-lines.js';
import {comparisonLines} from './comparison-lines.js';
import {historyPictures} from './history-pictures.js';
import {trendLines} from './trend-lines.js';

const wireMoves = (check: Check): boolean => {
	const facts = factsOfSeries(check, openSeries(check));
	return facts.is('arm-wire-path', 'exposed-loop') || facts.is('arm-wire-stiffness', 'stiff');
};

/** What changed since the last check and the first, in words; nothing for an arm without a past. */
export function changesOf(
	check: Check,
	history: readonly PastCheck[],
	issued: Issued | null = issuedOf(check),
): Shown[] {
	if (history.length === 0) return [];
	const now = rowOf(check, issued);
	return now.measuredWith ? comparisonLines(now, history, {wireMoves: wireMoves(check)}) : [];
}

/** The long run: trend and pictures. */
export function longRunOf(
	check: Check,
	history: readonly PastCheck[],
	issued: Issued | null = issuedOf(check),
): Shown[] {
	if (history.length === 0) return [];
	const now = rowOf(check, issued);
	if (!now.measuredWith) return [];
	const all = [now, ...history];
	return [line('Over the years', 'strong'), ...trendLines(all), ...historyPictures(all, check.limits)];
}
