import limits from '../../shared/limits.json' with {type: 'json'};
import {isAtMost} from '../measures/compare.js';
import {expandedUncertainty} from '../measures/uncertainty.js';
import type {Figure} from '../measures/verdict.js';
import type {Document} from './document-schema.js';
import type {MeasuredRadius} from './figures-types.js';
import {bandFigure, pullFigure} from './radius-figures.js';
import {seriesRead} from './series-read.js';

export type OneMore = {readonly pullUncertaintyPct: number; readonly bandUncertaintyPct: number};

/** The uncertainties (95 %) as they would be after one round more at a radius, if it repeats as the rounds so far; null while the spread is unknown. */
export function afterOneMoreRound(document: Document, figures: MeasuredRadius): OneMore | null {
	const series = seriesRead(document);
	const here = series.onScale.find(({radius}) => radius.radiusMm === figures.radiusMm);
	if (!here || figures.repeatability === 'assumed') return null;
	const withOneMore = ({budgetWith}: Figure): number => expandedUncertainty(budgetWith(1, false)).uncertaintyPct;
	return {
		pullUncertaintyPct: withOneMore(pullFigure(here, series)),
		bandUncertaintyPct: withOneMore(bandFigure(here, series)),
	};
}

/** Whether there are rounds enough at a radius to say what more of them would bring. */
export const isWorthAdvice = ({probe}: Document, {radiusMm, repeatability}: MeasuredRadius): boolean => {
	const rounds = probe.find((one) => one.radiusMm === radiusMm)?.rounds ?? [];
	return (
		repeatability === 'pooled' && rounds.filter(({gauge}) => gauge !== 'turned').length >= limits.roundsToLearn.value
	);
};

/** Whether one round more would take enough off either uncertainty to be worth taking. */
export const isOneMoreWorthIt = (more: OneMore, here: MeasuredRadius): boolean =>
	(['pullUncertaintyPct', 'bandUncertaintyPct'] as const).some((one) =>
		isAtMost(more[one] / here[one], 1 - limits.worthOneRoundShare.value),
	);
