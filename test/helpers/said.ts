export {words} from '../../source/words/index.js';

/** A sentence as a face may break it over lines and between the edges of a frame. */
export const broken = (sentence: string): RegExp =>
	new RegExp(
		sentence
			.trim()
			.split(/\s+/)
			.map((word) => word.replace(/[$()*+.?[\\\]^{|}]/g, '\\$&'))
			.join('[\\s│|]+'),
	);

/** Text on one line, as it was before a face broke it. */
export const flat = (text: string): string => text.replaceAll(/[\s│|]+/g, ' ').trim();
