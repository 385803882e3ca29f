import type {Lines} from '../../source/plain/ask.js';

/** Lines given beforehand, and all that was said. */
export function linesOf(
	given: readonly string[],
	piped = true,
): Lines & {readonly said: string[]; readonly left: () => number} {
	const said: string[] = [];
	let index = 0;
	return {
		said,
		piped,
		read: async () => given[index++],
		say: (text) => said.push(text),
		left: () => Math.max(0, given.length - index),
	};
}
