import type {Answer, Check, Round} from '../check/check.js';
import type {AskedPrompt, Prompt} from '../check/prompt.js';
import type {Because, Label, Notice, Question, Refusal} from '../check/says.js';
import type {Trouble} from '../procedure/problem.js';
import {words} from './index.js';
import {found, speaker} from './speaker.js';
import {numberTyped, signedTyped} from './typed.js';

const {dialogue, problems, reasons} = words;

/** What a person reads of what the dialogue of a check tells. */
export const says: {
	readonly problem: (trouble: Trouble) => string;
	readonly refusal: (refusal: Refusal) => string;
	readonly notice: (notice: Notice) => string;
	readonly label: (label: Label) => string;
	readonly question: (question: Question) => string;
	readonly because: (because: Because) => string;
} = {
	problem: speaker(problems),
	refusal: speaker(dialogue.refusals),
	notice: speaker(dialogue.notices),
	label: speaker(dialogue.labels),
	question: speaker(dialogue.questions),
	because: speaker(dialogue.because),
};

/** A part of what is said by id, as it is read from a file. */
type OnFile = {readonly id: string; readonly values: unknown};

/** The sentence of what stands on file by an id; one that this version does not know may come from a later one. */
const onFile = (table: Readonly<Record<string, unknown>>, {id, values}: OnFile): string => {
	const sentence = found(table, id) as ((values: unknown) => string) | undefined;
	return sentence?.(values) ?? dialogue.unknown;
};

/** What was gone past, as it was said then where an earlier form of the file has it so. */
export const overriddenText = ({
	problem,
	said = onFile(problems, problem),
}: NonNullable<Answer['override']> | Check['overrides'][number]): string => said;

/** A reason on file: as it was typed, or by its id. */
export const reasonText = ({id, typed}: NonNullable<Round['struck']>['reason']): string =>
	typed ?? found(reasons, id) ?? dialogue.unknown;

/** Why a series was closed, as it stands on file. */
export const becauseText = (because: OnFile): string => onFile(dialogue.because, because);

/** How a number that is offered is written. */
const offered = {number: numberTyped, signed: signedTyped};

/** What is asked, with its labels and its question in words. */
export function promptInWords(prompt: AskedPrompt): Prompt {
	switch (prompt.kind) {
		case 'choice':
			return {...prompt, options: prompt.options.map((one) => ({...one, label: says.label(one.label)}))};
		case 'side':
			return {...prompt, options: prompt.options.map((one) => ({...one, label: says.label(one.label)}))};
		case 'yes-no': {
			const {question, lines, ...rest} = prompt;
			return {
				...rest,
				...(question ? {question: says.question(question)} : {}),
				...(lines ? {lines: lines.map(says.question)} : {}),
			};
		}
		case 'still':
			return {...prompt, items: prompt.items.map(says.label)};
		case 'field':
			return prompt.offers ? {...prompt, initial: offered[prompt.offers](prompt.initial)} : prompt;
		case 'none':
			return prompt;
	}
}
