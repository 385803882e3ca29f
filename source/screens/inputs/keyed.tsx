import {Text, useInput} from 'ink';
import type {ReactNode} from 'react';
import {styleOf, useLook, written} from '../look.js';

type KeyedProps = {
	/** The question in a few words. */
	readonly label: string;
	/** What each key answers. Other keys, Enter above all, do nothing. */
	readonly keys: Readonly<Record<string, () => void>>;
};

/** A question answered by one explicit key. */
export const Keyed = ({label, keys}: KeyedProps): ReactNode => {
	const look = useLook();
	useInput((input) => keys[input.toLowerCase()]?.());
	return (
		<Text wrap="wrap" {...styleOf('strong', look)}>
			{written(label, look)}
		</Text>
	);
};
