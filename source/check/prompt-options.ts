import {hasBias} from '../procedure/bias-devices.js';
import type {Facts} from '../procedure/facts.js';
import {isPlaceOffScale} from '../procedure/hold-limits.js';
import {afterStop, stepById} from '../procedure/index.js';
import {isOnPlace, type Place, places} from '../procedure/places.js';
import {strikeReasons} from '../procedure/reasons.js';
import {type RemedyId, remedies} from '../procedure/remedies.js';
import type {StageId, Step} from '../procedure/step.js';
import {doubtAskedBy} from '../procedure/steps-still.js';
import type {Trial} from './check.js';
import type {Dialogue, Position} from './dialogue.js';
import {itemsInDoubt} from './doubts.js';
import {type StepState, stageCount} from './progress.js';
import {type PromptOption, plainly} from './says.js';
import {counts, hasReadings, isComplete, openSeries} from './series.js';
import {hasOnReadings, nameOfTrial, trialsOf} from './trials.js';

export const otherReason = 'other';

/** Ids of what can be chosen, made and recognised in one way. */
export const choiceOf = {
	way: (index: number) => `way-${index}`,
	stage: (stage: StageId) => `stage:${stage}`,
	step: ({id}: Step) => `step:${id}`,
	keep: (trial: number) => `keep:${trial}`,
	backTo: (trial: number) => `back-to:${trial}`,
	remedy: (id: RemedyId) => `try:${id}`,
	round: (place: Place, index: number) => `${place}:${index}`,
} as const;

/** What may have changed, for a question whether it is still so. */
export const stillItems = ({check}: Dialogue, step: Step) => {
	const doubt = doubtAskedBy(step);
	return doubt ? itemsInDoubt(check, doubt) : [];
};

export function wayOptions({progress}: Position, step: Step): readonly PromptOption[] {
	const ways = (progress.problemOf(step)?.ways ?? []).map(
		({id: way}, index): PromptOption => ({id: choiceOf.way(index), label: {id: 'way', values: {way}}}),
	);
	return (step.reasons?.length ?? 0) > 0 ? [...ways, {id: 'override', label: plainly('regardless')}] : ways;
}

export function roundOptions(dialogue: Dialogue, {step, progress: {facts}}: Position): readonly PromptOption[] {
	if (step?.input.kind !== 'rounds') return [];
	const {place} = step.input;
	const rounds = openSeries(dialogue.check)[place];
	const takeBack = rounds.length > 0 ? [{id: 'take-back', label: plainly('take-back')}] : [];
	const more = {id: 'more', label: plainly('one-more-round')};
	const strike = rounds.some(counts) ? [{id: 'strike', label: plainly('strike')}] : [];
	if (place === 'closing' && step.verify?.(facts))
		return [
			{id: 'probe-again', label: plainly('probe-again')},
			more,
			...takeBack,
			{id: 'go-on', label: plainly('regardless')},
		];
	if (isPlaceOffScale(facts, place))
		return [
			...(isOnPlace(place) ? [{id: 'adjust', label: plainly('less-bias')}] : []),
			...takeBack,
			more,
			{id: 'go-on', label: plainly('without-figures')},
		];
	const enough = {id: 'go-on', label: plainly(place === 'closing' ? 'to-verdict' : 'enough')};
	// Where rounds only show what a remedy did, more judge the arm: that comes once they are seen.
	return [enough, ...(facts.shownAt && !isOnPlace(place) ? [] : [more]), ...strike, ...takeBack];
}

const moreAt = (place: 'inner' | 'outer' | 'extra'): PromptOption => ({
	id: `more-${place}`,
	label: {id: 'more-rounds', values: {place}},
});

/**
 * All that can be chosen at the verdict, or beside its next action where that was not chosen. Which of it is the next
 * action hangs on what the figures mean, so a page puts that first.
 */
export function verdictOptions({check, mode}: Dialogue, facts: Facts): readonly PromptOption[] {
	const hasExtra = Boolean(check.answers['radius-extra']?.value);
	const first = [
		{id: 'go-on', label: plainly('put-back')},
		{id: 'other-way', label: plainly('other-way')},
	];
	return [
		...(mode.kind === 'ask' ? first : []),
		{id: 'bias', label: plainly(hasBias(facts) ? 'set-bias' : 'see-skating')},
		...(facts.shownAt ? [{id: 'judge', label: plainly('judge')}] : [moreAt('inner'), moreAt('outer')]),
		...(hasExtra && !facts.shownAt ? [moreAt('extra')] : []),
		...(hasReadings(openSeries(check)) ? [{id: 'strike', label: plainly('strike')}] : []),
		...(hasExtra ? [] : [{id: 'radius-between', label: plainly('radius-between')}]),
		...remedyOptions(facts),
	];
}

/** The remedies that make sense for this arm. */
const remedyOptions = (facts: Facts): readonly PromptOption[] =>
	remedies
		.filter(({when}) => when?.(facts) ?? true)
		.map(({id}): PromptOption => ({id: choiceOf.remedy(id), label: {id: 'remedy', values: {remedy: id}}}));

const backTo = (number: number, trial: Trial): PromptOption => ({
	id: choiceOf.backTo(number),
	label: {id: 'back-to-setting', values: {setting: nameOfTrial(number, trial)}},
});

/** What may follow on the readings with a bias setting. */
export function biasOptions({check}: Dialogue): readonly PromptOption[] {
	const trials = trialsOf(check);
	const open = hasOnReadings(openSeries(check)) ? trials.length : undefined;
	const earlier = trials.flatMap((trial, index) => {
		const number = index + 1;
		return number === open ? [] : [backTo(number, trial)];
	});
	return [
		{id: 'adjust', label: plainly('adjust-bias')},
		...(open === undefined ? [] : [{id: choiceOf.keep(open), label: plainly('keep-setting')}]),
		...earlier,
		{id: 'other-drag', label: plainly('other-drag')},
		{id: 'steps', label: plainly('round-or-correction')},
	];
}

export function strikeOptions({check}: Dialogue): readonly PromptOption[] {
	const series = openSeries(check);
	return places.flatMap((place) =>
		series[place].flatMap((round, index) =>
			isComplete(round) && !round.struck
				? [
						{
							id: choiceOf.round(place, index),
							label: {
								id: 'round',
								values: {
									place,
									number: index + 1,
									innerLimit: round.innerLimit.typed,
									outerLimit: round.outerLimit?.typed,
								},
							},
						},
					]
				: [],
		),
	);
}

export function reasonsFor(excused: {
	readonly kind: 'override' | 'strike';
	readonly step?: string;
}): readonly PromptOption[] {
	const reasons = excused.kind === 'strike' ? strikeReasons : (stepById(excused.step ?? '')?.reasons ?? []);
	return [
		...reasons.map((reason): PromptOption => ({id: reason, label: {id: 'reason', values: {reason}}})),
		{id: otherReason, label: plainly('other-reason')},
	];
}

export function stageOptions({check}: Dialogue, {progress, step}: Position): readonly PromptOption[] {
	const seen = [...new Set<StageId>(progress.visible.map((one) => one.stage))];
	const stageOption = (stage: StageId): PromptOption => {
		const states = progress.visible.filter((one) => one.stage === stage).map((one) => progress.stateOf(one));
		const {number} = stageCount({stage});
		return {id: choiceOf.stage(stage), label: {id: 'stage', values: {stage, state: worstOf(states)}}, number};
	};
	// A filed check was opened again for its put-back list alone.
	if (check.reopened) return seen.filter((stage) => afterStop.includes(stage)).map(stageOption);
	const after = stageCount({stage: 'next'}).of;
	const others = [
		{id: 'take-back', label: plainly('take-back')},
		{id: 'strike', label: plainly('strike')},
		...(step?.input.kind === 'rounds' ? [{id: 'enough', label: plainly('fewer-rounds')}] : []),
	];
	// A stage has the number that stands in the bar while it is asked.
	return [
		check.stopped
			? {id: 'carry-on', label: plainly('carry-on'), number: 0}
			: {id: 'stop', label: plainly('stop'), number: 0},
		...seen.filter((stage) => stage !== 'resume').map(stageOption),
		...others.map((one, index) => ({...one, number: after + 1 + index})),
	];
}

const gravest: readonly StepState[] = ['problem', 'again', 'open', 'overridden', 'done'];
const worstOf = (states: readonly StepState[]): StepState => gravest.find((state) => states.includes(state)) ?? 'open';

export function stepOptions({progress}: Position, stage: StageId): readonly PromptOption[] {
	return progress.visible
		.filter((one) => one.stage === stage)
		.map((one) => {
			const values = {step: one.id, state: progress.stateOf(one)};
			return {id: choiceOf.step(one), label: {id: 'step', values}};
		});
}
