import type {Entry} from '../check/entry.js';
import type {Prompt} from '../check/prompt.js';
import {heardOf, type Shown} from '../pages/shown-lines.js';
import type {Option} from '../procedure/step.js';
import {yesOrNo} from '../spellings.js';
import {words} from '../words/index.js';
import {says} from '../words/says.js';

const say = words.faces.plain;

/** Lines in, lines out. Undefined means that the input has ended. */
export type Lines = {
	readonly read: () => Promise<string | undefined>;
	readonly say: (text: string) => void;
	/** Answers come from a pipe or a file: the first refusal ends the run, lest later lines answer other questions. */
	readonly piped: boolean;
};

/** A line in words; held-together spaces matter on a screen only. */
export const plainText = (shown: Shown): string => heardOf(shown).replaceAll('\u00a0', ' ');

/** All that a voice says of it, a line each. */
export const plainTexts = (shown: readonly Shown[]): string[] => shown.map(plainText).filter((text) => text !== '');

/** Commands of the plain face; answers never begin with a slash. */
export const plainCommands = '/back, /again, /why, /steps, /stop, /leave';

/** Why a line that looks like a command is none; undefined for an answer. */
export const unknownCommand = (text: string): string | undefined =>
	text.trim().startsWith('/') ? say.noCommand({typed: text.trim().slice(0, 20), commands: plainCommands}) : undefined;

/** What a prompt asks for, in words, choices by number. */
export function promptLines(prompt: Prompt): string[] {
	switch (prompt.kind) {
		case 'field':
			if (prompt.waysOut) return [say.typeAnew];
			if (prompt.initial === '') return [];
			return [
				say[prompt.given ? 'keeps' : 'takes']({text: prompt.initial}),
				...(prompt.mayBeEmpty ? [say.forNone] : []),
			];
		case 'choice':
			return [
				...prompt.options.map(({label, number}, index) => say.option({number: number ?? index + 1, label})),
				...(prompt.several ? [say.several] : []),
				...(prompt.offersFirst ? prompt.options.slice(0, 1).map(({label}) => say.takes({text: label})) : []),
			];
		case 'yes-no':
			if (prompt.lines && prompt.lines.length > 1)
				return [...prompt.lines.map((label, index) => say.option({number: index + 1, label})), say.marks];
			return [say.yesNo({question: prompt.lines?.[0] ?? prompt.question})];
		case 'still':
			return [...prompt.items.map((item, index) => say.noLonger({number: index + 1, item})), say.still];
		case 'side':
			return prompt.options.map(say.side);
		case 'none':
			return [];
	}
}

/** A line as an entry for the prompt, or one sentence saying what is wanted. */
export function entryOf(prompt: Prompt, text: string): Entry | string {
	const answer = text.trim();
	switch (prompt.kind) {
		case 'field':
			return {kind: 'text', text: answer === '' ? prompt.initial : text};
		case 'choice': {
			if (prompt.several && /^[\d\s,]*\d[\d\s,]*$/.test(answer)) return {kind: 'text', text: answer};
			const typed = answer === '' && prompt.offersFirst ? '1' : answer;
			const chosen = /^\d+$/.test(typed)
				? prompt.options.find(({number}, index) => (number ?? index + 1) === Number(typed))
				: prompt.options.find(({label, id}) => label === answer || id === answer);
			if (chosen) return {kind: 'choose', id: chosen.id};
			if (isReading(answer)) return says.refusal({id: 'no-reading-here', values: {typed: answer}});
			return say.wanted.number({last: lastNumber(prompt.options)});
		}
		case 'yes-no':
			return prompt.lines ? marksOf(prompt.lines, answer) : (yesNoEntry(answer) ?? say.wanted.yesNo);
		case 'still':
			if (/^\d+$/.test(answer)) return {kind: 'number', number: Number(answer)};
			return yesNoEntry(answer) ?? say.wanted.still;
		case 'side': {
			const side = prompt.options.find(({keys, spelled}) => [...keys, ...spelled].includes(answer.toLowerCase()));
			return side
				? {kind: 'choose', id: side.id}
				: say.wanted.side({keys: prompt.options.flatMap(({keys}) => keys.slice(0, 1))});
		}
		case 'none':
			return say.wanted.nothing;
	}
}

/** Of a list: all of it, or all but some lines by their numbers; of its last line y or n. */
function marksOf({length}: readonly string[], answer: string): Entry | string {
	const answered = yesOrNo(answer);
	if (answered === 'yes') return {kind: 'marks', notSo: []};
	if (length === 1) return answered === 'no' ? {kind: 'marks', notSo: [1]} : say.wanted.yesNo;
	const notSo = answer.split(/[\s,]+/).map(Number);
	const isLine = (number: number): boolean => Number.isInteger(number) && number >= 1 && number <= length;
	return notSo.every(isLine) ? {kind: 'marks', notSo} : say.wanted.marks;
}

const lastNumber = (options: readonly Option[]): number =>
	Math.max(0, ...options.map(({number}, index) => number ?? index + 1));

/** Typed for a gauge, or for another number: more than the number of a line. */
const isReading = (answer: string): boolean => /\d/.test(answer) && !/^\d+$/.test(answer);

function yesNoEntry(answer: string): Entry | undefined {
	const kind = yesOrNo(answer);
	return kind && {kind};
}
