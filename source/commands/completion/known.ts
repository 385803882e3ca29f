import {homedir} from 'node:os';
import {namesOf} from '../../results/years/arms.js';
import {dataDirectory} from '../../store/data-directory.js';
import {visibleText} from '../../visible-text.js';
import {Shelf} from '../shelf.js';
import type {Candidate, Known} from './candidates.js';

/** More would fill the screen many times over, and the newest are the ones that are asked for. */
const MOST_IDS = 100;

/** What is on file, for the end of a command line; the folder is the one that is named there, else the usual one. */
export function knownOf(words: readonly string[], topics: readonly Candidate[]): Known {
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
