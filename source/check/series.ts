import type {HoldLimits} from '../procedure/facts.js';
import {type Place, places} from '../procedure/places.js';
import {isRemedyId, type RemedyId} from '../procedure/remedies.js';
import type {StepId} from '../procedure/step-ids.js';
import type {Answer, Check, Round, Series} from './check.js';

export const newSeries = (at: string): Series => ({
	openedAt: at,
	inner: [],
	outer: [],
	extra: [],
	closing: [],
	'bias-outer': [],
	'bias-middle': [],
	'bias-inner': [],
	trials: [],
	withdrawn: [],
	was: {},
});

/** The series that is being taken. */
export function openSeries(check: Check): Series {
	const last = check.series.at(-1);
	if (!last) throw new Error('a check has at least one series');
	return last;
}

/** What was tried after a series, if a remedy closed it. */
export function remedyAfter({closed}: Series): RemedyId | undefined {
	const remedy = closed?.because.id === 'remedy' ? closed.because.values.remedy : undefined;
	return isRemedyId(remedy) ? remedy : undefined;
}

/** What was tried in a row of series, oldest first. */
export const remediesIn = (some: readonly Series[]): readonly RemedyId[] =>
	some.flatMap((one) => remedyAfter(one) ?? []);

export const withOpenSeries = (check: Check, series: Series): Check => ({
	...check,
	series: [...check.series.slice(0, -1), series],
});

export const isComplete = (round: Round): boolean => round.outerLimit !== undefined;
export const counts = (round: Round): boolean => isComplete(round) && round.struck === undefined;

export const hasReadings = (series: Series): boolean =>
	places.some((place) => series[place].length > 0) || series.trials.length > 0;

/** The rounds of a series that enter the figures, as plain limits. */
export const limitsOfSeries =
	(series: Series) =>
	(place: Place): readonly HoldLimits[] =>
		series[place].filter(counts).map(({innerLimit, outerLimit, gauge}) => ({
			innerLimit: innerLimit.value,
			outerLimit: outerLimit?.value ?? 0,
			...(gauge ? {gauge} : {}),
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

/** Marks answers to be confirmed again; each keeps its old value as the offer. */
export function askAgain(check: Check, steps: readonly StepId[]): Check {
	const marked = steps.flatMap((id) => {
		const old = check.answers[id];
		if (!old) return [];
		const {override: _dropped, ...rest} = old;
		return [[id, {...rest, again: true as const}] as const];
	});
	return marked.length === 0 ? check : {...check, answers: {...check.answers, ...Object.fromEntries(marked)}};
}
