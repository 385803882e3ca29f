/** The keys that the program knows, each as the one sequence by which it is handed on. */
export const KEYS = {
	enter: '\r',
	escape: '\u001B',
	tab: '\t',
	shiftTab: '\u001B[Z',
	backspace: '\u007F',
	up: '\u001B[A',
	down: '\u001B[B',
	right: '\u001B[C',
	left: '\u001B[D',
	home: '\u001B[H',
	end: '\u001B[F',
	/** Help, which a text field can't take for text. Ink tells nobody of it: a gate has to catch it. */
	f1: '\u001BOP',
	pageUp: '\u001B[5~',
	pageDown: '\u001B[6~',
	/** Ctrl+C: leaves the program. Never handed to a screen. */
	interrupt: '\u0003',
	/** Ctrl+U: empties the field, as in every line editor. Never handed to a screen. */
	clear: '\u0015',
} as const;

// Key codes as in the control sequences of xterm, "PC-Style Function Keys" and "VT220-Style Function Keys"; the
// keypad's application codes are in the same document. Left out on purpose: Delete, which the text field takes for
// Backspace, and everything with a modifier.
const KNOWN_SEQUENCES: ReadonlyMap<string, string> = new Map([
	...Object.entries({A: KEYS.up, B: KEYS.down, C: KEYS.right, D: KEYS.left, H: KEYS.home, F: KEYS.end}).flatMap(
		([final, key]): [string, string][] => [
			[`\u001B[${final}`, key],
			[`\u001BO${final}`, key],
		],
	),
	['\u001B[Z', KEYS.shiftTab],
	['\u001BOP', KEYS.f1],
	['\u001B[11~', KEYS.f1],
	['\u001B[[A', KEYS.f1],
	['\u001B[1~', KEYS.home],
	['\u001B[7~', KEYS.home],
	['\u001B[4~', KEYS.end],
	['\u001B[8~', KEYS.end],
	['\u001B[5~', KEYS.pageUp],
	['\u001B[6~', KEYS.pageDown],
	['\u001BOM', KEYS.enter],
	...Array.from('pqrstuvwxy', (final, digit): [string, string] => [`\u001BO${final}`, String(digit)]),
	...Object.entries({j: '*', k: '+', l: ',', m: '-', n: '.', o: '/', X: '='}).map(([final, key]): [string, string] => [
		`\u001BO${final}`,
		key,
	]),
]);

/** The key that an escape sequence stands for, or undefined for one that the program has no use for. */
export const keyOfSequence = (sequence: string): string | undefined => KNOWN_SEQUENCES.get(sequence);

/** Whether a key is text, as against Enter, arrows and the like. */
export const isText = (key: string): boolean => key !== '' && !/^[\u0000-\u001F\u007F]/.test(key);
