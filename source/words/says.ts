import type {Answer, Check, Round} from '../check/check.js';
import type {AskedPrompt, Prompt} from '../check/prompt.js';
import type {Because, Label, Notice, Question, Refusal} from '../check/says.js';
import type {ProblemId, Trouble} from '../procedure/problem.js';
import type {ReasonId} from '../procedure/reasons.js';
import {words} from './index.js';
import {speaker} from './speaker.js';

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

const isKnown = <Values extends object>(table: Values, id: string): id is string & keyof Values =>
	Object.hasOwn(table, id);

/** What was gone past, as it was said then where an earlier form of the file has it so. */
export function overriddenText({problem, said}: NonNullable<Answer['override']> | Check['overrides'][number]): string {
	if (said !== undefined) return said;
	return isKnown(problems, problem.id) ? says.problem(problem as Trouble & {readonly id: ProblemId}) : dialogue.unknown;
}

/** A reason on file: as it was typed, or by its id. */
export function reasonText({id, typed}: NonNullable<Round['struck']>['reason']): string {
	if (typed !== undefined) return typed;
	return isKnown(reasons, id) ? reasons[id as ReasonId] : dialogue.unknown;
}

/** Why a series was closed, as it stands on file. */
export const becauseText = (because: OnFile): string =>
	isKnown(dialogue.because, because.id) ? says.because(because as Because) : dialogue.unknown;

/** What is asked, with its labels and its question in words. */
export function promptInWords(prompt: AskedPrompt): Prompt {
	switch (prompt.kind) {
		case 'choice':
			return {...prompt, options: prompt.options.map((one) => ({...one, label: says.label(one.label)}))};
		case 'side':
			return {...prompt, options: prompt.options.map((one) => ({...one, label: says.label(one.label)}))};
		case 'yes-no': {
			const {question, ...rest} = prompt;
			return {...rest, ...(question ? {question: says.question(question)} : {})};
		}
		case 'still':
			return {...prompt, items: prompt.items.map(says.label)};
		case 'field':
		case 'none':
			return prompt;
	}
}
