/**
 * Text from outside made safe to show, wherever it is shown: nothing in it steers a terminal, turns the direction of
 * what stands around it, or hides.
 */

// Control strings of ECMA-48 (5.6): window titles, links, clipboard writes. Their payload is meant for no reader.
const CONTROL_STRING =
	/(?:\u001B[\]PX^_]|[\u0090\u0098\u009D-\u009F])[^\u0007\u001B\u009C]*(?:\u0007|\u001B\\|\u009C)/g;

// Controls, direction changes, zero-width and other invisible characters, line and paragraph separators, halves of a
// surrogate pair, code points that are no characters. A joiner or variation selector stays where it follows what it is
// there for, an emoji or a mark.
const INVISIBLE =
	/(?![\u200C\u200D](?<=[\p{Extended_Pictographic}\p{Emoji_Modifier}\p{M}\p{Script=Arabic}].))(?:[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}\p{Noncharacter_Code_Point}\u115F\u1160\u3164\uFFA0]|\u034F)/gu;

// No script stacks more; a longer stack spills over the lines above.
const MARK_STACK = /(\p{M}{8})\p{M}+/gu;

const ESCAPES: Readonly<Record<string, string>> = {'\n': '\\n', '\r': '\\r', '\t': '\\t'};

const escapeOf = (character: string): string => {
	const code = character.codePointAt(0) ?? 0;
	const hex = code.toString(16);
	return ESCAPES[character] ?? (code < 0x100 ? `\\x${hex.padStart(2, '0')}` : `\\u{${hex}}`);
};

/** The same text on one line, with everything in it to be seen. */
export const visibleText = (text: string): string =>
	text.replaceAll(CONTROL_STRING, '').replaceAll(INVISIBLE, escapeOf).replaceAll(MARK_STACK, '$1');

const asUnits = (character: string): string =>
	character
		.split('')
		.map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
		.join('');

/** The same with every such character escaped as JSON does it (RFC 8259 7): for what stands in a JSON document, on one line. */
export const escaped = (text: string): string => text.replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, asUnits);

/** As long as the longest name that is kept; an id is shorter. */
const MOST_LETTERS = 80;

/** What somebody typed, as a sentence says it back: to be seen, and no more of it than tells which it was. */
export const saidBack = (typed: string): string => {
	const letters = [...visibleText(typed)];
	return letters.length > MOST_LETTERS ? `${letters.slice(0, MOST_LETTERS).join('')}…` : letters.join('');
};
