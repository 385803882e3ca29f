import type {Codec} from './context.js';
import {assertPlainContent} from './plain-content.js';
import {StoreError} from './store-error.js';
import type {Thing} from './store-fault.js';

/**
 * Makes sure before a save that the content is what will be accepted when it is read again.
 * @throws StoreError 'refused'
 */
export const checkContent = <T>(thing: Thing, file: string, value: T, codec: Codec<T>): void => {
	assertPlainContent(thing, file, value);
	const parsed = codec.parse(value);
	if (parsed.ok) return;
	throw new StoreError('refused', {id: 'refused-content', values: {thing, file, ...parsed.misfit}});
};
