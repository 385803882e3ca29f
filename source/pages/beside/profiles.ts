import type {Profile} from '../../procedure/facts.js';
import {corrected, type ProfilesChanged, renamed, setAside} from '../../results/profile-changes.js';
import {words} from '../../words/index.js';
import {profileRefusalText} from '../../words/results-text.js';
import type {Workbench} from '../../workbench.js';
import type {BesidePlace} from './beside-pages.js';
import {back, go, type Stop, type Turn} from './page.js';
import {profilePage} from './profile-page.js';

export type ProfilePlace =
	| {readonly at: 'profiles'}
	| {readonly at: 'profile' | 'rename' | 'answers'; readonly id: string}
	| {readonly at: 'answer'; readonly id: string; readonly step: string};

/** The profiles on file: to look at, rename, correct and set aside. */
export const profilesAt = (workbench: Workbench, place: ProfilePlace): Stop<BesidePlace> => ({
	page: profilePage(workbench, place),
	turn: (entry) => turn(workbench, place, entry),
	back: go(before(place)),
});

function before(place: ProfilePlace): BesidePlace {
	if (place.at === 'profiles') return {at: 'home'};
	if (place.at === 'profile') return {at: 'profiles'};
	return {at: place.at === 'answer' ? 'answers' : 'profile', id: place.id};
}

function turn(workbench: Workbench, place: ProfilePlace, entry: string): Turn<BesidePlace> {
	if (place.at === 'profiles') return go(entry === back.id ? before(place) : {at: 'profile', id: entry});
	const {id} = place;
	const at = workbench.now();
	if (!workbench.profiles().some((one) => one.id === id)) return go({at: 'profiles'});
	switch (place.at) {
		case 'profile':
			if (entry === 'rename' || entry === 'answers') return go({at: entry, id});
			if (entry === back.id) return go(before(place));
			return saving(workbench, place, (profiles) => setAside(profiles, id, entry === 'set-aside'));
		case 'rename': {
			const checkedArms = workbench.archive.checkedArms();
			const change = (profiles: readonly Profile[]) => renamed(profiles, {id, typed: entry, checkedArms, at});
			return saving(workbench, {at: 'profile', id}, change);
		}
		case 'answers':
			return go(entry === back.id ? before(place) : {at: 'answer', id, step: entry});
		case 'answer': {
			if (entry === back.id) return go(before(place));
			const {step} = place;
			const change = (profiles: readonly Profile[]) =>
				corrected(profiles, {id, step, typed: entry, names: words.options, at});
			return saving(workbench, {at: 'answers', id}, change);
		}
	}
}

/** What would be refused is refused at once; the disk is asked only for what can be done. */
function saving(
	workbench: Workbench,
	to: ProfilePlace,
	change: (profiles: readonly Profile[]) => ProfilesChanged,
): Turn<BesidePlace> {
	const tried = change(workbench.profiles());
	if (!tried.ok) return {kind: 'refused', sentence: profileRefusalText(tried.refusal)};
	return {kind: 'save', save: () => workbench.archive.changeProfiles(change), to};
}
