import type {Codec} from './context.js';
import {isForbiddenKey} from './forbidden-key.js';
import {StoreError} from './store-error.js';
import type {FoundValue, Thing} from './store-fault.js';

/** What JSON would turn into something else, or no file may hold, with its place; undefined where there is nothing. */
export const faultAt = (value: unknown, path: string): FoundValue | undefined => {
	if (typeof value === 'number') return Number.isFinite(value) ? undefined : {at: path, found: value};
	if (Array.isArray(value)) {
		for (const [index, item] of value.entries()) {
			const fault = itemFault(item, `${path}[${index}]`);
			if (fault !== undefined) return fault;
		}
		return undefined;
	}
	if (typeof value === 'object' && value !== null) {
		for (const [key, item] of Object.entries(value)) {
			if (isForbiddenKey(key)) return {at: `${path}.${key}`, found: 'forbidden-key'};
			const fault = faultAt(item, `${path}.${key}`);
			if (fault !== undefined) return fault;
		}
		return undefined;
	}
	const kind = typeof value;
	return kind === 'bigint' || kind === 'function' || kind === 'symbol' ? {at: path, found: kind} : undefined;
};

/** An item of a list, where nothing may be missing. */
const itemFault = (item: unknown, path: string): FoundValue | undefined =>
	item === undefined ? {at: path, found: 'missing'} : faultAt(item, path);

/**
 * Refuses content that JSON would turn into something else without a word (NaN and Infinity become null).
 * @throws StoreError 'refused', naming the place of the fault
 */
const assertPlainContent = (thing: Thing, file: string, value: unknown): void => {
	const fault = faultAt(value, 'content');
	if (fault === undefined) return;
	throw new StoreError('refused', {id: 'refused-value', values: {thing, file, ...fault}});
};

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
