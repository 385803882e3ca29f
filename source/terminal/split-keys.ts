import {KEYS, keyOfSequence} from './keys.js';

export interface TypedKey {
	readonly key: string;
	/** Came inside a bracketed paste. */
	readonly pasted: boolean;
}

/** What must be remembered from one read to the next. */
export interface SplitState {
	/** Start of an escape sequence whose end has not come yet. */
	readonly rest: string;
	readonly inPaste: boolean;
	/** The last key was a carriage return, so a line feed that follows belongs to it. */
	readonly afterReturn: boolean;
}

export const SPLIT_START: SplitState = {rest: '', inPaste: false, afterReturn: false};

const PASTE_START = '\u001B[200~';
const PASTE_END = '\u001B[201~';

// Grammar of ECMA-48 section 5.4 (control sequences) and 5.6 (control strings), with three additions from xterm: a
// second ESC in front for Alt, the Linux console's ESC [ [ A, and the three bytes behind an old mouse report.
const STRING_BODY = '[\\]PX^_][^\\u0003\\u0007\\u0018\\u001A\\u001B]*';
const WHOLE = new RegExp(
	`\\u001B(?:\\u001B?\\[(?:\\[[@-~]|M[^]{3}|(?!M)[0-?]*[ -/]*[@-Z\\\\-~])|\\u001B?O[\\d;]*[@-~]|${STRING_BODY}(?:\\u0007|\\u001B\\\\))`,
	'y',
);
const UNFINISHED = new RegExp(
	`\\u001B(?:\\u001B?(?:\\[(?:\\[|M[^]{0,2}|[0-?]*[ -/]*)|O[\\d;]*)?|${STRING_BODY}\\u001B?)$`,
	'y',
);
const BROKEN_OFF = new RegExp(`\\u001B(?:\\u001B?(?:\\[[0-?]*[ -/]*|O[\\d;]*)|${STRING_BODY})`, 'y');

// Invisible or direction-changing characters, halves of a pair and the decoder's mark for a bad byte: nobody types
// them into a reading or a name on purpose. The joiners U+200C and U+200D stay, since scripts and emoji need them.
const UNWANTED =
	/[\u0000-\u001F\u007F-\u009F\u00AD\u061C\u115F\u1160\u200B\u200E\u200F\u2028-\u202E\u2060-\u206F\u3164\uFEFF\uFFA0\uFFF0-\uFFFF]|\u034F|\p{Surrogate}|[\u{E0000}-\u{E0FFF}]|\p{Noncharacter_Code_Point}/u;

const matchAt = (pattern: RegExp, text: string, index: number): string | undefined => {
	pattern.lastIndex = index;
	return pattern.exec(text)?.[0];
};

const keyOfCharacter = (character: string, inPaste: boolean): string | undefined => {
	if (character === KEYS.interrupt) return character;
	if (character === '\r' || character === '\n') return KEYS.enter;
	if (character === '\t') return inPaste ? ' ' : KEYS.tab;
	if (character === '\b' || character === KEYS.backspace) return inPaste ? undefined : KEYS.backspace;
	if (character === KEYS.clear) return inPaste ? undefined : KEYS.clear;
	return UNWANTED.test(character) ? undefined : character;
};

// A control character of the C1 set is by definition (ECMA-48, 5.3) another spelling of ESC and a letter.
const spellOutC1 = (text: string): string =>
	text.replaceAll(/[\u0080-\u009F]/g, (c) => `\u001B${String.fromCharCode(c.charCodeAt(0) - 0x40)}`);

/**
 * Takes a read from the terminal apart into single keys. Line ends become Enter, paste marks vanish, and whatever is
 * neither text nor a key of {@link KEYS} (function keys, mouse and focus reports, replies, Alt and Ctrl chords,
 * control characters) is dropped. Ctrl+C is reported wherever it stands.
 */
export const splitKeys = (
	chunk: string,
	state: SplitState = SPLIT_START,
): {readonly keys: readonly TypedKey[]; readonly state: SplitState} => {
	const text = state.rest + spellOutC1(chunk);
	const keys: TypedKey[] = [];
	let {inPaste, afterReturn} = state;
	let index = 0;
	const add = (key: string | undefined) => {
		if (key !== undefined) keys.push({key, pasted: inPaste});
	};
	while (index < text.length) {
		if (text[index] !== KEYS.escape) {
			const character = String.fromCodePoint(text.codePointAt(index) ?? 0);
			if (!(character === '\n' && afterReturn)) add(keyOfCharacter(character, inPaste));
			afterReturn = character === '\r';
			index += character.length;
			continue;
		}
		const whole = matchAt(WHOLE, text, index);
		if (whole === undefined && matchAt(UNFINISHED, text, index) !== undefined) break;
		afterReturn = false;
		if (whole === PASTE_START || whole === PASTE_END) inPaste = whole === PASTE_START;
		else if (whole !== undefined && !inPaste) add(keyOfSequence(whole));
		if (whole === undefined && text[index + 1] === KEYS.escape && !inPaste) add(KEYS.escape);
		index += (whole ?? skipped(text, index)).length;
	}
	return {keys, state: {rest: text.slice(index), inPaste, afterReturn}};
};

/** What to jump over where an escape starts nothing that is known: a chord with Alt, or a sequence broken off. */
const skipped = (text: string, index: number): string => {
	const brokenOff = matchAt(BROKEN_OFF, text, index);
	if (brokenOff !== undefined) return brokenOff;
	const next = text.codePointAt(index + 1) ?? 0;
	const keepsNext = next === 0x1b || next === 0x03;
	return keepsNext ? KEYS.escape : KEYS.escape + String.fromCodePoint(next);
};

/** The keys in a rest that has waited long enough: escapes that stand alone; half a sequence is none. */
export const keysOfRest = (rest: string): readonly TypedKey[] =>
	/^\u001B+$/.test(rest) ? Array.from(rest, () => ({key: KEYS.escape, pasted: false})) : [];
