import {stepById} from '../procedure/index.js';
import type {AnswerValue} from '../procedure/step.js';
import type {Action} from './actions.js';
import type {Answer, Check} from './check.js';
import {doubtsAfter, doubtsWithStep, isStillInDoubt} from './doubts.js';
import {setLimit, strike, takeBack} from './rounds.js';
import {closeSeries, keepWas, newSeries} from './series.js';

type Of<T extends Action['type']> = Extract<Action, {type: T}>;

/** A check with nothing answered yet. */
export const newCheck = (start: Pick<Check, 'id' | 'limits' | 'program'> & {readonly at: string}): Check => ({
	id: start.id,
	startedAt: start.at,
	program: start.program,
	limits: start.limits,
	answers: {},
	series: [newSeries(start.at)],
	doubts: [],
	resumedAt: [],
});

/** The one place where a check changes. Pure: the same actions on the same check give the same check. */
export function reduce(check: Check, action: Action): Check {
	switch (action.type) {
		case 'answer':
			return answer(check, action);
		case 'fill':
			return Object.entries(action.answers).reduce(
				(filled, [step, {value, typed}]) => answer(filled, {type: 'answer', step, value, typed, at: action.at}),
				check,
			);
		case 'override':
			return override(check, action);
		case 'ask-again':
			return askAgain(check, action.steps);
		case 'limit':
			return setLimit(check, action);
		case 'take-back':
			return takeBack(check);
		case 'strike':
			return strike(check, action);
		case 'new-series':
			return askAgain(closeSeries(check, action.because, action.at), action.steps);
		case 'stop':
			return {...check, stopped: {at: action.at}, doubts: []};
		case 'carry-on':
			return carryOn(check);
		case 'resume':
			return {...check, resumedAt: [...check.resumedAt, action.at], doubts: doubtsAfter(check, action.at)};
		case 'still-so':
			return stillSo(check, action);
		case 'changed':
			return changed(check, action);
	}
}

function answer(check: Check, {step: id, value, typed, at}: Of<'answer'>): Check {
	const old = check.answers[id];
	const same = old !== undefined && isSame(old.value, value);
	const next: Answer = {typed, value, at, ...(same && old.override && !old.again ? {override: old.override} : {})};
	const answered = {...check, answers: {...check.answers, [id]: next}};
	if (old === undefined || same) return answered;
	const touches = stepById(id)?.touches ?? [];
	const kept = touches.includes('rounds')
		? closeSeries(answered, `changed: ${stepById(id)?.title ?? id}`, at)
		: answered;
	return askAgain(
		keepWas(kept, id, old),
		touches.filter((touched) => touched !== 'rounds'),
	);
}

const isSame = (one: AnswerValue, other: AnswerValue): boolean => JSON.stringify(one) === JSON.stringify(other);

function override(check: Check, {step, reason, at}: Of<'override'>): Check {
	const old = check.answers[step];
	return old ? {...check, answers: {...check.answers, [step]: {...old, override: {reason, at}}}} : check;
}

/** Marks answers to be confirmed again; each keeps its old value as the offer. */
function askAgain(check: Check, steps: readonly string[]): Check {
	const marked = steps.flatMap((id) => {
		const old = check.answers[id];
		if (!old) return [];
		const {override: _dropped, ...rest} = old;
		return [[id, {...rest, again: true as const}] as const];
	});
	return marked.length === 0 ? check : {...check, answers: {...check.answers, ...Object.fromEntries(marked)}};
}

function carryOn(check: Check): Check {
	const {stopped: _dropped, ...rest} = check;
	return rest;
}

function stillSo(check: Check, {doubt, at}: Of<'still-so'>): Check {
	const answers = Object.fromEntries(
		Object.entries(check.answers).map(([id, one]) => [
			id,
			doubtsWithStep(id).includes(doubt) ? {...one, confirmedAt: at} : one,
		]),
	);
	return {...check, answers, doubts: check.doubts.filter((one) => one !== doubt)};
}

/** Something changed while the check was left: its steps are asked anew, in a new series. */
function changed(check: Check, {doubt, steps, what, at}: Of<'changed'>): Check {
	const asked = askAgain(check, steps);
	const rounds = steps.some((id) => stepById(id)?.touches?.includes('rounds'));
	const next = rounds ? closeSeries(asked, `changed while the check was left: ${what}`, at) : asked;
	return {...next, doubts: next.doubts.filter((one) => one !== doubt || isStillInDoubt(next, doubt))};
}
