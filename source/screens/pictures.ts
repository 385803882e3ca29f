import type {ShownAs} from '../pages/shown-lines.js';
import {words} from '../words/index.js';

const glyphs = {
	unicode: {left: '├', right: '┤', span: '─', pull: '●'},
	ascii: {left: '[', right: ']', span: '-', pull: 'o'},
} as const;

/** A value against its window: `stylus  2 ├───●────┤ 3 mm`. */
export function windowPicture({label, low, high, value}: ShownAs<'window'>, width: number, unicode: boolean): string {
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	const columns = Math.max(5, Math.min(25, width - 34));
	const margin = width < 60 ? 1 : 3;
	const cells = [
		...' '.repeat(margin),
		glyph.left,
		...glyph.span.repeat(columns - 2),
		glyph.right,
		...' '.repeat(margin),
	];
	if (value !== undefined) {
		const place = high === low ? 0 : Math.round(((value - low) / (high - low)) * (columns - 1));
		cells[Math.min(cells.length - 1, Math.max(0, place + margin))] = glyph.pull;
	}
	const tail = value === undefined ? '' : ` : ${short(value)}`;
	return `${label.padEnd(7)}${short(low).padStart(4)} ${cells.join('')} ${short(high)} mm${tail}`;
}

const short = (value: number): string => String(Number(value.toFixed(2)));

/** The deck from above with the numbers of the choices where the pivot may stand. */
export function planPicture(unicode: boolean): string[] {
	const spindle = unicode ? '◉' : '(o)';
	const {back, front} = words.pictures.plan;
	return [`   4     3     1   ${back}`, `   5    ${spindle.padEnd(3)}    2`, `   6     7     8   ${front}`];
}
