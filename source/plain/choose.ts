import type {Shown} from '../findings/shown-lines.js';
import type {Option} from '../procedure/step.js';
import {entryOf, promptLines} from './ask.js';
import {type Lines, textOf} from './converse.js';

export type Chosen =
	| {readonly kind: 'chosen'; readonly id: string}
	| {readonly kind: 'left' | 'input-ended'}
	| {readonly kind: 'refused'; readonly sentence: string};

/** Asks for one of a list by number, until one is chosen or the list is left. */
export async function choose(
	title: string,
	shown: readonly Shown[],
	options: readonly Option[],
	lines: Lines,
): Promise<Chosen> {
	const prompt = {key: title, kind: 'choice', options} as const;
	lines.say('');
	for (const text of [title, ...shown.map(textOf), ...promptLines(prompt)]) lines.say(text);
	for (;;) {
		const text = await lines.read();
		if (text === undefined) return {kind: 'input-ended'};
		if (text.trim() === '/leave') return {kind: 'left'};
		if (text.trim() === '/back' && options.some(({id}) => id === 'back')) return {kind: 'chosen', id: 'back'};
		const entry = entryOf(prompt, text);
		if (typeof entry !== 'string' && entry.kind === 'choose') return {kind: 'chosen', id: entry.id};
		const sentence = typeof entry === 'string' ? entry : 'Answer with a number.';
		if (lines.piped) return {kind: 'refused', sentence: `${title} '${text.trim()}': ${sentence}`};
		lines.say(sentence);
	}
}
