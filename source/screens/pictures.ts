import {bandsLayout} from '../pages/pictures/bands-layout.js';
import {placesOn} from '../pages/pictures/scale.js';
import type {BandRow, ShownAs} from '../pages/shown-lines.js';
import {words} from '../words/index.js';

const glyphs = {
	unicode: {left: '├', right: '┤', span: '─', pull: '●', zero: '│', good: '┊', usable: '┆', rim: '►', spindle: '◄'},
	ascii: {left: '[', right: ']', span: '-', pull: 'o', zero: '|', good: ':', usable: ';', rim: '>', spindle: '<'},
} as const;

/** Hold bands to scale: one row a radius, zero in the middle, the limits of the pull as dotted lines. */
export function bandsPicture(bands: ShownAs<'bands'>, width: number, unicode: boolean): string[] {
	const {rows} = bands;
	const {axis, limits, fewTicks} = bandsLayout(bands);
	const glyph = glyphs[unicode ? 'unicode' : 'ascii'];
	const labelWidth = Math.max(...rows.map(({label}) => label.length)) + 1;
	// Two columns are kept for the percent sign behind the axis.
	const columns = Math.max(15, Math.min(61, width - labelWidth - 2));
	const place = placesOn(axis, [0, columns - 1]);
	const at = (pct: number) => Math.round(place(pct));
	const base = Array.from({length: columns}, () => ' ');
	for (const {pct, zone} of limits) base[at(pct)] = glyph[zone];
	base[at(0)] = glyph.zero;
	return [
		`${' '.repeat(labelWidth)}${directions(columns, at(0), glyph)}`,
		...rows.map((row) => `${row.label.padEnd(labelWidth)}${bandLine(row, base, at, glyph).join('')}`),
		`${' '.repeat(labelWidth)}${numbers(columns, at, fewTicks)}`,
		`${' '.repeat(labelWidth)}${words.pictures.bands.legend(glyph)}`.slice(0, width),
	];
}

type Glyphs = (typeof glyphs)['unicode' | 'ascii'];

function bandLine(row: BandRow, base: readonly string[], at: (pct: number) => number, glyph: Glyphs): string[] {
	const cells = [...base];
	const [low, high] = [at(row.lowPct), at(row.highPct)];
	for (let index = low; index <= high; index++) cells[index] = row.earlier ? '.' : glyph.span;
	cells[low] = glyph.left;
	cells[high] = glyph.right;
	cells[at(row.pullPct)] = glyph.pull;
	return cells;
}

function directions(columns: number, zero: number, glyph: Glyphs): string {
	const left = `${glyph.spindle} ${words.pictures.spindle}`;
	const right = `${words.pictures.rim} ${glyph.rim}`;
	if (zero < left.length + 1) return '';
	return `${left.padEnd(columns - right.length)}${right}`;
}

/** Numbers under the axis; one that would touch its neighbour is left out. */
function numbers(columns: number, at: (pct: number) => number, ticks: readonly number[]): string {
	let line = '';
	for (const tick of ticks) {
		const text = tick > 0 ? `+${tick}` : String(tick);
		const start = Math.min(columns - text.length, Math.max(0, at(tick) - Math.floor(text.length / 2)));
		if (start <= line.length && line !== '') continue;
		line = line.padEnd(start) + text;
	}
	return `${line} %`;
}

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
