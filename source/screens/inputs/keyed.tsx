import {useInput} from 'ink';
import type {ReactNode} from 'react';
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
