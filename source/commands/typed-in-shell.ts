/** A word as it is typed in a POSIX shell, for a command that somebody pastes. */
export const typedInShell = (word: string): string =>
	/^[\w./:@%+,=-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
