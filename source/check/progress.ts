import {type Facts, factsOf, type Profile} from '../procedure/facts.js';
import {afterStop, procedure} from '../procedure/index.js';
import type {Problem, Trouble} from '../procedure/problem.js';
import {fits} from '../procedure/read-answer.js';
import {type StageId, type Step, stages, takes} from '../procedure/step.js';
import {nextLine, tickStates, ticksProblem} from '../procedure/ticks.js';
import {type Answer, type Check, isSameValue, type Series} from './check.js';
import {answersOfSeries, isComplete, limitsOfSeries, openSeries, remediesIn} from './series.js';
import {shownAtIn} from './short-series.js';

export type StepState = 'open' | 'done' | 'again' | 'problem' | 'overridden';

/** Whether a step needs nothing more: done, or gone past for a reason. */
export const isPassed = (state: StepState): boolean => state === 'done' || state === 'overridden';

/** Where a check is: computed from its answers, never stored. */
export type Progress = {
	readonly facts: Facts;
	/** The steps that apply, in order. */
	readonly visible: readonly Step[];
	readonly stateOf: (step: Step) => StepState;
	/** What keeps a step from passing, override or not. */
	readonly problemOf: (step: Step) => Problem | undefined;
	/** The first step that wants something; undefined when the check is complete. */
	readonly current: Step | undefined;
};

const noProfiles: readonly Profile[] = [];
/** A check is never changed in place, so where it is holds as long as it is; one entry asks for it many times. */
const workedOut = new WeakMap<Check, {readonly profiles: readonly Profile[]; readonly progress: Progress}>();

export function progressOf(check: Check, profiles: readonly Profile[] = noProfiles): Progress {
	const known = workedOut.get(check);
	if (known?.profiles === profiles) return known.progress;
	const progress = newProgress(check, profiles);
	workedOut.set(check, {profiles, progress});
	return progress;
}

function newProgress(check: Check, profiles: readonly Profile[]): Progress {
	const {facts, visible} = visibleSteps(check, openSeries(check), profiles);
	const problemOf = (step: Step) => (takes(step, 'ticks') ? ticksProblem(step, facts) : step.verify?.(facts));
	const states = new Map<Step, StepState>();
	const newState = (step: Step): StepState => {
		const answer = check.answers[step.id];
		// What is usual was taken.
		if (!answer && step.listed && facts.answered(step.id)) return 'done';
		if (!answer || isHalfDone(step, facts, openSeries(check))) return 'open';
		if (answer.again || !fits(step.input, answer.value)) return 'again';
		const problem = problemOf(step);
		if (!problem) return 'done';
		return answer.override && isExcused(answer.override.problem, problem) ? 'overridden' : 'problem';
	};
	const stateOf = (step: Step): StepState => {
		const state = states.get(step) ?? newState(step);
		states.set(step, state);
		return state;
	};
	// After 'stop here' nothing but the putting back wants an answer.
	const isOpen = (step: Step) => !check.stopped || afterStop.includes(step.stage);
	const current = visible.find((step) => isOpen(step) && !isPassed(stateOf(step)));
	return {facts, visible, stateOf, problemOf, current};
}

/** An override holds for what it was given for: the same trouble, of about the size that it had then. */
function isExcused(then: NonNullable<Answer['override']>['problem'], now: Trouble): boolean {
	const others = Object.entries(now.values).filter(([name, value]) => !isAsGood(then.values[name], value));
	return then.id === now.id && others.length === 0;
}

function isAsGood(then: unknown, now: unknown): boolean {
	if (typeof then !== 'number' || typeof now !== 'number') return isSameValue(then, now);
	return Math.abs(Math.abs(now) - Math.abs(then)) <= muchOther * Math.abs(then) + lastDigit;
}

/** The weighing that comes later may shift a tilt's share by some percent; that is no new trouble. */
const muchOther = 0.1;
/** Half of the last digit that is printed, since a check of an earlier form has the size as it was said. */
const lastDigit = 0.05;

/** Ticked in part, or with a round that lacks its outer limit. */
function isHalfDone(step: Step, facts: Facts, series: Series): boolean {
	if (takes(step, 'ticks')) return nextLine(tickStates(step, facts)) !== undefined;
	return takes(step, 'rounds') && series[step.input.place].some((round) => !isComplete(round));
}

/** The facts of a series, with the answers as they were when it was taken. */
export function factsOfSeries(check: Check, series: Series): Facts {
	// What was measured stays measured, also when the check was stopped afterwards.
	const {stopped: _stopped, ...whole} = check;
	return visibleSteps(whole, series, []).facts;
}

/** The one rule of visibility: a step counts when its stage is due and its condition holds on the visible answers before it. */
function visibleSteps(
	check: Check,
	series: Series,
	profiles: readonly Profile[],
): {facts: Facts; visible: readonly Step[]} {
	const onFile = answersOfSeries(check, series);
	const answers: Record<string, Pick<Answer, 'value'>> = {};
	const facts = factsOf({
		answers,
		onFile,
		rounds: limitsOfSeries(series),
		roundsEach: check.practice?.roundsEach,
		shownAt: shownAtIn(check, series),
		setAnew: check.setAnew,
		isRecheck: (check.recheckOf ?? check.follows) !== undefined,
		isShop: check.shop !== undefined && !check.practice,
		profiles,
		tried: remediesIn(check.series),
		doubts: check.doubts,
		limits: check.limits,
	});
	const visible = procedure.filter((step) => {
		if (!(step.when?.(facts) ?? true)) return false;
		const answer = onFile[step.id];
		const usual = answer ? undefined : usualAnswer(step, facts);
		const isShown = (!usual || step.listed === true) && isDue(check, step, answer);
		const known = usual ?? (isShown ? answer : undefined);
		if (known) answers[step.id] = known;
		return isShown;
	});
	return {facts, visible};
}

/** What is taken where a step is not asked; the check has no answer of it. */
function usualAnswer({usual}: Step, facts: Facts): Pick<Answer, 'value'> | undefined {
	const value = usual?.(facts);
	return value === undefined ? undefined : {value};
}

/** After 'stop here' only what was answered already and the putting back remain. */
function isDue(check: Check, step: Step, answer: Answer | undefined): boolean {
	if (!check.stopped || afterStop.includes(step.stage)) return true;
	return answer !== undefined && !answer.again && step.stage !== 'verdict';
}

/** How far along: the number of the stage among all that there are, so that neither changes on the way. */
export function stageCount({stage}: Pick<Step, 'stage'>): {number: number; of: number} {
	const due: readonly StageId[] = stages.filter((one) => one !== 'resume');
	return {number: Math.max(1, due.indexOf(stage) + 1), of: due.length};
}

/**
 * Whether the deck is fit to play: everything of the put-back list is done. A force that someone wants otherwise is a
 * decision; a line that was left to somebody else is not done.
 */
export const isReadyToPlay = (progress: Progress): boolean =>
	progress.visible
		.filter(({stage}) => stage === 'back')
		.every((step) => {
			const state = progress.stateOf(step);
			return state === 'done' || (state === 'overridden' && takes(step, 'number') && !progress.facts.unknown(step.id));
		});
