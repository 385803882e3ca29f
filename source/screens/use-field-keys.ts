import {useRef} from 'react';
import type {Prompt} from '../check/prompt.js';
import {isText, KEYS} from '../terminal/keys.js';

type FieldKeys = {
	/** What the field is to have in place of a key; false leaves it as it is. */
	readonly replaced: (key: string) => false | readonly string[];
	/** The text in the field was refused, and makes room for whatever comes. */
	readonly makesRoom: () => boolean;
	/** The text in the field was refused: the next letter or digit begins anew. */
	readonly begunAnew: () => void;
	readonly goesOn: () => void;
};

/** Keys on their way to a field: a refused text makes room for the next. */
export function useFieldKeys({kind}: Prompt): FieldKeys {
	const isRefused = useRef(false);
	return {
		replaced: (key) => {
			if (kind !== 'field' || !isRefused.current || !isText(key)) return false;
			isRefused.current = false;
			return [KEYS.clear, key];
		},
		makesRoom: () => isRefused.current,
		begunAnew: () => {
			isRefused.current = true;
		},
		goesOn: () => {
			isRefused.current = false;
		},
	};
}
