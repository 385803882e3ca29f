import {useInput} from 'ink';
import {type ReactNode, useState} from 'react';
import type {Entry} from '../../check/entry.js';
import type {Prompt} from '../../check/prompt.js';
import {lettersOf, spellings} from '../../spellings.js';
import {words} from '../../words/index.js';
import {textRows} from '../body.js';
import {Rows} from '../frame.js';
import {useLook} from '../look.js';
import {useLineKeys} from './use-line-keys.js';

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

type StillProps = {
	readonly prompt: Extract<Prompt, {kind: 'still'}>;
	readonly width: number;
	readonly onEntry: (entry: Entry) => void;
};

/** Whether all is still so: y says yes at once; a digit marks what is not, and only then Enter takes it. */
export const Still = ({prompt, width, onEntry}: StillProps): ReactNode => {
	const [marked, setMarked] = useState<number>();
	useLineKeys(
		prompt.items.map((_item, index) => index + 1),
		{
			onMark: (number) => setMarked(number === undefined ? undefined : number - 1),
			onMisfit: (text) => {
				setMarked(undefined);
				onEntry({kind: 'text', text});
			},
		},
	);
	useInput((_input, {return: isEnter}) => {
		if (isEnter && marked !== undefined) onEntry({kind: 'number', number: marked + 1});
	});
	return <Keyed lines={keyedLines(prompt, marked)} width={width} keys={keysOf({yes: () => onEntry({kind: 'yes'})})} />;
};

/** The keys that answer yes and no, whatever the language. */
export const keysOf = <Of,>(answers: {readonly yes: Of; readonly no?: Of}): Readonly<Record<string, Of>> =>
	Object.fromEntries(
		Object.entries(answers).flatMap(([answer, of]) =>
			lettersOf(spellings[answer as 'yes' | 'no']).map((key) => [key, of]),
		),
	);

/** What a control that knows single keys says, line by line; the layout counts these lines, the control draws them. */
export function keyedLines(prompt: Prompt, marked?: number): readonly string[] {
	switch (prompt.kind) {
		case 'yes-no':
			return [words.faces.yesNo(prompt)];
		case 'side':
			return prompt.options.map(words.faces.side);
		case 'still':
			return [
				words.faces.allStill,
				...prompt.items.map((item, index) =>
					words.faces.noLonger({number: index + 1, item, isMarked: index === marked}),
				),
			];
		case 'field':
		case 'choice':
		case 'none':
			return [];
	}
}

/** What each key of a question enters that one key answers. */
export function keyEntries(prompt: Extract<Prompt, {kind: 'yes-no' | 'side'}>): Readonly<Record<string, Entry>> {
	switch (prompt.kind) {
		case 'yes-no':
			return keysOf({yes: {kind: 'yes'}, no: {kind: 'no'}});
		case 'side':
			return Object.fromEntries(
				prompt.options.flatMap(({id, keys, spelled}) =>
					[...keys, ...lettersOf(spelled)].map((key) => [key, {kind: 'choose', id}]),
				),
			);
	}
}
