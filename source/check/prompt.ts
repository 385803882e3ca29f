import {takes} from '../procedure/step.js';
import {openLines, tickStates} from '../procedure/ticks.js';
import {type Dialogue, earlierText, type Position, positionOf, ticksAtOnce} from './dialogue.js';
import {
	biasOptions,
	reasonsFor,
	roundOptions,
	stageOptions,
	stepOptions,
	stillItems,
	strikeOptions,
	verdictOptions,
	wayOptions,
} from './prompt-options.js';
import {type Label, named, type PromptOption, plainly, type Question} from './says.js';
import {openSeries} from './series.js';
import {type SideOption, sideOptions} from './side-options.js';

/** What kind of entry is wanted now, with its labels and its question by id, or in words for the faces. */
export type Prompt<L = string, Q = string> = {readonly key: string} & (
	| {
			readonly kind: 'field';
			readonly initial: string;
			readonly mayBeEmpty: boolean;
			/** A reading that wants the arm to have settled. */
			readonly settle?: true;
			/** Enter alone shows the ways out of an answer that does not pass. */
			readonly waysOut?: true;
			/** What is offered is a number, or one with its side. */
			readonly offers?: 'number' | 'signed';
			/** What is offered was given before, not only suggested. */
			readonly given?: true;
	  }
	| {
			readonly kind: 'choice';
			readonly options: readonly PromptOption<L>[];
			readonly initial?: string | undefined;
			/** More than one may be chosen; those that were are marked. */
			readonly several?: {readonly marked: readonly string[]};
			/** An empty line takes the first one too, not only Enter where it is marked. */
			readonly offersFirst?: true;
	  }
	| {
			readonly kind: 'yes-no';
			readonly question?: Q;
			/** Of a list the lines that are still open, in their order: a face may ask for all of them at once. */
			readonly lines?: readonly Q[];
	  }
	/** y, or the number of what is not so. */
	| {readonly kind: 'still'; readonly items: readonly L[]}
	/** One key for one of two sides. */
	| {readonly kind: 'side'; readonly options: readonly SideOption<L>[]}
	| {readonly kind: 'none'}
);

/** As the dialogue gives it. */
export type AskedPrompt = Prompt<Label, Question>;

/** The prompt that belongs to a dialogue. */
export function promptOf(dialogue: Dialogue, position: Position = positionOf(dialogue)): AskedPrompt {
	const {mode} = dialogue;
	switch (mode.kind) {
		case 'ask':
			return askPrompt(dialogue, position);
		case 'side':
			return {key: 'side', kind: 'side', options: sideOptions(mode.sides, position.progress.facts, dialogue.names)};
		case 'ways':
			return {key: 'ways', kind: 'choice', options: position.step ? wayOptions(position, position.step) : []};
		case 'reason':
			return {key: 'reason', kind: 'choice', options: reasonsFor(mode.excused)};
		case 'reason-typed':
			return {key: 'reason-typed', kind: 'field', initial: '', mayBeEmpty: false};
		case 'strike':
			return {key: 'strike', kind: 'choice', options: strikeOptions(dialogue)};
		case 'other-way':
			return {key: 'other-way', kind: 'choice', options: verdictOptions(dialogue, position.progress.facts)};
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

function askPrompt(dialogue: Dialogue, position: Position): AskedPrompt {
	const {step, slot, stuck, mendable, progress} = position;
	if (!step) return {key: 'complete', kind: 'none'};
	if (stuck && !mendable) return {key: `${step.id}-stuck`, kind: 'choice', options: wayOptions(position, step)};
	const key = slot ? `${step.id}-${slot.index}-${slot.which}` : step.id;
	const {input} = step;
	switch (input.kind) {
		case 'text':
		case 'number':
		case 'signed':
		case 'clock':
			return {
				key: mendable ? `${key}-mend` : key,
				kind: 'field',
				initial: earlierText(dialogue, position),
				mayBeEmpty: input.optional ?? false,
				...(input.kind === 'number' || input.kind === 'signed' ? {offers: input.kind} : {}),
				...(mendable ? {waysOut: true} : {}),
				...(dialogue.check.answers[step.id] ? {given: true} : {}),
			};
		case 'choice':
		case 'several': {
			const value = dialogue.check.answers[step.id]?.value;
			const options = input.options.map(
				(option): PromptOption => ({id: option, label: {id: 'option', values: {step: step.id, option}}}),
			);
			if (input.kind === 'several')
				return {key, kind: 'choice', options, several: {marked: Array.isArray(value) ? value : []}};
			return {
				key,
				kind: 'choice',
				options,
				initial: typeof value === 'string' ? value : step.suggest?.(progress.facts),
			};
		}
		case 'confirm':
			return {key, kind: 'yes-no'};
		case 'ticks': {
			if (!takes(step, 'ticks')) return {key, kind: 'none'};
			const [line, ...others] = openLines(tickStates(step, progress.facts));
			if (!line) return {key: `${key}-all`, kind: 'yes-no', question: plainly('all-still-so')};
			const asked = (one: string): Question => ({id: 'tick', values: {list: step.id, line: one}});
			const lines = [line, ...others].map(asked);
			return ticksAtOnce(dialogue, step)
				? {key: `${key}-at-once`, kind: 'yes-no', question: plainly('all-lines-so'), lines}
				: {key: `${key}-${line}`, kind: 'yes-no', question: asked(line), lines};
		}
		case 'profile':
			return {
				key,
				kind: 'choice',
				options: [
					...progress.facts.profiles
						.filter((one) => one.kind === input.of && !one.setAside)
						.map(({id, name}) => ({id, label: named(name)})),
					{id: 'new', label: plainly('new-profile')},
				],
			};
		case 'still':
			return {
				key,
				kind: 'still',
				items: stillItems(dialogue, step).map(({id}): Label => ({id: 'in-doubt', values: {item: id}})),
			};
		case 'rounds':
			return slot
				? {
						key,
						kind: 'field',
						initial: earlierText(dialogue, position),
						mayBeEmpty: false,
						offers: 'signed',
						settle: true,
					}
				: {
						key: `${key}-shown-${openSeries(dialogue.check)[input.place].length}`,
						kind: 'choice',
						options: roundOptions(dialogue, position),
					};
		case 'verdict':
			return {key, kind: 'choice', options: verdictOptions(dialogue, progress.facts)};
		case 'bias-result':
			return {key, kind: 'choice', options: biasOptions(dialogue)};
	}
}
