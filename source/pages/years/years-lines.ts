import type {Check} from '../../check/check.js';
import type {PastCheck} from '../../check/past-check.js';
import {factsOfSeries} from '../../check/progress.js';
import {openSeries} from '../../check/series.js';
import {figuresOfCheck, type IssuedFigures} from '../../results/issued.js';
import {rowOf} from '../../results/past-row.js';
import type {Shown} from '../shown-lines.js';
import {comparisonLines} from './comparison-lines.js';
import {historyPictures} from './history-pictures.js';
import {trendLines} from './trend-lines.js';

const wireMoves = (check: Check): boolean => {
	const facts = factsOfSeries(check, openSeries(check));
	return facts.is('arm-wire-path', 'free-loop') || facts.is('arm-wire-stiffness', 'stiff');
};

export type Years = {
	/** This check and what came before it, newest first. */
	readonly checks: readonly PastCheck[];
	/** What changed since the last check and the first, in words. */
	readonly changes: readonly Shown[];
	readonly trend: readonly Shown[];
	readonly pictures: readonly Shown[];
};

/** How a check stands against what came before it; undefined for an arm without a past, or without figures. */
export function yearsOf(
	check: Check,
	history: readonly PastCheck[],
	issued: IssuedFigures | null = figuresOfCheck(check),
): Years | undefined {
	const now = history.length === 0 ? undefined : rowOf(check, issued);
	if (!now?.measuredWith) return;
	const checks = [now, ...history];
	return {
		checks,
		changes: comparisonLines(now, history, {wireMoves: wireMoves(check)}),
		trend: trendLines(checks),
		pictures: historyPictures(checks, check.limits),
	};
}
