import stringWidth from 'string-width';
import {printable} from './printable.js';

// ASCII and Latin-1 without controls and the soft hyphen: a column each, and nothing to be made visible.
const SIMPLE = /^[ -~\u00A1-\u00AC\u00AE-\u00FF]*$/;

/** Rows of cells as lines, cells of a column aligned, two spaces between columns. Foreign text is made safe to show. */
export function columns(rows: readonly (readonly string[])[]): string {
	const lines = rows.map((cells) => cells.map(measured));
	const widths: number[] = [];
	for (const line of lines) {
		for (const [at, {width}] of line.entries()) widths[at] = Math.max(width, widths[at] ?? 0);
	}
	const aligned = lines.map((line) => line.map((cell, at) => padded(cell, widths[at] ?? 0)).join('  '));
	return aligned.map((line) => `${line.trimEnd()}\n`).join('');
}

type Cell = {readonly text: string; readonly width: number};

function measured(cell: string): Cell {
	if (SIMPLE.test(cell)) return {text: cell, width: cell.length};
	const text = printable(cell);
	return {text, width: stringWidth(text)};
}

const padded = ({text, width}: Cell, wanted: number): string => text + ' '.repeat(wanted - width);
