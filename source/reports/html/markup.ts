import {visibleText} from '../../visible-text.js';
import {heldTogether} from '../../words/held-together.js';

const entities: Readonly<Record<string, string>> = {
	'&': '&amp;',
	'<': '&lt;',
	'>': '&gt;',
	'"': '&quot;',
	"'": '&#39;',
};

/** Any text, own or foreign, as it may stand in an element or in a quoted attribute: nothing in it is markup. */
export const escapeHtml = (text: string): string =>
	visibleText(text).replaceAll(/[&<>"']/g, (character) => entities[character] ?? '');

/** A sentence, or words of our own: no line ends within a figure. */
export const sentenceHtml = (text: string): string => escapeHtml(heldTogether(text));

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Two decimals of a drawing unit are finer than any printer. */
const attributeText = (value: string | number): string =>
	typeof value === 'number' ? String(Number(value.toFixed(2))) : escapeHtml(value);

/** An element of a picture as text; attributes are escaped, the content is markup already. */
export function element(name: string, attributes: Attributes, ...content: readonly string[]): string {
	const list = Object.entries(attributes).flatMap(([key, value]) =>
		value === undefined ? [] : [` ${key}="${attributeText(value)}"`],
	);
	const start = `<${name}${list.join('')}`;
	return content.length === 0 ? `${start}/>` : `${start}>${content.join('')}</${name}>`;
}
