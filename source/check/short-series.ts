import {roundsToSee, usualRounds} from '../procedure/facts.js';
import {offPlaces, type ProbeEnd, turningPlaces} from '../procedure/places.js';
import {remedyById} from '../procedure/remedies.js';
import type {Check, Series} from './check.js';
import {counts, remedyAfter} from './series.js';

/** Rounds that are asked for at each radius where the arm is judged. */
export const roundsEachOf = ({practice}: Pick<Check, 'practice'>): number => practice?.roundsEach ?? usualRounds;

/** The place at which one round is taken with the gauge turned; undefined where it cannot be, or one round is all. */
export function turningPlace(check: Check): ProbeEnd | undefined {
	if (roundsEachOf(check) < usualRounds) return;
	return turningPlaces.find((place) => check.answers['gauge-turns']?.value === place);
}

/**
 * Where a series only shows what the remedy before it did: two rounds suffice for that. Undefined where the arm is
 * judged by the series; any round beyond those that show it begins that.
 */
export function shownAtIn(check: Check, series: Series): readonly ProbeEnd[] | undefined {
	const before = check.series[check.series.indexOf(series) - 1];
	const remedy = before && remedyAfter(before);
	if (!remedy || roundsEachOf(check) <= roundsToSee) return;
	const {seenAt} = remedyById[remedy];
	if (seenAt === 'closing') return;
	// Where the gauge is turned its zero is seen too.
	const at = seenAt === 'both' ? turningPlaces : [turningPlace(check) ?? 'inner'];
	const isBeyond = offPlaces.some(
		(place) => series[place].filter(counts).length > (at.some((one) => one === place) ? roundsToSee : 0),
	);
	return isBeyond ? undefined : at;
}
