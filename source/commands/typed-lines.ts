import {createInterface} from 'node:readline';
import {printOut} from './print.js';

/** Lines typed at a question, which is asked again for each. */
export async function* typedLines(question: string): AsyncGenerator<string> {
	// Not in raw mode, so that the terminal itself makes a signal of Ctrl+C.
	const reader = createInterface({input: process.stdin, terminal: false});
	try {
		await printOut(question);
		for await (const line of reader) {
			yield line;
			await printOut(question);
		}
	} finally {
		reader.close();
	}
}
