import {Box, Text} from 'ink';
import TextInput from 'ink-text-input';
import {type ReactNode, useLayoutEffect, useRef, useState} from 'react';
import type {Prompt} from '../../check/prompt.js';
import {printable} from '../../terminal/printable.js';
import {words} from '../../words/index.js';
import {useLook, written} from '../look.js';
import {useCursorKeys} from './use-cursor-keys.js';

/** What a field offers while nothing is typed. */
export type FieldPrompt = Pick<Extract<Prompt, {kind: 'field'}>, 'initial' | 'mayBeEmpty' | 'waysOut' | 'given'>;

type FieldProps = {
	readonly value: string;
	/** Unit of a bare number, shown behind the field. */
	readonly unit: string;
	readonly prompt: FieldPrompt;
	readonly onChange: (value: string) => void;
	readonly onSubmit: (value: string) => void;
};

function hintFor({initial, mayBeEmpty, waysOut, given}: FieldPrompt): string {
	if (waysOut) return words.faces.field.waysOut;
	if (initial === '') return '';
	return words.faces.field[given ? 'keeps' : 'takes']({text: printable(initial, 40), mayBeEmpty});
}

/** A line to type in. A line end that comes in the middle of a burst submits as Enter does. */
export const Field = ({value, unit, prompt, onChange, onSubmit}: FieldProps): ReactNode => {
	const look = useLook();
	const latest = useRef(value);
	latest.current = value;
	const edited = useCursorKeys(value);
	const submit = (text: string): void => onSubmit(text.trim() === '' ? prompt.initial : text);
	// The text field renews its key handler in a passive effect; a layout effect makes React run it in the same turn.
	const [, settle] = useState(value);
	useLayoutEffect(() => settle(value), [value]);
	const change = (next: string): void => {
		const end = next.search(/[\r\n]/);
		const text = end === -1 ? next : next.slice(0, end);
		latest.current = text;
		edited(next);
		onChange(text);
		if (end !== -1) submit(text);
	};
	const hint = value === '' ? written(hintFor(prompt), look) : '';
	return (
		<Box>
			<Text>{'> '}</Text>
			<TextInput value={value} onChange={change} onSubmit={() => submit(latest.current)} />
			{hint === '' ? null : <Text wrap="truncate">{hint}</Text>}
			{unit === '' || hint !== '' || /\p{L}|[%°′]/u.test(value) ? null : <Text dimColor> {written(unit, look)}</Text>}
		</Box>
	);
};
