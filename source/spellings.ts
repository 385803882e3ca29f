/**
 * What may be typed for a side, and for yes and no, in all languages of the program at once: what was typed under one
 * language is read again under another. The first is the program's own word, by which it is told apart; `words/` has
 * how the language in use writes it. Within a pair no spelling stands for both.
 */
export const spellings = {
	yes: ['yes', 'y', 'ja', 'j'],
	no: ['no', 'n', 'nein'],
	out: ['out', 'o', 'outward', 'rim', 'außen', 'aussen', 'a', 'rand'],
	in: ['in', 'i', 'inward', 'spindle', 'innen', 'achse'],
	right: ['right', 'r', 'rechts'],
	left: ['left', 'l', 'links'],
	back: ['back', 'b', 'rear', 'hinten', 'h'],
	front: ['front', 'f', 'vorn', 'v', 'vorne'],
	plus: ['plus'],
	minus: ['minus'],
} as const satisfies Readonly<Record<string, readonly [string, ...string[]]>>;

/** Whether a word that was typed is one of these spellings. */
export const isSpelled = (list: readonly string[], typed: string): boolean => list.includes(typed.trim().toLowerCase());

/** What was answered, in any language; undefined for neither. */
export function yesOrNo(typed: string): 'yes' | 'no' | undefined {
	if (isSpelled(spellings.yes, typed)) return 'yes';
	return isSpelled(spellings.no, typed) ? 'no' : undefined;
}

/** The single letters among the spellings: a key each. */
export const lettersOf = (list: readonly string[]): string[] => list.filter((one) => one.length === 1);
