import {isPutBack, placeOfRounds} from '../procedure/index.js';
import {freeZeroSteps} from '../procedure/step-groups.js';
import {stepIdsOf} from '../procedure/step-ids.js';
import {askAgain} from './ask-again.js';
import type {Check} from './check.js';
import type {Because} from './says.js';
import {hasReadings, keepWas, newSeries, openSeries} from './series.js';
import {leaveBias} from './trials.js';

/** Answers that hang on the rounds of the open series and fall with it. */
const fallsWithSeries = (id: string): boolean =>
	placeOfRounds(id) !== undefined || id === 'verdict' || freeZeroSteps.some((one) => one === id);

/** Closes the open series, if it holds readings, and opens the next one. */
export function closeSeries(before: Check, because: Because, at: string): Check {
	const check = leaveBias(before, at);
	const open = openSeries(check);
	const answers = Object.fromEntries(Object.entries(check.answers).filter(([id]) => !fallsWithSeries(id)));
	const series = hasReadings(open)
		? [...check.series.slice(0, -1), {...open, closed: {at, because}}, newSeries(at)]
		: check.series;
	// What was put back before is no longer: the deck is being worked on again.
	const putBack = stepIdsOf(answers).filter(isPutBack);
	const closed = freeZeroSteps.reduce((sofar, id) => keepWas(sofar, id, check.answers[id]), {
		...check,
		answers,
		series,
	});
	return askAgain(closed, putBack);
}
