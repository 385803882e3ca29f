import stringWidth from 'string-width';
import {visibleText} from '../visible-text.js';

let segmenter: Intl.Segmenter | undefined;

/** Cuts a text to a width in columns, between what a reader sees as characters, with an ellipsis for the rest. */
const cutToWidth = (text: string, maxWidth: number): string => {
	if (stringWidth(text) <= maxWidth) return text;
	segmenter ??= new Intl.Segmenter();
	let kept = '';
	let width = 1;
	for (const {segment} of segmenter.segment(text)) {
		width += stringWidth(segment);
		if (width > maxWidth) break;
		kept += segment;
	}
	return maxWidth < 1 ? '' : `${kept}…`;
};

/**
 * Makes a text that came from outside (a name, a note, a path, an error) safe to show: on one line, nothing in it
 * steers the terminal or hides.
 * @param maxWidth columns that it may take; without it the text is not cut
 */
export const printable = (text: string, maxWidth = Number.POSITIVE_INFINITY): string =>
	cutToWidth(visibleText(text), maxWidth);
