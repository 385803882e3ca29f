import {afterStop, stageOf, stepById} from '../procedure/index.js';
import {isStepId} from '../procedure/step-ids.js';
import type {Action} from './actions.js';
import {askAnew, closeSeries, isCondition, keepAll, linesPutBack} from './ask-anew.js';
import {type Answer, answerOf, type Check, isSameValue} from './check.js';
import {deckOf, keptBy} from './deck-state.js';
import {doubtedAfter, doubtsWithStep, isOffered, isStillInDoubt, touchesReadings} from './doubts.js';
import {progressOf} from './progress.js';
import {resumed} from './resume.js';
import {setLimit, strike, takeBack, withoutBegun} from './rounds.js';
import {plainly} from './says.js';
import {askAgain, newSeries} from './series.js';
import {closeTrial, leaveBias} from './trials.js';

type Of<T extends Action['type']> = Extract<Action, {type: T}>;

/** A check with nothing answered yet. */
export const newCheck = (
	start: Pick<Check, 'id' | 'limits' | 'program' | 'setAnew'> & {readonly at: string; readonly shop?: string},
): Check => ({
	id: start.id,
	startedAt: start.at,
	program: start.program,
	limits: start.limits,
	setAnew: start.setAnew,
	...(start.shop ? {shop: start.shop} : {}),
	answers: {},
	series: [newSeries(start.at)],
	doubts: [],
	resumedAt: [],
	overrides: [],
	touchedAt: start.at,
});

/** The one place where a check changes. Pure: the same actions on the same check give the same check. */
export const reduce = (check: Check, action: Action): Check =>
	check.reopened && !putsBack(action)
		? check
		: {...asTheDeckStands(changed(check, action), action.at), touchedAt: action.at};

/** What is asked next may want a deck that was put back meanwhile, or the bias off: then that comes first. */
function asTheDeckStands(check: Check, at: string): Check {
	const progress = progressOf(check);
	const {current} = progress;
	if (!current || afterStop.includes(current.stage)) return check;
	const kept = keptBy(deckOf(check, progress), current, progress);
	if (kept.length > 0 && linesPutBack(check).length > 0) return workAgain(check, at);
	return kept.includes('bias') && check.answers['bias-on'] ? biasOffAgain(check, at) : check;
}

/** A filed check is opened again for its put-back list alone: nothing else of it may change. */
function putsBack(action: Action): boolean {
	const comesAfterStop = (id: string) => afterStop.some((stage) => stage === stageOf(id));
	if (action.type === 'answer' || action.type === 'override') return comesAfterStop(action.step);
	return action.type === 'resume' || (action.type === 'ask-again' && action.steps.every(comesAfterStop));
}

function changed(check: Check, action: Action): Check {
	switch (action.type) {
		case 'answer':
			return answer(check, action);
		case 'fill':
			return fill(check, action);
		case 'recheck':
			return {
				...fill(check, {...action, type: 'fill'}),
				recheckOf: action.of,
				...(action.changedSince ? {changedSince: {...action.changedSince}} : {}),
				doubts: ['last-time'],
			};
		case 'override':
			return override(check, action);
		case 'ask-again':
			return askAnew(check, action.steps, plainly('asked-anew'), action.at);
		case 'limit':
			return setLimit(check, action);
		case 'take-back':
			return takeBack(check, action.place);
		case 'begin-anew':
			return withoutBegun(check);
		case 'next-trial':
			return closeTrial(check, action.at);
		case 'bias-off-again':
			return biasOffAgain(check, action.at);
		case 'strike':
			return strike(check, action);
		case 'new-series':
			return askAnew(
				closeSeries(workAgain(check, action.at), action.because, action.at),
				action.steps,
				action.because,
				action.at,
			);
		case 'stop':
			return {...check, stopped: {at: action.at}};
		case 'carry-on':
			return carryOn(check, action.at);
		case 'doubt':
			return withoutVerdict(check);
		case 'work-again':
			return workAgain(check, action.at);
		case 'resume':
			return resumed(check, action.at);
		case 'still-so':
			return stillSo(check, action);
		case 'changed':
			return changedMeanwhile(check, action);
	}
}

function answer(check: Check, {step: id, value, typed, at}: Of<'answer'>): Check {
	const old = check.answers[id];
	const same = old !== undefined && isSameValue(old.value, value);
	const touches = stepById(id)?.touches ?? [];
	const next: Answer = {typed, value, at, ...(same && old.override && !old.again ? {override: old.override} : {})};
	const isOther = old !== undefined && !same;
	const start = isOther && touches.includes('trial') ? closeTrial(check, at) : check;
	const answered = {...start, answers: {...start.answers, [id]: next}};
	if (!isOther) return answered;
	const closed = touches.includes('rounds')
		? closeSeries(answered, {id: 'answer-changed', values: {step: id}}, at)
		: answered;
	const touched = touches.filter((one) => one !== 'rounds' && one !== 'trial');
	// A changed condition stays with the earlier series as it was, with all that is asked anew now; a correction of what
	// was wrong all along holds for every series.
	const kept = isCondition(id) ? keepAll(closed, [id, ...touched], check) : closed;
	return askAgain(kept, touched);
}

/**
 * Takes the answers of a profile over; what it does not have, and another one had, goes. Another arm, cartridge or set
 * of tools begins a new series, and the earlier ones keep what they were taken with.
 */
function fill(check: Check, {answers, clears = [], at}: Of<'fill'>): Check {
	const other = Object.entries(answers).some(([id, {value}]) => {
		const picked = stepById(id)?.input.kind === 'profile' ? answerOf(check, id) : undefined;
		return picked !== undefined && picked.value !== value;
	});
	const start = other ? keepAll(closeSeries(check, plainly('other-profile'), at), clears, check) : check;
	const left = Object.entries(start.answers).filter(([id]) => !clears.some((one) => one === id) || id in answers);
	return Object.entries(answers).reduce(
		(filled, [step, {value, typed}]) =>
			isStepId(step) ? answer(filled, {type: 'answer', step, value, typed, at}) : filled,
		{...start, answers: Object.fromEntries(left)},
	);
}

function override(check: Check, {step, reason, problem: {id, values}, at}: Of<'override'>): Check {
	const old = check.answers[step];
	if (!old) return check;
	const given = {problem: {id, values}, reason, at};
	return {
		...check,
		answers: {...check.answers, [step]: {...old, override: given}},
		overrides: [...check.overrides, {step, ...given, series: check.series.length}],
	};
}

/** The check goes on after all; what may have changed meanwhile, or was in doubt already, is asked first. */
function carryOn(check: Check, at: string): Check {
	const {stopped: _dropped, ...rest} = check;
	return workAgain(doubtedAfter(rest, at), at);
}

/** The verdict falls, to be read anew: until then what is in doubt is asked. */
function withoutVerdict(check: Check): Check {
	const {verdict: _read, ...answers} = check.answers;
	return {...check, answers};
}

/** Once the putting back has begun a new series begins, and all is asked. */
const workAgain = (check: Check, at: string): Check =>
	linesPutBack(check).length === 0 ? check : closeSeries(check, plainly('put-back-between'), at);

/** The bias goes off before the arm itself is probed again. */
const biasOffAgain = (check: Check, at: string): Check => withoutVerdict(leaveBias(check, at));

function stillSo(check: Check, {doubt, at}: Of<'still-so'>): Check {
	const answers = Object.fromEntries(
		Object.entries(check.answers).map(([id, one]) => [
			id,
			doubtsWithStep(id).includes(doubt) ? {...one, confirmedAt: at} : one,
		]),
	);
	return {...check, answers, doubts: check.doubts.filter((one) => one !== doubt)};
}

/** Something changed while the check was left: its steps are asked anew, in a new series where the readings hang on it. */
function changedMeanwhile(check: Check, {doubt, steps, item, at}: Of<'changed'>): Check {
	const because = {id: 'changed-while-left', values: {item}} as const;
	const start = touchesReadings(doubt) ? closeSeries(check, because, at) : check;
	const asked = isOffered(doubt) ? askAgain(start, steps) : askAnew(start, steps, because, at);
	return {...asked, doubts: asked.doubts.filter((one) => one !== doubt || isStillInDoubt(asked, doubt))};
}
