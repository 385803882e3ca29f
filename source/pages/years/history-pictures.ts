import type {PastCheck} from '../../check/past-check.js';
import type {VerdictLimits} from '../../procedure/facts.js';
import {words} from '../../words/index.js';
import {placeLabel} from '../../words/step-text.js';
import type {Shown} from '../shown-lines.js';
import {historiesOf, type RadiusHistory} from './trend-lines.js';

/** One check has no history. */
const leastPoints = 2;

function pullPicture(
	{place, radiusMm, points: all}: RadiusHistory,
	{pullGoodPct, pullUsablePct}: VerdictLimits,
): Shown {
	const points = all.map(({date, pullPct, pullUncertaintyPct}) => ({
		date,
		pct: pullPct,
		uncertaintyPct: pullUncertaintyPct,
	}));
	const told = {place: placeLabel(place), radiusMm, points};
	return {
		kind: 'history',
		label: words.years.pictures.pull(told),
		points,
		limitsPct: [-pullUsablePct, -pullGoodPct, pullGoodPct, pullUsablePct],
		caption: words.years.pictures.pullInWords(told),
	};
}

function bandPicture(
	{place, radiusMm, points: all}: RadiusHistory,
	{bandGoodPct, bandUsablePct}: VerdictLimits,
): Shown {
	const points = all.map(({date, bandPct, bandUncertaintyPct}) => ({
		date,
		pct: bandPct,
		uncertaintyPct: bandUncertaintyPct,
	}));
	const told = {place: placeLabel(place), radiusMm, points};
	return {
		kind: 'history',
		label: words.years.pictures.band(told),
		points,
		limitsPct: [bandGoodPct, bandUsablePct],
		caption: words.years.pictures.bandInWords(told),
	};
}

/** Pull and hold band at every radius of the newest check, over all checks that can be compared with it. */
export const historyPictures = (checks: readonly PastCheck[], limits: VerdictLimits): Shown[] =>
	historiesOf(checks)
		.filter(({points}) => points.length >= leastPoints)
		.flatMap((history) => [pullPicture(history, limits), bandPicture(history, limits)]);
