import {escaped} from '../visible-text.js';

/**
 * A value as JSON (RFC 8259) on one line, valid UTF-8 whatever is in it: a half of a pair of surrogates is escaped by
 * `JSON.stringify`, and what a terminal obeys or does not show is escaped here.
 */
export const jsonText = (value: unknown): string => escaped(JSON.stringify(value));

/** A list with one item a line: whole for a parser, and fit for tools that know only lines. */
export const jsonList = (items: readonly unknown[]): string =>
	items.length === 0 ? '[]\n' : `[\n${items.map(jsonText).join(',\n')}\n]\n`;
