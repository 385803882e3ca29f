import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from './compare.js';

/**
 * Whether the closing round says that something moved: its centre is off the mean of the n inner rounds by more
 * than 2·s·√(1 + 1/n) and by more than 0.5 %. With the spread unknown only the second bound holds.
 *
 * @param spreadPct pooled standard deviation of a round's centre, null where unknown
 */
export const somethingMoved = (
	closingCentrePct: number,
	meanCentrePct: number,
	rounds: number,
	spreadPct: number | null,
): boolean => isAbove(Math.abs(closingCentrePct - meanCentrePct), closingAllowedPct(rounds, spreadPct));

/** How far the closing round may be off before something moved, in percent. */
export const closingAllowedPct = (rounds: number, spreadPct: number | null): number =>
	Math.max(2 * (spreadPct ?? 0) * Math.sqrt(1 + 1 / rounds), limits.closingRoundPct.value);
