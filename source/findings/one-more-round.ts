import {bandBudget, expandedUncertainty, pullBudget, withRounds} from '../measures/uncertainty.js';
import type {Document} from './document-schema.js';
import type {MeasuredRadius} from './figures-types.js';
import {poolOf} from './radius-figures.js';
import {settingsOf} from './settings.js';

export type OneMore = {readonly pullUncertaintyPct: number; readonly bandUncertaintyPct: number};

/** The uncertainties (95 %) as they would be after one round more at a radius, if it repeats as the rounds so far; null while the spread is unknown. */
export function afterOneMoreRound(document: Document, figures: MeasuredRadius): OneMore | null {
	const settings = settingsOf(document);
	const pool = poolOf(document, settings);
	const radius = document.probe.find(({radiusMm}) => radiusMm === figures.radiusMm);
	if (!radius || !pool.centres || !pool.widths) return null;
	const {length} = radius.rounds;
	const pull = pullBudget(figures.pullPct, length, pool.centres, settings.uncertainty);
	const band = bandBudget(figures.bandPct, length, pool.widths, settings.uncertainty);
	return {
		pullUncertaintyPct: expandedUncertainty(withRounds(pull, length + 1)).uncertaintyPct,
		bandUncertaintyPct: expandedUncertainty(withRounds(band, length + 1)).uncertaintyPct,
	};
}
