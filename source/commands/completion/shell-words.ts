export type ShellLine = {
	/** The words as the shell would hand them over; the last one is where the cursor stands, and may be empty. */
	readonly words: readonly string[];
	/** The quote that is open at the end. */
	readonly quote: '' | '"' | "'";
};

// Bash manual, 3.1.2 Quoting: inside double quotes a backslash keeps its meaning only before these.
const ESCAPED_IN_DOUBLE = /[$`"\\]/;

/** Takes a command line apart up to the cursor: backslashes and quotes as in the POSIX shell, nothing is expanded. */
export function splitLine(line: string): ShellLine {
	const words: string[] = [];
	let word: string | undefined;
	let quote: ShellLine['quote'] = '';
	for (let at = 0; at < line.length; at++) {
		const character = line.charAt(at);
		const next = line.charAt(at + 1);
		if (quote === '' && /\s/.test(character)) {
			if (word !== undefined) words.push(word);
			word = undefined;
			continue;
		}
		word ??= '';
		if (character === quote) quote = '';
		else if (quote === '' && (character === '"' || character === "'")) quote = character;
		else if (character === '\\' && (quote === '' || (quote === '"' && ESCAPED_IN_DOUBLE.test(next)))) {
			word += next;
			at++;
		} else word += character;
	}
	return {words: [...words, word ?? ''], quote};
}

/** A text as it is typed where that quote is open; none: bare, each special character behind a backslash. */
export function quoted(text: string, quote: ShellLine['quote']): string {
	if (quote === "'") return text.replaceAll("'", "'\\''");
	// A backslash before ! would stay in the word.
	if (quote === '"') return text.replace(/[$`"\\]/g, '\\$&');
	return text.replace(/[^\w\-+.,:=@%/\u0080-\u{10FFFF}]/gu, '\\$&');
}
