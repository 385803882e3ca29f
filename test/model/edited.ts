/** Stands for a key that is taken away. */
export const gone = Symbol('gone');

export type Edits = Record<string, unknown>;

const stepsOf = (path: string): (string | number)[] =>
	path
		.replaceAll(/\[(\d+)\]/g, '.$1')
		.split('.')
		.map((step) => (/^\d+$/.test(step) ? Number(step) : step));

/** A copy of the document with the values at some paths changed, added or taken away. */
export const edited = (document: object, edits: Edits): unknown => {
	const copy = structuredClone(document);
	for (const [path, value] of Object.entries(edits)) {
		const steps = stepsOf(path);
		const key = steps.pop() ?? '';
		const holder = steps.reduce<unknown>((at, step) => Reflect.get(Object(at), step), copy);
		if (typeof holder !== 'object' || holder === null) {
			throw new Error(`no such place in the document: ${path}`);
		}
		if (value === gone) {
			Reflect.deleteProperty(holder, key);
		} else {
			Reflect.set(holder, key, value);
		}
	}
	return copy;
};

export const told = (value: unknown): string =>
	typeof value === 'number' || typeof value === 'symbol' ? String(value) : JSON.stringify(value);
