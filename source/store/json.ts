import {isDeepStrictEqual} from 'node:util';

/** Whether what a file holds is the same as a value that would be written: JSON writes −0 as 0 and knows no order of keys. */
export const isSameJson = (filed: unknown, value: unknown): boolean =>
	isDeepStrictEqual(filed, value) || isDeepStrictEqual(filed, JSON.parse(JSON.stringify(value)));

/** An object of a JSON document, whatever it holds. */
export type Json = {readonly [key: string]: unknown};

export const isJson = (value: unknown): value is Json =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
export const jsonAt = (from: Json, key: string): Json => {
	const value = from[key];
	return isJson(value) ? value : {};
};
export const listAt = (from: Json, key: string): readonly unknown[] => {
	const value = from[key];
	return Array.isArray(value) ? value : [];
};
/** The object with what it holds under a key changed, where that is an object. */
export const inside = (body: Json, key: string, change: (content: Json) => Json): Json => {
	const content = body[key];
	return isJson(content) ? {...body, [key]: change(content)} : body;
};
