import type {Check} from './check.js';
import {hasReadings, newSeries, openSeries} from './series.js';
import {leaveBias} from './trials.js';

/** Answers that hang on the rounds of the open series and fall with it. */
const fallsWithSeries = (id: string): boolean => id.startsWith('probe-') || id === 'verdict';

/** Closes the open series, if it holds readings, and opens the next one. */
export function closeSeries(before: Check, because: string, at: string): Check {
	const check = leaveBias(before, at);
	const open = openSeries(check);
	const left = Object.entries(check.answers).filter(([id]) => !fallsWithSeries(id));
	// What was put back before is no longer: the deck is being worked on again.
	const answers = Object.fromEntries(
		left.map(([id, answer]) => [id, id.startsWith('back-') ? {...answer, again: true as const} : answer]),
	);
	const series = hasReadings(open)
		? [...check.series.slice(0, -1), {...open, closed: {at, because}}, newSeries(at)]
		: check.series;
	return {...check, answers, series};
}
