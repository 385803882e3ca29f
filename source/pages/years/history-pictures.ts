import type {PastCheck} from '../../check/past-check.js';
import type {VerdictLimits} from '../../procedure/facts.js';
import {placeLabel} from '../../words/step-text.js';
import {plainNumber, sideForce, span} from '../../words/wording.js';
import type {Shown} from '../shown-lines.js';
import {dayText} from './day-text.js';
import {historiesOf, type RadiusHistory} from './trend-lines.js';

/** One check has no history. */
const leastPoints = 2;

const nameOf = ({place, radiusMm}: RadiusHistory): string => `${placeLabel(place)} ${plainNumber(radiusMm)} mm`;

function pullPicture(history: RadiusHistory, {pullGoodPct, pullUsablePct}: VerdictLimits): Shown {
	const said = history.points.map(
		({date, pullPct, pullUncertaintyPct}) => `${dayText(date)} ${sideForce(pullPct, pullUncertaintyPct)}`,
	);
	return {
		kind: 'history',
		label: `pull, ${nameOf(history)}, up is toward the rim`,
		points: history.points.map(({date, pullPct, pullUncertaintyPct}) => ({
			date,
			pct: pullPct,
			uncertaintyPct: pullUncertaintyPct,
		})),
		limitsPct: [-pullUsablePct, -pullGoodPct, pullGoodPct, pullUsablePct],
		caption: `Pull at the ${nameOf(history)} radius over time: ${said.join('; ')}.`,
	};
}

function bandPicture(history: RadiusHistory, {bandGoodPct, bandUsablePct}: VerdictLimits): Shown {
	const said = history.points.map(
		({date, bandPct, bandUncertaintyPct}) => `${dayText(date)} ${span(bandPct, bandUncertaintyPct)}`,
	);
	return {
		kind: 'history',
		label: `hold band, ${nameOf(history)}`,
		points: history.points.map(({date, bandPct, bandUncertaintyPct}) => ({
			date,
			pct: bandPct,
			uncertaintyPct: bandUncertaintyPct,
		})),
		limitsPct: [bandGoodPct, bandUsablePct],
		caption: `Hold band at the ${nameOf(history)} radius over time: ${said.join('; ')}.`,
	};
}

/** Pull and hold band at every radius of the newest check, over all checks that can be compared with it. */
export const historyPictures = (checks: readonly PastCheck[], limits: VerdictLimits): Shown[] =>
	historiesOf(checks)
		.filter(({points}) => points.length >= leastPoints)
		.flatMap((history) => [pullPicture(history, limits), bandPicture(history, limits)]);
