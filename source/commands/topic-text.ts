import stringWidth from 'string-width';
import wrapAnsi from 'wrap-ansi';
import {heldTogether} from '../words/held-together.js';
import type {HelpBlock, Topic} from '../words/help-topics.js';

// Longer lines are hard to read, however wide the terminal is.
const WIDEST = 100;
// With terms in a column of their own, the meanings need some room beside them.
const LEAST_MEANING = 24;
const INDENT = '  ';

/** A topic as plain text, wrapped to a width in columns. */
export function topicText({name, title, blocks}: Topic, columns: number): string {
	const width = Math.max(1, Math.min(columns, WIDEST));
	const heading = wrapAnsi(`${name}: ${title}`, width);
	return `${[heading, ...blocks.map((block) => blockText(block, width))].join('\n\n')}\n`;
}

function blockText(block: HelpBlock, width: number): string {
	if (typeof block === 'string') return wrapped(block, width);
	// What is to be typed is never broken.
	if ('lines' in block) return block.lines.map((line) => INDENT + line).join('\n');
	return rowsText(block.rows, width);
}

/** Rows of a term and its meaning: in two columns, or one under the other where the terminal is narrow. */
export function rowsText(rows: readonly (readonly [string, string])[], width: number): string {
	const termWidth = Math.max(...rows.map(([term]) => stringWidth(term)));
	const at = INDENT.length + termWidth + 2;
	if (width - at < LEAST_MEANING)
		return rows.map(([term, meaning]) => `${INDENT}${term}\n${hanging(meaning, width, 2 * INDENT.length)}`).join('\n');
	return rows
		.map(([term, meaning]) => `${INDENT}${term}`.padEnd(at) + hanging(meaning, width, at).trimStart())
		.join('\n');
}

/** No line ends between a number and its unit, but the blank there is an ordinary one. */
const wrapped = (text: string, width: number): string => wrapAnsi(heldTogether(text), width).replaceAll('\u00a0', ' ');

const hanging = (text: string, width: number, at: number): string =>
	wrapped(text, Math.max(1, width - at))
		.split('\n')
		.map((line) => ' '.repeat(at) + line)
		.join('\n');
