import {useLayoutEffect, useRef} from 'react';
import {KEYS} from '../../terminal/keys.js';
import {useKeys} from '../keys-context.js';

/**
 * Keeps the cursor of a text field inside its text. The field's own lets an arrow take it beyond an end, and what is
 * typed next then lands in the wrong place. It also knows neither Home and End nor characters of several code units.
 * What an empty field offers is not taken by an Enter in haste.
 *
 * @param value what the field holds
 * @returns to be told of each text that the field makes of its value and a key
 */
export function useCursorKeys(value: string): (next: string) => void {
	const keys = useKeys();
	// Where the field's own cursor stands, in code units from the start: at first behind the text.
	const at = useRef(value.length);
	// The field does the same where its text has become shorter.
	at.current = Math.min(at.current, value.length);
	useLayoutEffect(() => {
		if (!keys) return;
		keys.fieldGate = (key) => {
			if (key === KEYS.enter && value === '' && keys.isHasty) return null;
			const target = targetOf(key, value, at.current);
			if (target === undefined) return key;
			const count = Math.abs(target - at.current);
			// A Backspace moves it when the field hands over the shorter text.
			if (key === KEYS.backspace) return repeated(key, count);
			const step = target < at.current ? KEYS.left : KEYS.right;
			at.current = target;
			return repeated(step, count);
		};
		return () => {
			keys.fieldGate = null;
		};
	});
	return (next) => {
		at.current += next.length - value.length;
	};
}

const repeated = (key: string, count: number): string[] => Array.from({length: count}, () => key);

/** Where a key takes the cursor, or undefined if it is none that does. */
function targetOf(key: string, value: string, at: number): number | undefined {
	switch (key) {
		case KEYS.home:
			return 0;
		case KEYS.end:
			return value.length;
		case KEYS.left:
		case KEYS.backspace:
			return characterAt(value, at - 1)?.start ?? at;
		case KEYS.right:
			return characterAt(value, at)?.end ?? at;
		default:
			return undefined;
	}
}

/** The whole character that a code unit belongs to: an emoji or an accented letter may have several. */
function characterAt(text: string, index: number): {readonly start: number; readonly end: number} | undefined {
	if (index < 0) return undefined;
	const found = new Intl.Segmenter().segment(text).containing(index);
	return found && {start: found.index, end: found.index + found.segment.length};
}
