import {homedir} from 'node:os';
import type {Command} from 'commander';
import {hindranceOf} from '../desk/hindrance.js';
import {Shelf} from '../desk/shelf.js';
import {namesOf} from '../results/years/arms.js';
import {dataDirectory} from '../store/data-directory.js';
import {visibleText} from '../visible-text.js';
import {topics} from '../words/help-topics.js';
import {type Candidate, candidates, type Known} from './candidates.js';
import {printOut} from './print.js';
import {bashReplies, repliesFor, type Shell, splitLine} from './shell-words.js';

/**
 * Answers the script of a shell: one candidate a line. Bash gives its line up to the cursor and its own word, the others
 * the words themselves. @returns exit status
 */
export function runComplete(program: Command, shell: Shell, given: readonly string[]): Promise<number> {
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
		hindranceOf(error);
		// Nothing on the disk is worth a message in the middle of a command line that is being typed.
		return [];
	}
}

/** More would fill the screen many times over, and the newest are the ones that are asked for. */
const MOST_IDS = 100;

/** What is on file, for the end of a command line; the folder is the one that is named there, else the usual one. */
function knownOf(words: readonly string[], topics: readonly Candidate[]): Known {
	let opened: Shelf | undefined;
	const shelf = (): Shelf => {
		opened ??= new Shelf(dataDirectory({flag: folderIn(words), env: process.env}), () => new Date());
		return opened;
	};
	return {topics: () => topics, arms: () => armsOf(shelf()), ids: (prefix) => idsOf(shelf(), prefix)};
}

/** A folder given with --data, its tilde in place of the home folder, since no shell has expanded it yet. */
function folderIn(words: readonly string[]): string | undefined {
	const at = words.findIndex((word) => word === '--data' || word.startsWith('--data='));
	if (at === -1) return undefined;
	const folder = words[at]?.startsWith('--data=') ? words[at]?.slice('--data='.length) : words[at + 1];
	return folder?.replace(/^~(?=\/|$)/, () => homedir());
}

/** Arms by their names of today, those with a profile first, latest use first. */
function armsOf(shelf: Shelf): readonly Candidate[] {
	const profiles = shelf.profiles();
	const arms = profiles.filter(({kind, setAside}) => kind === 'arm' && !setAside).map(({name}) => name);
	const checked = new Set(shelf.all().map(({arm}) => arm));
	const names = new Set([...arms, ...[...checked].map((arm) => namesOf(arm, profiles)[0] ?? arm)]);
	// A name that can't be shown as it is can't be typed either.
	return [...names].filter((name) => visibleText(name) === name).map((text) => ({text, about: ''}));
}

/** The newest checks whose ids begin so. */
function idsOf(shelf: Shelf, prefix: string): readonly Candidate[] {
	const rows = prefix === '' ? shelf.past({offset: 0, limit: MOST_IDS}).rows : shelf.all();
	return rows
		.filter(({id}) => id.startsWith(prefix))
		.slice(0, MOST_IDS)
		.map(({id, arm, date}) => ({text: id, about: visibleText(`${date} ${arm}`)}));
}
