import {isPutBack, placeOfRounds, stageOf, stepById} from '../procedure/index.js';
import {freeZeroSteps} from '../procedure/step-groups.js';
import {type StepId, stepIdsOf} from '../procedure/step-ids.js';
import {undoneBy} from '../procedure/steps-put-back.js';
import type {Check} from './check.js';
import {allDoubts} from './doubts.js';
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
	const closed = freeZeroSteps.reduce((sofar, id) => keepWas(sofar, id, check.answers[id]), {
		...check,
		answers,
		series,
	});
	return unput(closed);
}

/** The lines of the put-back list that stand as answered. */
export const linesPutBack = ({answers}: Check): StepId[] =>
	stepIdsOf(answers).filter((id) => isPutBack(id) && !answers[id]?.again);

/** What was put back is no longer, since the deck is being worked on again; and nothing of the preparation can be trusted. */
function unput(check: Check): Check {
	const lines = linesPutBack(check);
	if (lines.length === 0) return check;
	const asked = askAgain(check, [...lines, ...lines.flatMap((id) => undoneBy[id] ?? [])]);
	return {...asked, doubts: allDoubts(asked)};
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
