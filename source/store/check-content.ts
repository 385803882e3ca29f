import type {Codec} from './context.js';
import {assertPlainContent} from './plain-content.js';
import {StoreError} from './store-error.js';

/**
 * Makes sure before a save that the content is what will be accepted when it is read again.
 * @throws StoreError 'refused'
 */
export const checkContent = <T>(what: string, file: string, value: T, codec: Codec<T>): void => {
	assertPlainContent(what, file, value);
	const parsed = codec.parse(value);
	if (parsed.ok) return;
	throw new StoreError(
		'refused',
		file,
		`${what} was not saved in "${file}": ${parsed.sentence} Correct that, then try again.`,
	);
};
