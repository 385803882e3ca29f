import {escapeHtml} from '../html/escape.js';
import {element} from './element.js';

/** Width of every picture in drawing units: narrow, so that its texts stay readable on a phone. */
export const pictureWidth = 440;

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
