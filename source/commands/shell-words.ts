import type {Candidate} from './candidates.js';

/** Shells whose command lines can be completed. */
export const shells = ['bash', 'zsh', 'fish'] as const;
export type Shell = (typeof shells)[number];

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
export function quotedIn(text: string, quote: ShellLine['quote']): string {
	if (quote === "'") return text.replaceAll("'", "'\\''");
	// A backslash before ! would stay in the word.
	if (quote === '"') return text.replace(/[$`"\\]/g, '\\$&');
	return text.replace(/[^\w\-+.,:=@%/\u0080-\u{10FFFF}]/gu, '\\$&');
}

/** A text as one word of a command line that can be copied as it stands into the usual shell of the platform. */
export const shellWord = (text: string, platform: NodeJS.Platform = process.platform): string => {
	if (platform === 'win32') return windowsWord(text);
	const isBare = text !== '' && quotedIn(text, '') === text;
	return isBare ? text : `'${quotedIn(text, "'")}'`;
};

// cmd.exe knows double quotes only. What it hands over is taken apart by the program: there a backslash keeps its meaning
// except before a quote (Microsoft C, "Parsing C command-line arguments").
const windowsWord = (text: string): string => {
	if (/^[\w\-+.:\\/\u0080-\u{10FFFF}]+$/u.test(text)) return text;
	return `"${text.replace(/\\*"/g, (found) => `${found.slice(0, -1)}${found.slice(0, -1)}\\"`).replace(/\\+$/, '$&$&')}"`;
};

/** Candidates as the script of a shell wants them, one a line. The shells other than bash choose and quote themselves. */
export const repliesFor: Readonly<Record<Exclude<Shell, 'bash'>, (found: readonly Candidate[]) => string>> = {
	// In the lists of _describe a colon parts value and description.
	zsh: (found) =>
		linesOf(found.map(({text, about}) => `${text.replace(/[\\:]/g, '\\$&')}${about === '' ? '' : `:${about}`}`)),
	fish: (found) => linesOf(found.map(({text, about}) => (about === '' ? text : `${text}\t${about}`))),
};

/**
 * What bash puts in place of its word. Bash ends words also at = and : (COMP_WORDBREAKS), so its word may be only the
 * end of ours, and the reply must be as well.
 * @param bashWord the word as bash sees it, behind the quote that is open
 */
export function bashReplies(found: readonly Candidate[], {words, quote}: ShellLine, bashWord: string): string {
	const whole = words.at(-1) ?? '';
	const [own = ''] = splitLine(quote + bashWord).words.slice(-1);
	const before = whole.endsWith(own) ? whole.length - own.length : 0;
	return linesOf(found.filter(({text}) => text.startsWith(whole)).map(({text}) => quotedIn(text.slice(before), quote)));
}

const linesOf = (lines: readonly string[]): string => lines.map((line) => `${line}\n`).join('');
