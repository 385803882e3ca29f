import type {PastCheck} from '../../check/past-check.js';
import type {VerdictLimits} from '../../procedure/facts.js';
import {words} from '../../words/index.js';
import {placeLabel} from '../../words/step-text.js';
import type {Shown} from '../shown-lines.js';
import {historiesOf, type RadiusHistory} from './trend-lines.js';

/** One check has no history. */
const leastPoints = 2;

function picture(figure: 'pull' | 'band', history: RadiusHistory, limits: VerdictLimits): Shown {
	const {place, radiusMm} = history;
	const points = history.points.map((point) => ({
		date: point.date,
		pct: point[`${figure}Pct`],
		uncertaintyPct: point[`${figure}UncertaintyPct`],
	}));
	const told = {place: placeLabel(place), radiusMm, points};
	const inward = figure === 'pull' ? [-limits.pullUsablePct, -limits.pullGoodPct] : [];
	return {
		kind: 'history',
		label: words.years.pictures[figure](told),
		points,
		limitsPct: [...inward, limits[`${figure}GoodPct`], limits[`${figure}UsablePct`]],
		caption: words.years.pictures[`${figure}InWords`](told),
	};
}

/** Pull and hold band at every radius of the newest check, over all checks that can be compared with it. */
export const historyPictures = (checks: readonly PastCheck[], limits: VerdictLimits): Shown[] =>
	historiesOf(checks)
		.filter(({points}) => points.length >= leastPoints)
		.flatMap((history) => [picture('pull', history, limits), picture('band', history, limits)]);
