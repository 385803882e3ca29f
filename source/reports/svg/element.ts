import {escapeHtml} from '../html/escape.js';

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Two decimals of a drawing unit are finer than any printer. */
const written = (value: string | number): string =>
	typeof value === 'number' ? String(Number(value.toFixed(2))) : escapeHtml(value);

/** An element of a picture as text; attributes are escaped, the content is markup already. */
export function element(name: string, attributes: Attributes, ...content: readonly string[]): string {
	const list = Object.entries(attributes).flatMap(([key, value]) =>
		value === undefined ? [] : [` ${key}="${written(value)}"`],
	);
	const start = `<${name}${list.join('')}`;
	return content.length === 0 ? `${start}/>` : `${start}>${content.join('')}</${name}>`;
}

/** A text in a picture. */
export const label = (x: number, y: number, text: string, attributes: Attributes = {}): string =>
	element('text', {x, y, ...attributes}, escapeHtml(text));

export const stroke = (from: readonly [number, number], to: readonly [number, number], className: string): string =>
	element('line', {x1: from[0], y1: from[1], x2: to[0], y2: to[1], class: className});

export const box = (x: number, y: number, width: number, height: number, className: string, rx?: number): string =>
	element('rect', {x, y, width: Math.max(0, width), height: Math.max(0, height), class: className, rx});

export const dot = (x: number, y: number, className: string, r = 4): string =>
	element('circle', {cx: x, cy: y, r, class: className});
