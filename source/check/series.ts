import type {HoldLimits} from '../procedure/facts.js';
import type {Place} from '../procedure/step.js';
import type {Answer, Check, Round, Series} from './check.js';

/** Three rounds show how well they repeat; more is always possible. */
export const usualRounds = 3;

export const newSeries = (at: string): Series => ({
	openedAt: at,
	inner: [],
	outer: [],
	extra: [],
	closing: [],
	withdrawn: [],
	was: {},
});

/** The series that is being taken. */
export function openSeries(check: Check): Series {
	const last = check.series.at(-1);
	if (!last) throw new Error('a check has at least one series');
	return last;
}

export const withOpenSeries = (check: Check, series: Series): Check => ({
	...check,
	series: [...check.series.slice(0, -1), series],
});

export const isComplete = (round: Round): boolean => round.outerLimit !== undefined;
export const counts = (round: Round): boolean => isComplete(round) && round.struck === undefined;

export const hasReadings = (series: Series): boolean =>
	[series.inner, series.outer, series.extra, series.closing].some((rounds) => rounds.length > 0);

/** The rounds of a series that enter the figures, as plain limits. */
export const limitsOfSeries =
	(series: Series) =>
	(place: Place): readonly HoldLimits[] =>
		series[place].filter(counts).map(({innerLimit, outerLimit}) => ({
			innerLimit: innerLimit.value,
			outerLimit: outerLimit?.value ?? 0,
		}));

/** The answers under which a series was taken: today's, but for those that have changed since. */
export const answersOfSeries = (check: Check, series: Series): Readonly<Record<string, Answer>> => ({
	...check.answers,
	...series.was,
});

/** Remembers with every closed series how an answer was that changes now: its figures stay what they were. */
export const keepWas = (check: Check, id: string, old: Answer | undefined): Check =>
	old !== undefined
		? {
				...check,
				series: check.series.map((series) =>
					series.closed && !(id in series.was) ? {...series, was: {...series.was, [id]: old}} : series,
				),
			}
		: check;

/** Answers that hang on the rounds of the open series and fall with it. */
const fallsWithSeries = (id: string): boolean => id.startsWith('probe-') || id === 'verdict';

/** Closes the open series, if it holds readings, and opens the next one. */
export function closeSeries(check: Check, because: string, at: string): Check {
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
