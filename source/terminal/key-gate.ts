import {isText} from './keys.js';

/** What a screen does to a key before its input sees it: hand it on, put others in its place, or drop it (null). */
export type KeyGate = (key: string) => string | readonly string[] | null;

/** What a gate makes of some keys, one after another. */
export const through = (gate: KeyGate | null, keys: readonly string[]): readonly string[] =>
	gate === null ? keys : keys.flatMap((key) => gate(key) ?? []);

/** Stretches of text in one piece each, and between them other keys that a gate has put there. */
export function inPieces(keys: readonly string[]): readonly string[] {
	const pieces: string[] = [];
	let isOpen = false;
	for (const key of keys) {
		if (isText(key) && isOpen) pieces.push((pieces.pop() ?? '') + key);
		else pieces.push(key);
		isOpen = isText(key);
	}
	return pieces;
}
