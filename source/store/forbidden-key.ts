/** Keys by which an object that is made anew would become another one, or would lose them. No document of ours has any. */
const FORBIDDEN: readonly string[] = ['__proto__', 'constructor'];

export const isForbiddenKey = (key: string): boolean => FORBIDDEN.includes(key);

/** Whether a JSON text may hold one of them, as it is or with some of its letters escaped. */
const mayHold = (text: string): boolean => [...FORBIDDEN, '\\u00'].some((one) => text.includes(one));

/** Where such a key stands in a document, `record.check.__proto__`. @param value what the text was parsed to */
export function forbiddenKeyIn(text: string, value: unknown): string | undefined {
	if (!mayHold(text)) return undefined;
	/** A list of what is left to look at, since a document may be nested as deeply as it likes. */
	const left: {readonly value: unknown; readonly at: string}[] = [{value, at: ''}];
	for (let next = left.pop(); next; next = left.pop()) {
		if (typeof next.value !== 'object' || next.value === null) continue;
		for (const [key, one] of Object.entries(next.value)) {
			const at = next.at === '' ? key : `${next.at}.${key}`;
			if (isForbiddenKey(key)) return at;
			left.push({value: one, at});
		}
	}
	return undefined;
}
