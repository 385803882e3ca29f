import type {Candidate} from './candidates.js';
import {quoted, type ShellLine, splitLine} from './shell-words.js';
import type {Shell} from './shells.js';

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
	return linesOf(found.filter(({text}) => text.startsWith(whole)).map(({text}) => quoted(text.slice(before), quote)));
}

const linesOf = (lines: readonly string[]): string => lines.map((line) => `${line}\n`).join('');
