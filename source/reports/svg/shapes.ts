import type {Verdict} from '../../results/figures-types.js';
import {stepDecimals, withSign} from '../../words/numbers.js';
import {type Attributes, element, escapeHtml} from '../html/markup.js';

/** A text in a picture. */
export const label = (x: number, y: number, text: string, attributes: Attributes = {}): string =>
	element('text', {x, y, ...attributes}, escapeHtml(text));

export const stroke = (from: readonly [number, number], to: readonly [number, number], className: string): string =>
	element('line', {x1: from[0], y1: from[1], x2: to[0], y2: to[1], class: className});

export const box = (x: number, y: number, width: number, height: number, className: string, rx?: number): string =>
	element('rect', {x, y, width: Math.max(0, width), height: Math.max(0, height), class: className, rx});

export const dot = (x: number, y: number, className: string, r = 4): string =>
	element('circle', {cx: x, cy: y, r, class: className});

/** Width of every picture in drawing units: on a phone a unit is about a pixel, so that its texts stay readable. */
export const pictureWidth = 340;

/** What a picture is called and what it says, for those who do not see it. */
export type Told = {
	/** Unique on the page. */
	readonly id: string;
	readonly title: string;
	readonly description: string;
};

/** A whole picture with its title and its description. */
export const picture = ({id, title, description}: Told, height: number, content: readonly string[]): string =>
	element(
		'svg',
		{
			class: 'picture',
			viewBox: `0 0 ${pictureWidth} ${Math.round(height)}`,
			role: 'img',
			'aria-labelledby': `${id}-title ${id}-desc`,
		},
		element('title', {id: `${id}-title`}, escapeHtml(title)),
		element('desc', {id: `${id}-desc`}, escapeHtml(description)),
		...content,
	);

/** A number of an axis with its sign; plus is toward the rim. */
export const axisNumber = (value: number): string => withSign(value, stepDecimals(Number(value.toFixed(2))));

/** Which way is which: a drawn arrow at either end, and the word for that way beside it. */
export const ways = (
	y: number,
	[from, to]: readonly [number, number],
	[before, after]: readonly [string, string],
): string[] => {
	const arrow = (x: number, tip: number) =>
		element('polygon', {class: 'way', points: `${x + tip},${y - 4.5} ${x},${y - 8.5} ${x},${y - 0.5}`});
	return [
		arrow(from + 8, -8),
		label(from + 13, y, before, {class: 'soft'}),
		arrow(to - 8, 8),
		label(to - 13, y, after, {class: 'soft', 'text-anchor': 'end'}),
	];
};

/** One entry of a legend: a small drawing, made where its middle shall be, and what it stands for. */
export type LegendSample = {readonly draw: (x: number, y: number) => string; readonly text: string};

const rowHeight = 18;
const drawingWidth = 26;
const entryGap = 14;
/** What a letter of the pictures takes on average, in drawing units; the legend only needs to know when to break. */
const letterWidth = 6.6;

const widthOf = ({text}: LegendSample): number => drawingWidth + 5 + text.length * letterWidth + entryGap;

/** Entries side by side, broken into rows. */
export function legend(
	entries: readonly LegendSample[],
	[left, top]: readonly [number, number],
	width: number,
): {readonly height: number; readonly content: string[]} {
	let [x, row] = [left, 0];
	const content = entries.map((entry) => {
		if (x > left && x + widthOf(entry) - entryGap > left + width) [x, row] = [left, row + 1];
		const middle = top + row * rowHeight + rowHeight / 2;
		const drawn = `${entry.draw(x + drawingWidth / 2, middle)}${label(x + drawingWidth + 5, middle + 4, entry.text)}`;
		x += widthOf(entry);
		return drawn;
	});
	return {height: (row + 1) * rowHeight, content};
}

/** A shape for each verdict, so that none of them is told by its colour alone. */
const shapes: Readonly<Record<Verdict, readonly string[]>> = {
	good: [element('circle', {cx: 8, cy: 8, r: 7}), element('path', {d: 'M4.5 8.2 7 10.8 11.5 5.6', class: 'ink'})],
	usable: [element('path', {d: 'M8 1.2 15 14H1Z'}), element('path', {d: 'M8 6v3.6M8 11.4v1', class: 'ink'})],
	beyond: [element('path', {d: 'M1.5 1.5h13v13h-13z'}), element('path', {d: 'M5 5l6 6M11 5l-6 6', class: 'ink'})],
	undecided: [
		element('circle', {cx: 8, cy: 8, r: 6.2, class: 'ink dark'}),
		element('path', {d: 'M8 1.8a6.2 6.2 0 0 1 0 12.4Z'}),
	],
	'off-scale': [
		element('path', {d: 'M1 8h10M8.5 4.5 12 8l-3.5 3.5', class: 'ink dark'}),
		element('path', {d: 'M14.5 2v12', class: 'ink dark'}),
	],
};

/** A small mark beside a verdict's words, which say the same. */
export const markSvg = (verdict: Verdict): string =>
	element('svg', {class: 'mark', viewBox: '0 0 16 16', 'aria-hidden': 'true'}, ...shapes[verdict]);
