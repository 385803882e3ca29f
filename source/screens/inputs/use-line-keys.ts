import {useLayoutEffect, useRef} from 'react';
import {isText, KEYS} from '../../terminal/keys.js';
import {useKeys} from '../keys-context.js';

type LineKeys = {
	/** A digit has marked a line, counted from 0; undefined: what was typed is no digit of a line any more. */
	readonly onMark: (line: number | undefined) => void;
	/** Enter after something else than the digit of a line. */
	readonly onMisfit: (typed: string) => void;
};

/**
 * Keys on their way to a list: a digit marks its line, for Enter to take. A number of more than a digit never takes one,
 * nor does an Enter in haste.
 */
export function useLineKeys(lines: number, {onMark, onMisfit}: LineKeys): void {
	const keys = useKeys();
	const typed = useRef('');
	useLayoutEffect(() => {
		if (!keys) return;
		keys.fieldGate = (key) => {
			const before = typed.current;
			typed.current = isText(key) ? before + key : '';
			if (!isText(key)) {
				if (key === KEYS.enter && keys.isHasty) return null;
				if (key !== KEYS.enter || before.trim() === '' || isLine(before, lines)) return key;
				onMisfit(before);
				return null;
			}
			if (isLine(typed.current, lines)) onMark(Number(typed.current) - 1);
			else if (isLine(before, lines)) onMark(undefined);
			return /\d/.test(key) ? null : key;
		};
		return () => {
			keys.fieldGate = null;
		};
	});
}

const isLine = (typed: string, lines: number): boolean => /^[1-9]$/.test(typed.trim()) && Number(typed) <= lines;
