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
