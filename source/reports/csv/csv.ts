/** What a cell may hold; empty where there is nothing to say. */
export type CsvValue = string | number | boolean | null | undefined;

/**
 * Signs at which spreadsheets take a text for a formula (from memory of the common advice against injected formulas: the
 * four signs, tab and carriage return; line feed and the wide forms of the signs beside them).
 */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

// RFC 4180 knows printable characters and, in quotes, line breaks; a tab is harmless.
const CONTROL = /(?![\t\r\n])\p{Cc}/gu;

const hex = (character: string): string => `\\x${(character.codePointAt(0) ?? 0).toString(16).padStart(2, '0')}`;

const harmless = (text: string): string => {
	const visible = text.replaceAll(CONTROL, hex);
	return FORMULA.test(visible) ? `'${visible}` : visible;
};

/** RFC 4180, 2.6 and 2.7: in quotes where it holds a quote, a comma or a line break, and quotes in it doubled. */
const quoted = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

const field = (value: CsvValue): string => {
	if (value === null || value === undefined) return '';
	if (typeof value === 'string') return quoted(harmless(value));
	if (typeof value === 'boolean') return value ? 'yes' : 'no';
	return String(value);
};

/**
 * One record of a CSV file (RFC 4180) with its line break. Numbers stay numbers, a minus included; a text that a
 * spreadsheet would take for a formula gets an apostrophe before it, and control characters are shown as `\x1b`.
 */
export const csvRecord = (values: readonly CsvValue[]): string => `${values.map(field).join(',')}\r\n`;
