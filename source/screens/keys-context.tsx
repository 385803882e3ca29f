import {useInput} from 'ink';
import {createContext, useContext, useLayoutEffect} from 'react';
import type {KeyGate} from '../terminal/key-gate.js';

/** The part of the key feed that screens use. */
export type KeyControl = {
	/** The key in hand is an Enter in haste: it takes nothing that nobody has typed or marked. */
	readonly isHasty: boolean;
	gate: KeyGate | null;
	fieldGate: KeyGate | null;
	onClear: (() => void) | null;
	onPasteCut: (() => void) | null;
	hold(): void;
	release(): void;
};

const KeysContext = createContext<KeyControl | undefined>(undefined);
export const KeysProvider = KeysContext.Provider;
export const useKeys = (): KeyControl | undefined => useContext(KeysContext);

/**
 * Keys of the program: handled before any control sees them. A handler says true when it took the key, or gives the
 * keys that the control shall have in its place.
 */
export function useCommands(
	handle: (key: string) => boolean | readonly string[],
	onClear?: () => void,
	onPasteCut?: () => void,
): void {
	const keys = useKeys();
	// Ink listens to the feed only while some control is mounted; a screen that is only read has none.
	useInput(() => {});
	useLayoutEffect(() => {
		if (!keys) return;
		keys.gate = (key) => {
			const taken = handle(key);
			return typeof taken === 'boolean' ? (taken ? null : key) : taken;
		};
		keys.onClear = onClear ?? null;
		keys.onPasteCut = onPasteCut ?? null;
		return () => {
			keys.gate = null;
			keys.onClear = null;
			keys.onPasteCut = null;
		};
	});
}
