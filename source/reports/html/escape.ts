import {visibleText} from '../../visible-text.js';

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
