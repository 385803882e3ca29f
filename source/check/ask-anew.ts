import {isPutBack, placeOfRounds, stageOf, stepById} from '../procedure/index.js';
import {freeZeroSteps} from '../procedure/step-groups.js';
import {type StepId, stepIdsOf} from '../procedure/step-ids.js';
import type {Check} from './check.js';
import type {Because} from './says.js';
import {askAgain, hasReadings, keepWas, newSeries, openSeries} from './series.js';
import {closeTrial, leaveBias} from './trials.js';

/** Answers that hang on the rounds of the open series and fall with it. */
const fallsWithSeries = (id: string): boolean => {
	const stage = stageOf(id);
	return stage === 'probe' || stage === 'verdict' || placeOfRounds(id) !== undefined;
};

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

/** Answers under which readings are taken: another one does not make the earlier readings wrong. */
export function isCondition(id: string): boolean {
	const step = stepById(id);
	return (
		step !== undefined &&
		(step.stage === 'tools' || freeZeroSteps.some((one) => one === id) || (step.touches?.includes('rounds') ?? false))
	);
}

export const keepAll = (check: Check, steps: readonly StepId[], before: Check): Check =>
	steps.reduce((sofar, one) => keepWas(sofar, one, before.answers[one]), check);

/**
 * Takes answers out, to be given anew: what was read before the deck was touched must not be mixed with what is read
 * now, nor offered. Readings that hang on them close as a series.
 */
export function askAnew(check: Check, steps: readonly StepId[], because: Because, at: string): Check {
	const given = steps.filter((id) => check.answers[id]);
	const touch = (what: 'rounds' | 'trial') => given.some((id) => stepById(id)?.touches?.includes(what));
	const kept = touch('trial') ? closeTrial(check, at) : check;
	const closed = touch('rounds') ? closeSeries(kept, because, at) : kept;
	const known = keepAll(closed, given.filter(isCondition), check);
	return {
		...known,
		answers: Object.fromEntries(Object.entries(known.answers).filter(([id]) => !given.some((one) => one === id))),
	};
}
