import {stepById} from '../procedure/index.js';
import {optionsOf} from '../procedure/read-answer.js';
import {remedies} from '../procedure/remedies.js';
import {type Option, type StageId, type Step, stages} from '../procedure/step.js';
import {doubts} from '../procedure/steps-still.js';
import {nextLine, tickStates} from '../procedure/ticks.js';
import {type Dialogue, earlierText, type Position, positionOf} from './dialogue.js';
import type {StepState} from './progress.js';
import {counts, hasReadings, isComplete, openSeries} from './series.js';

/** What kind of entry is wanted now. Faces draw one control for each kind. */
export type Prompt = {readonly key: string} & (
	| {
			readonly kind: 'field';
			readonly initial: string;
			readonly mayBeEmpty: boolean /** A reading that wants the arm to have settled. */;
			readonly settle?: true;
	  }
	| {readonly kind: 'choice'; readonly options: readonly Option[]; readonly initial?: string | undefined}
	| {readonly kind: 'yes-no'; readonly question?: string}
	/** y, or the number of what is not so. */
	| {readonly kind: 'still'; readonly items: readonly string[]}
	/** One key for one of two sides. */
	| {readonly kind: 'side'; readonly options: readonly (Option & {readonly keys: readonly string[]})[]}
	| {readonly kind: 'none'}
);

const marks = {open: ' ', done: '+', again: '?', problem: '!', overridden: '~'} as const satisfies Record<
	StepState,
	string
>;
export const otherReason = 'other';

/** The prompt that belongs to a dialogue. */
export function promptOf(dialogue: Dialogue): Prompt {
	const position = positionOf(dialogue);
	const {mode} = dialogue;
	switch (mode.kind) {
		case 'ask':
			return askPrompt(dialogue, position);
		case 'side': {
			const {plus, minus} = mode.sides;
			return {
				key: 'side',
				kind: 'side',
				options: [
					{
						id: plus.word,
						label: plus.label,
						keys: [plus.word.charAt(0), ...(mode.sides.sign === 'of-gauge' ? ['+'] : [])],
					},
					{
						id: minus.word,
						label: minus.label,
						keys: [minus.word.charAt(0), ...(mode.sides.sign === 'of-gauge' ? ['-'] : [])],
					},
				],
			};
		}
		case 'reason':
			return {key: 'reason', kind: 'choice', options: reasonsFor(mode.excused)};
		case 'reason-typed':
			return {key: 'reason-typed', kind: 'field', initial: '', mayBeEmpty: false};
		case 'strike':
			return {key: 'strike', kind: 'choice', options: strikeOptions(dialogue)};
		case 'remedy':
			return {
				key: 'remedy',
				kind: 'choice',
				options: remedies
					.filter(({when}) => when?.(position.progress.facts) ?? true)
					.map(({id, label}) => ({id, label})),
			};
		case 'steps':
			return {
				key: `steps-${mode.stage ?? 'all'}`,
				kind: 'choice',
				options: mode.stage ? stepOptions(position, mode.stage) : stageOptions(dialogue, position),
			};
		case 'stop':
			return {key: 'stop', kind: 'yes-no'};
	}
}

function askPrompt(dialogue: Dialogue, position: Position): Prompt {
	const {step, slot, stuck, progress} = position;
	if (!step) return {key: 'complete', kind: 'none'};
	if (stuck) return {key: `${step.id}-stuck`, kind: 'choice', options: wayOptions(position, step)};
	const key = slot ? `${step.id}-${slot.index}-${slot.which}` : step.id;
	const {input} = step;
	switch (input.kind) {
		case 'text':
		case 'number':
		case 'signed':
			return {key, kind: 'field', initial: earlierText(dialogue, position), mayBeEmpty: input.optional ?? false};
		case 'choice': {
			const value = dialogue.check.answers[step.id]?.value;
			return {
				key,
				kind: 'choice',
				options: optionsOf(input, progress.facts),
				initial: typeof value === 'string' ? value : undefined,
			};
		}
		case 'confirm':
			return {key, kind: 'yes-no'};
		case 'ticks': {
			const line = nextLine(tickStates(input, progress.facts, progress.facts.list(step.id)));
			return {key: `${key}-${line?.id ?? 'all'}`, kind: 'yes-no', question: line?.text ?? 'All still so?'};
		}
		case 'profile':
			return {
				key,
				kind: 'choice',
				options: [
					...progress.facts.profiles.filter((one) => one.kind === input.of).map(({id, name}) => ({id, label: name})),
					{id: 'new', label: 'enter a new one'},
				],
			};
		case 'still':
			return {key, kind: 'still', items: stillItems(dialogue, step).map(({label}) => label)};
		case 'rounds':
			return slot
				? {key, kind: 'field', initial: earlierText(dialogue, position), mayBeEmpty: false, settle: true}
				: {
						key: `${key}-shown-${openSeries(dialogue.check)[input.place].length}`,
						kind: 'choice',
						options: roundOptions(dialogue, position),
					};
		case 'verdict':
			return {key, kind: 'choice', options: verdictOptions(dialogue)};
	}
}

export const stillItems = ({check}: Dialogue, step: Step) => {
	const doubt = doubts.find(({id}) => `still-${id}` === step.id);
	return (doubt?.items ?? []).filter(({steps}) => steps.some((id) => check.answers[id] && !check.answers[id].again));
};

function wayOptions({progress}: Position, step: Step): readonly Option[] {
	const ways = (progress.problemOf(step)?.ways ?? []).map(({label}, index) => ({id: `way-${index}`, label}));
	return (step.reasons?.length ?? 0) > 0 ? [...ways, {id: 'override', label: 'go on regardless, with a reason'}] : ways;
}

function roundOptions(dialogue: Dialogue, {step}: Position): readonly Option[] {
	if (step?.input.kind !== 'rounds') return [];
	const rounds = openSeries(dialogue.check)[step.input.place];
	return [
		{id: 'go-on', label: step.input.place === 'closing' ? 'go on to the verdict' : 'enough: go on'},
		{id: 'more', label: 'one more round'},
		...(rounds.some(counts) ? [{id: 'strike', label: 'strike a round out'}] : []),
		...(rounds.length > 0 ? [{id: 'take-back', label: 'take the last reading back'}] : []),
	];
}

function verdictOptions({check}: Dialogue): readonly Option[] {
	const series = openSeries(check);
	return [
		{id: 'go-on', label: 'put the deck back'},
		{id: 'remedy', label: 'try a remedy and probe again'},
		{id: 'more-inner', label: 'more rounds at the inner radius'},
		{id: 'more-outer', label: 'more rounds at the outer radius'},
		...(hasReadings(series) ? [{id: 'strike', label: 'strike a round out'}] : []),
	];
}

function strikeOptions({check}: Dialogue): readonly Option[] {
	const series = openSeries(check);
	return (['inner', 'outer', 'extra', 'closing'] as const).flatMap((place) =>
		series[place].flatMap((round, index) =>
			isComplete(round) && !round.struck
				? [
						{
							id: `${place}:${index}`,
							label: `${place === 'extra' ? 'third radius' : place}, round ${index + 1}: ${round.innerLimit.typed} / ${round.outerLimit?.typed ?? ''}`,
						},
					]
				: [],
		),
	);
}

const strikeReasons = ['bumped the deck', 'read before it had settled', 'misread the gauge', 'draught or a door'];

function reasonsFor(excused: {readonly kind: 'override' | 'strike'; readonly step?: string}): readonly Option[] {
	const reasons = excused.kind === 'strike' ? strikeReasons : (stepById(excused.step ?? '')?.reasons ?? []);
	return [
		...reasons.map((reason) => ({id: reason, label: reason})),
		{id: otherReason, label: 'another reason (type it)'},
	];
}

function stageOptions(dialogue: Dialogue, {progress, step}: Position): readonly Option[] {
	const {check} = dialogue;
	const seen = [...new Set<StageId>(progress.visible.map((one) => one.stage))];
	const commands: Option[] = [
		...(check.stopped
			? [{id: 'carry-on', label: 'carry on with the check after all'}]
			: [{id: 'stop', label: 'stop here and put the deck back'}]),
		...(hasReadings(openSeries(check)) && !check.stopped
			? [
					{id: 'take-back', label: 'take the last reading back'},
					{id: 'strike', label: 'strike a round out'},
				]
			: []),
		...(step?.input.kind === 'rounds' ? [{id: 'enough', label: 'go on with the rounds there are'}] : []),
	];
	return [
		...commands,
		...seen.map((stage) => {
			const states = progress.visible.filter((one) => one.stage === stage).map((one) => progress.stateOf(one));
			return {id: `stage:${stage}`, label: `[${marks[worstOf(states)]}] ${stages[stage]}`};
		}),
	];
}

const gravest: readonly StepState[] = ['problem', 'again', 'open', 'overridden', 'done'];
const worstOf = (states: readonly StepState[]): StepState => gravest.find((state) => states.includes(state)) ?? 'open';

function stepOptions({progress}: Position, stage: StageId): readonly Option[] {
	return progress.visible
		.filter((one) => one.stage === stage)
		.map((one) => {
			const state = progress.stateOf(one);
			return {id: `step:${one.id}`, label: `[${marks[state]}] ${one.title}`};
		});
}
