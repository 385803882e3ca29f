import {useRef} from 'react';
import type {Prompt} from '../check/prompt.js';
import {isText, KEYS} from '../terminal/keys.js';

/** An Enter this soon after another one, or after a digit that chose, is a bounce or impatience. */
const impatientMs = 500;

type FieldKeys = {
	/** What the control is to have in place of a key; true swallows it, false leaves it as it is. */
	readonly replaced: (key: string) => boolean | readonly string[];
	/** The text in the field was refused: the next letter or digit begins anew. */
	readonly begunAnew: () => void;
	readonly goesOn: () => void;
};

/** Keys on their way to a control: nothing is accepted by haste, and a refused text makes room for the next. */
export function useFieldKeys(prompt: Prompt, typed: string): FieldKeys {
	const lastEnter = useRef(0);
	const isRefused = useRef(false);
	const isInHaste = (): boolean => {
		const soon = performance.now() - lastEnter.current < impatientMs;
		lastEnter.current = performance.now();
		return soon && (prompt.kind === 'choice' || (prompt.kind === 'field' && typed === ''));
	};
	const replaced = (key: string): boolean | readonly string[] => {
		if (key === KEYS.enter) return isInHaste();
		if (prompt.kind === 'choice' && /^[1-9]$/.test(key)) lastEnter.current = performance.now();
		if (prompt.kind !== 'field' || !isRefused.current || !isText(key)) return false;
		isRefused.current = false;
		return [KEYS.clear, key];
	};
	return {
		replaced,
		begunAnew: () => {
			isRefused.current = true;
		},
		goesOn: () => {
			isRefused.current = false;
		},
	};
}
