import limits from '../../shared/limits.json' with {type: 'json'};
import {isAtMost} from '../measures/compare.js';
import {bandBudget, expandedUncertainty, pullBudget, withRounds} from '../measures/uncertainty.js';
import type {Document} from './document-schema.js';
import type {MeasuredRadius} from './figures-types.js';
import {poolOf} from './radius-figures.js';
import {settingsOf} from './settings.js';
import {line, type Shown} from './shown-lines.js';

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

/** What one round more would bring, in a sentence. */
export function oneMoreLine(document: Document, here: MeasuredRadius): Shown {
	const more = afterOneMoreRound(document, here);
	if (!more) return line('A second round will show how well rounds repeat.', 'dim');
	const {pullUncertaintyPct, bandUncertaintyPct} = more;
	const isWorth = [pullUncertaintyPct / here.pullUncertaintyPct, bandUncertaintyPct / here.bandUncertaintyPct].some(
		(part) => isAtMost(part, 1 - limits.worthOneRoundShare.value),
	);
	if (!isWorth) return line('One round more would bring hardly anything.', 'dim');
	return line(
		`One round more would bring the pull to ± ${pullUncertaintyPct.toFixed(2)} %, the band to ± ${bandUncertaintyPct.toFixed(2)} %.`,
		'dim',
	);
}
