import {useLayoutEffect, useRef} from 'react';
import {isText, KEYS} from '../../terminal/keys.js';
import {useKeys} from '../keys-context.js';

type LineKeys = {
	/** A number has marked a line; undefined: what was typed is no number of a line any more. */
	readonly onMark: (number: number | undefined) => void;
	/** Enter after something else than the number of a line. */
	readonly onMisfit: (typed: string) => void;
};

/**
 * Keys on their way to a list: a number marks its line, for Enter to take. What is no number of a line never takes one,
 * nor does an Enter in haste.
 *
 * @param numbers those by which lines are marked
 */
export function useLineKeys(numbers: readonly number[], {onMark, onMisfit}: LineKeys): void {
	const keys = useKeys();
	const typed = useRef('');
	useLayoutEffect(() => {
		if (!keys) return;
		keys.fieldGate = (key) => {
			const before = typed.current;
			typed.current = isText(key) ? before + key : '';
			if (!isText(key)) {
				if (key === KEYS.enter && keys.isHasty) return null;
				if (key !== KEYS.enter || before.trim() === '' || isLine(before, numbers)) return key;
				onMisfit(before);
				return null;
			}
			if (isLine(typed.current, numbers)) onMark(Number(typed.current));
			else if (isLine(before, numbers)) onMark(undefined);
			return /\d/.test(key) ? null : key;
		};
		return () => {
			keys.fieldGate = null;
		};
	});
}

const isLine = (typed: string, numbers: readonly number[]): boolean =>
	/^(?:0|[1-9]\d?)$/.test(typed.trim()) && numbers.includes(Number(typed));
