/** Characters that a terminal obeys, or that show nothing: all controls, what sets the direction, odd line breaks. */
const unseen = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;

const escaped = (text: string): string =>
	text
		.split('')
		.map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
		.join('');

/**
 * A value as JSON (RFC 8259) on one line, valid UTF-8 whatever is in it: a half of a pair of surrogates is escaped by
 * `JSON.stringify`, and what cannot be seen is escaped here.
 */
export const jsonText = (value: unknown): string => JSON.stringify(value).replace(unseen, escaped);

/** A list with one item a line: whole for a parser, and fit for tools that know only lines. */
export const jsonList = (items: readonly unknown[]): string =>
	items.length === 0 ? '[]\n' : `[\n${items.map(jsonText).join(',\n')}\n]\n`;
