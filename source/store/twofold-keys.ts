const TOKEN = /"(?:[^"\\]|\\.)*"|[{}[\],:]/g;

/** A key that stands twice in one object of a sound JSON text, of which a parser keeps only the last; undefined where none does. */
export function twofoldKeyIn(text: string): string | undefined {
	/** The keys of each object that is open; undefined for a list. */
	const open: (Set<string> | undefined)[] = [];
	let last = '';
	for (const [token] of text.matchAll(TOKEN)) {
		if (token === '{') open.push(new Set());
		else if (token === '[') open.push(undefined);
		else if (token === '}' || token === ']') open.pop();
		else if (token === ':') {
			const key: unknown = JSON.parse(last);
			const keys = open.at(-1);
			if (typeof key !== 'string' || !keys) continue;
			if (keys.has(key)) return key;
			keys.add(key);
		}
		last = token;
	}
	return undefined;
}
