import {Box, Text} from 'ink';
import TextInput from 'ink-text-input';
import {type ReactNode, useLayoutEffect, useRef, useState} from 'react';
import {printable} from '../../terminal/printable.js';
import {useLook, written} from '../look.js';

type FieldProps = {
	readonly value: string;
	/** Unit of a bare number, shown behind the field. */
	readonly unit: string;
	/** What Enter takes while nothing is typed. */
	readonly offer: string;
	/** The answer may be 'none': a hyphen then. */
	readonly mayBeEmpty: boolean;
	readonly onChange: (value: string) => void;
	readonly onSubmit: (value: string) => void;
};

/** A line to type in. A line end that comes in the middle of a burst submits as Enter does. */
export const Field = ({value, unit, offer, mayBeEmpty, onChange, onSubmit}: FieldProps): ReactNode => {
	const look = useLook();
	const latest = useRef(value);
	latest.current = value;
	const submit = (text: string): void => onSubmit(text.trim() === '' ? offer : text);
	// The text field renews its key handler in a passive effect; a layout effect makes React run it in the same turn.
	const [, settle] = useState(value);
	useLayoutEffect(() => settle(value), [value]);
	const change = (next: string): void => {
		const end = next.search(/[\r\n]/);
		const text = end === -1 ? next : next.slice(0, end);
		latest.current = text;
		onChange(text);
		if (end !== -1) submit(text);
	};
	return (
		<Box>
			<Text>{'> '}</Text>
			<TextInput value={value} onChange={change} onSubmit={() => submit(latest.current)} />
			{value === '' && offer !== '' ? (
				<Text wrap="truncate">{`Enter keeps ${printable(written(offer, look), 40)}${mayBeEmpty ? ', - for none' : ''}`}</Text>
			) : null}
			{unit === '' ? null : <Text dimColor> {written(unit, look)}</Text>}
		</Box>
	);
};
