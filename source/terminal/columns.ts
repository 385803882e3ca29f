import stringWidth from 'string-width';
import {printable} from './printable.js';

// ASCII and Latin-1 without controls and the soft hyphen: a column each, and nothing to be made visible.
const SIMPLE = /^[ -~\u00A1-\u00AC\u00AE-\u00FF]*$/;

/** Rows of cells as lines, cells of a column aligned, two spaces between columns. Foreign text is made safe to show. */
export function columns(rows: readonly (readonly string[])[]): string {
	const odd = new Map<string, number>();
	const shown = (cell: string): string => {
		if (SIMPLE.test(cell)) return cell;
		const text = printable(cell);
		odd.set(text, stringWidth(text));
		return text;
	};
	const widthOf = (text: string): number => odd.get(text) ?? text.length;
	const lines = rows.map((cells) => cells.map(shown));
	const widths: number[] = [];
	for (const cells of lines) {
		for (let at = 0; at < cells.length; at++) widths[at] = Math.max(widthOf(cells[at] ?? ''), widths[at] ?? 0);
	}
	const padded = (text: string, at: number): string => text + ' '.repeat((widths[at] ?? 0) - widthOf(text));
	return lines.map((cells) => `${cells.map(padded).join('  ').trimEnd()}\n`).join('');
}
