import {StoreError} from './store-error.js';

/** What JSON would turn into something else, with its place: 'content.a[0] is Infinity'; undefined where there is nothing. */
export const faultAt = (value: unknown, path: string): string | undefined => {
	if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${path} is ${value}`;
	if (Array.isArray(value)) {
		for (const [index, item] of value.entries()) {
			const fault = item === undefined ? `${path}[${index}] is missing` : faultAt(item, `${path}[${index}]`);
			if (fault !== undefined) return fault;
		}
		return undefined;
	}
	if (typeof value === 'object' && value !== null) {
		for (const [key, item] of Object.entries(value)) {
			const fault = faultAt(item, `${path}.${key}`);
			if (fault !== undefined) return fault;
		}
		return undefined;
	}
	return ['bigint', 'function', 'symbol'].includes(typeof value) ? `${path} is a ${typeof value}` : undefined;
};

/**
 * Refuses content that JSON would turn into something else without a word (NaN and Infinity become null).
 * @throws StoreError 'refused', naming the place of the fault
 */
export const assertPlainContent = (what: string, file: string, value: unknown): void => {
	const fault = faultAt(value, 'content');
	if (fault === undefined) return;
	throw new StoreError(
		'refused',
		file,
		`${what} was not saved in "${file}": ${fault}. Correct that entry, then try again.`,
	);
};
