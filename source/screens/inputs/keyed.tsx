import {useInput} from 'ink';
import type {ReactNode} from 'react';
import type {Entry} from '../../check/entry.js';
import type {Prompt} from '../../check/prompt.js';
import {words} from '../../words/index.js';
import {textRows} from '../body.js';
import {Rows} from '../frame.js';
import {useLook} from '../look.js';

type KeyedProps = {
	/** The question in a few words, or what each key means. */
	readonly lines: readonly string[];
	readonly width: number;
	/** What each key answers. Other keys, Enter above all, do nothing. */
	readonly keys: Readonly<Record<string, () => void>>;
};

/** A question answered by one explicit key. */
export const Keyed = ({lines, width, keys}: KeyedProps): ReactNode => {
	const look = useLook();
	useInput((input) => keys[input.toLowerCase()]?.());
	return <Rows rows={lines.flatMap((line) => textRows(line, width, look, 'strong'))} />;
};

/** What a control that knows single keys says, line by line; the layout counts these lines, the control draws them. */
export function keyedLines(prompt: Prompt): readonly string[] {
	switch (prompt.kind) {
		case 'yes-no':
			return [words.faces.yesNo(prompt)];
		case 'side':
			return prompt.options.map(words.faces.side);
		case 'still':
			return [
				words.faces.allStill,
				...prompt.items.map((item, index) => words.faces.noLonger({number: index + 1, item})),
			];
		case 'field':
		case 'choice':
		case 'none':
			return [];
	}
}

/** What each of those keys enters. */
export function keyEntries(
	prompt: Extract<Prompt, {kind: 'yes-no' | 'side' | 'still'}>,
): Readonly<Record<string, Entry>> {
	switch (prompt.kind) {
		case 'yes-no':
			return {y: {kind: 'yes'}, n: {kind: 'no'}};
		case 'side':
			return Object.fromEntries(prompt.options.flatMap(({id, keys}) => keys.map((key) => [key, {kind: 'choose', id}])));
		case 'still': {
			const numbers = prompt.items.map((_, index) => [index + 1, {kind: 'number', number: index + 1}]);
			return {y: {kind: 'yes'}, ...Object.fromEntries(numbers)};
		}
	}
}
