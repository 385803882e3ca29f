import type {Command} from 'commander';
import {StoreError} from '../../store/store-error.js';
import {topics} from '../help/topics.js';
import {printOut} from '../print-out.js';
import {type Candidate, candidates} from './candidates.js';
import {knownOf} from './known.js';
import {bashReplies, repliesFor} from './replies.js';
import {splitLine} from './shell-words.js';
import type {Shell} from './shells.js';

/**
 * Answers the script of a shell: one candidate a line. Bash gives its line up to the cursor and its own word, the others
 * the words themselves. @returns exit status
 */
export function runCompleteCommand(program: Command, shell: Shell, given: readonly string[]): Promise<number> {
	if (shell !== 'bash') return printOut(repliesFor[shell](found(program, given)));
	const [line = '', bashWord = ''] = given;
	const split = splitLine(line);
	return printOut(bashReplies(found(program, behindName(split.words)), split, bashWord));
}

/** Variables may be set in front of the program's name. */
const behindName = (words: readonly string[]): readonly string[] =>
	words.slice(words.findIndex((word) => !/^\w+=/.test(word)) + 1);

function found(program: Command, words: readonly string[]): readonly Candidate[] {
	const commands = program
		.createHelp()
		.visibleCommands(program)
		.map((one) => ({text: one.name(), about: one.description()}));
	const explained = topics.map(({name, title}) => ({text: name, about: title}));
	try {
		return candidates(program, words, knownOf(words, [...explained, ...commands]));
	} catch (error) {
		if (!(error instanceof StoreError)) throw error;
		// Nothing on the disk is worth a message in the middle of a command line that is being typed.
		return [];
	}
}
