import type {Prompt} from '../check/prompt.js';
import type {Entry} from '../check/respond.js';

/** Commands of the plain face; answers never begin with a slash. */
export const plainCommands = '/back, /why, /steps, /stop, /leave';

/** Why a line that looks like a command is none; undefined for an answer. */
export const unknownCommand = (text: string): string | undefined =>
	text.trim().startsWith('/')
		? `'${text.trim().slice(0, 20)}' is no command; commands are ${plainCommands}.`
		: undefined;

/** What a prompt asks for, in words, choices by number. */
export function promptLines(prompt: Prompt): string[] {
	switch (prompt.kind) {
		case 'field':
			if (prompt.waysOut) return ['Type it anew, or an empty line for other ways out.'];
			if (prompt.initial === '') return [];
			return [
				`Empty line ${prompt.given ? 'keeps' : 'takes'}: ${prompt.initial}`,
				...(prompt.mayBeEmpty ? ['- for none.'] : []),
			];
		case 'choice':
			return prompt.options.map(({label}, index) => `  ${index + 1}. ${label}`);
		case 'yes-no':
			return [`${prompt.question ? `${prompt.question.replace(/[.?]$/, '')}? ` : ''}Answer y or n.`];
		case 'still':
			return [
				...prompt.items.map((item, index) => `  ${index + 1}. no longer so: ${item}`),
				'Answer y if all is still so, or a number.',
			];
		case 'side':
			return prompt.options.map(({label, keys}) => `  ${keys.join(' or ')}: ${label}`);
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
			const chosen = /^\d+$/.test(answer)
				? prompt.options[Number(answer) - 1]
				: prompt.options.find(({label, id}) => label === answer || id === answer);
			return chosen ? {kind: 'choose', id: chosen.id} : `Answer with a number from 1 to ${prompt.options.length}.`;
		}
		case 'yes-no':
			return yesOrNo(answer) ?? 'Answer y or n.';
		case 'still':
			if (/^\d+$/.test(answer)) return {kind: 'number', number: Number(answer)};
			return yesOrNo(answer) ?? 'Answer y if all is still so, or the number of what is not.';
		case 'side': {
			const side = prompt.options.find(
				({id, keys}) => id === answer.toLowerCase() || keys.includes(answer.toLowerCase()),
			);
			return side ? {kind: 'choose', id: side.id} : `Answer ${prompt.options.map(({keys}) => keys[0]).join(' or ')}.`;
		}
		case 'none':
			return 'Nothing more is asked.';
	}
}

function yesOrNo(answer: string): Entry | undefined {
	if (/^y(es)?$/i.test(answer)) return {kind: 'yes'};
	return /^no?$/i.test(answer) ? {kind: 'no'} : undefined;
}
