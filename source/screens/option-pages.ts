import stringWidth from 'string-width';
import type {Option} from '../procedure/step.js';
import {words} from '../words/index.js';

/** There are nine digits. */
const mostShown = 9;
export const more: Option = {id: '\u0000more', label: words.faces.moreOptions};

/** Columns that mark, digit and gap take before a label. */
const indent = 4;

/** Lines that an option takes; a long one is broken, never cut: two may differ only at their ends. */
export const linesOfOption = ({label}: Option, width: number): number =>
	Math.max(1, Math.ceil(stringWidth(label) / Math.max(1, width - indent - 2)));

/** Whether options have numbers of their own, which may have two digits. */
export const hasNumbers = (options: readonly Option[]): boolean => options.some(({number}) => number !== undefined);

export const linesOfOptions = (options: readonly Option[], width: number): number =>
	(hasNumbers(options) ? options : options.slice(0, mostShown)).reduce(
		(sum, option) => sum + linesOfOption(option, width),
		0,
	);

/** The number by which an option is marked, here the nth of its page. */
export const numberOf = ({number}: Option, index: number): number => number ?? index + 1;

/** Options in pages of so many lines, each option with a digit; where there are several, the last line leads on. */
export function optionPages(options: readonly Option[], rows: number, width: number): readonly (readonly Option[])[] {
	const most = hasNumbers(options) ? Number.POSITIVE_INFINITY : mostShown;
	if (options.length <= most && linesOfOptions(options, width) <= rows) return [options];
	const pages: Option[][] = [[]];
	let left = rows - 1;
	for (const option of options) {
		const lines = linesOfOption(option, width);
		const page = pages.at(-1) ?? [];
		if (page.length > 0 && (lines > left || page.length >= most - 1)) {
			pages.push([option]);
			left = rows - 1 - lines;
		} else {
			page.push(option);
			left -= lines;
		}
	}
	return pages.map((page) => [...page, more]);
}
