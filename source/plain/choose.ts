import {type Entry, textOf as textOfEntry} from '../check/entry.js';
import type {Prompt} from '../check/prompt.js';
import type {Shown} from '../pages/shown-lines.js';
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
	const asked = await askUntil(
		title,
		shown,
		prompt,
		lines,
		options.some(({id}) => id === 'back'),
	);
	if (asked.kind === 'back') return {kind: 'chosen', id: 'back'};
	return asked.kind === 'entry' ? {kind: 'chosen', id: textOfEntry(asked.entry)} : asked;
}

export type Asked =
	| {readonly kind: 'entry'; readonly entry: Entry}
	| {readonly kind: 'back'}
	| Exclude<Chosen, {kind: 'chosen'}>;

/** Asks until a line is an entry for the prompt, or leads away; a pipe ends at the first line that is neither. */
export async function askUntil(
	title: string,
	shown: readonly Shown[],
	prompt: Prompt,
	lines: Lines,
	canGoBack: boolean,
): Promise<Asked> {
	lines.say('');
	for (const text of [title, ...shown.map(textOf), ...promptLines(prompt)]) lines.say(text);
	for (;;) {
		const text = await lines.read();
		if (text === undefined) return {kind: 'input-ended'};
		if (text.trim() === '/leave') return {kind: 'left'};
		if (text.trim() === '/back' && canGoBack) return {kind: 'back'};
		const entry = entryOf(prompt, text);
		if (typeof entry !== 'string') return {kind: 'entry', entry};
		if (lines.piped) return {kind: 'refused', sentence: `${title} '${text.trim()}': ${entry}`};
		lines.say(entry);
	}
}
