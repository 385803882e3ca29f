import {hasBias} from '../procedure/bias-devices.js';
import type {Facts} from '../procedure/facts.js';
import {isPlaceOffScale} from '../procedure/hold-limits.js';
import {afterStop, stepById} from '../procedure/index.js';
import {isOnPlace, places} from '../procedure/places.js';
import {signOfPlus} from '../procedure/readings.js';
import {remedies} from '../procedure/remedies.js';
import type {Option, Place, Sides, StageId, Step} from '../procedure/step.js';
import {doubtAskedBy} from '../procedure/steps-still.js';
import {words} from '../words/index.js';
import {placeLabel, titleOf} from '../words/step-text.js';
import type {Dialogue, Position} from './dialogue.js';
import {itemsInDoubt} from './doubts.js';
import type {StepState} from './progress.js';
import {counts, hasReadings, isComplete, openSeries} from './series.js';
import {hasOnReadings, nameOfTrial, trialsOf} from './trials.js';

const marks = {open: ' ', done: '+', again: '?', problem: '!', overridden: '~'} as const satisfies Record<
	StepState,
	string
>;
export const otherReason = 'other';

/** Ids of what can be chosen, made and recognised in one way. */
export const choiceOf = {
	way: (index: number) => `way-${index}`,
	stage: (stage: StageId) => `stage:${stage}`,
	step: ({id}: Step) => `step:${id}`,
	keep: (trial: number) => `keep:${trial}`,
	backTo: (trial: number) => `back-to:${trial}`,
	round: (place: Place, index: number) => `${place}:${index}`,
} as const;

/** What may have changed, for a question whether it is still so. */
export const stillItems = ({check}: Dialogue, step: Step) => {
	const doubt = doubtAskedBy(step);
	return doubt ? itemsInDoubt(check, doubt) : [];
};

export function wayOptions({progress}: Position, step: Step): readonly Option[] {
	const ways = (progress.problemOf(step)?.ways ?? []).map(({label}, index) => ({id: choiceOf.way(index), label}));
	return (step.reasons?.length ?? 0) > 0 ? [...ways, {id: 'override', label: 'go on regardless, with a reason'}] : ways;
}

export function roundOptions(dialogue: Dialogue, {step, progress: {facts}}: Position): readonly Option[] {
	if (step?.input.kind !== 'rounds') return [];
	const {place} = step.input;
	const rounds = openSeries(dialogue.check)[place];
	const takeBack = rounds.length > 0 ? [{id: 'take-back', label: 'take the last reading back'}] : [];
	const more = {id: 'more', label: 'one more round'};
	const strike = rounds.some(counts) ? [{id: 'strike', label: 'strike a round out'}] : [];
	if (place === 'closing' && step.verify?.(facts))
		return [
			{id: 'probe-again', label: 'probe again: a new series'},
			more,
			...takeBack,
			{id: 'go-on', label: 'go on regardless, with a reason'},
		];
	if (isPlaceOffScale(facts, place))
		return [
			...(isOnPlace(place) ? [{id: 'adjust', label: 'set less bias, probe again'}] : []),
			...takeBack,
			more,
			{id: 'go-on', label: 'go on without figures at this radius'},
		];
	return [
		{id: 'go-on', label: place === 'closing' ? 'go on to the verdict' : 'enough: go on'},
		more,
		...strike,
		...takeBack,
	];
}

export function verdictOptions({check}: Dialogue, facts: Facts): readonly Option[] {
	const series = openSeries(check);
	return [
		{id: 'go-on', label: 'put the deck back'},
		{id: 'remedy', label: 'try a remedy and probe again'},
		{id: 'bias', label: hasBias(facts) ? 'set the bias device against skating' : 'see what skating asks of this arm'},
		{id: 'more-inner', label: 'more rounds at the inner radius'},
		{id: 'more-outer', label: 'more rounds at the outer radius'},
		...(check.answers['radius-extra']?.value ? [{id: 'more-extra', label: 'more rounds at the third radius'}] : []),
		...(hasReadings(series) ? [{id: 'strike', label: 'strike a round out'}] : []),
	];
}

/** What may follow on the readings with a bias setting. */
export function biasOptions({check}: Dialogue): readonly Option[] {
	const series = openSeries(check);
	const trials = trialsOf(check);
	const open = hasOnReadings(series) ? trials.length : undefined;
	const earlier = trials.flatMap((trial, index) => {
		const number = index + 1;
		return number === open
			? []
			: [{id: choiceOf.backTo(number), label: `go back to setting ${nameOfTrial(number, trial)}`}];
	});
	return [
		{id: 'adjust', label: 'adjust the device, probe again'},
		...(open === undefined ? [] : [{id: choiceOf.keep(open), label: 'keep this setting'}]),
		...earlier,
		{id: 'steps', label: 'one more round, or a correction'},
	];
}

export function strikeOptions({check}: Dialogue): readonly Option[] {
	const series = openSeries(check);
	return places.flatMap((place) =>
		series[place].flatMap((round, index) =>
			isComplete(round) && !round.struck
				? [
						{
							id: choiceOf.round(place, index),
							label: `${placeLabel(place)}${place === 'extra' ? ' radius' : ''}, round ${index + 1}: ${round.innerLimit.typed} / ${round.outerLimit?.typed ?? ''}`,
						},
					]
				: [],
		),
	);
}

const strikeReasons = ['bumped the deck', 'read before it had settled', 'misread the gauge', 'draught or a door'];

export function reasonsFor(excused: {readonly kind: 'override' | 'strike'; readonly step?: string}): readonly Option[] {
	const reasons = excused.kind === 'strike' ? strikeReasons : (stepById(excused.step ?? '')?.reasons ?? []);
	return [
		...reasons.map((reason) => ({id: reason, label: reason})),
		{id: otherReason, label: 'another reason (type it)'},
	];
}

export function stageOptions({check}: Dialogue, {progress, step}: Position): readonly Option[] {
	const seen = [...new Set<StageId>(progress.visible.map((one) => one.stage))];
	const stageOption = (stage: StageId): Option => {
		const states = progress.visible.filter((one) => one.stage === stage).map((one) => progress.stateOf(one));
		return {id: choiceOf.stage(stage), label: `[${marks[worstOf(states)]}] ${words.stages[stage]}`};
	};
	// A filed check was opened again for its put-back list alone.
	if (check.reopened) return seen.filter((stage) => afterStop.includes(stage)).map(stageOption);
	return [
		check.stopped
			? {id: 'carry-on', label: 'carry on with the check after all'}
			: {id: 'stop', label: 'stop here and put the deck back'},
		{id: 'take-back', label: 'take the last reading back'},
		{id: 'strike', label: 'strike a round out'},
		...(step?.input.kind === 'rounds' ? [{id: 'enough', label: 'go on with the rounds there are'}] : []),
		...seen.map(stageOption),
	];
}

const gravest: readonly StepState[] = ['problem', 'again', 'open', 'overridden', 'done'];
const worstOf = (states: readonly StepState[]): StepState => gravest.find((state) => states.includes(state)) ?? 'open';

export function stepOptions({progress}: Position, stage: StageId): readonly Option[] {
	return progress.visible
		.filter((one) => one.stage === stage)
		.map((one) => {
			const state = progress.stateOf(one);
			return {id: choiceOf.step(one), label: `[${marks[state]}] ${titleOf(one.id)}`};
		});
}

/** The remedies that make sense for this arm. */
export const remedyOptions = (facts: Facts): readonly Option[] =>
	remedies.filter(({when}) => when?.(facts) ?? true).map(({id}) => ({id, label: words.remedies[id]}));

export type SideOption = Option & {readonly keys: readonly string[]};

/** Two sides, each with its letter; the signs go to the side that they mean on this gauge. */
export function sideOptions(sides: Sides, facts: Facts): readonly SideOption[] {
	const {plus, minus, sign} = sides;
	const plusSide = sides.words === 'sign-of-gauge' || signOfPlus(facts) === 1 ? plus : minus;
	return [plus, minus].map((side) => ({
		id: side.word,
		label: words.sides[side.word].label,
		keys: [side.word.charAt(0), ...(sign === 'of-gauge' ? [side === plusSide ? '+' : '-'] : [])],
	}));
}
