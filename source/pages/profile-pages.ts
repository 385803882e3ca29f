import type {Profile} from '../procedure/facts.js';
import {corrected, type ProfilesChanged, renamed, setAside} from '../results/profile-changes.js';
import {profileRefusalText} from '../words/results-text.js';
import type {Workbench} from '../workbench.js';
import type {Pages, Turn} from './page.js';
import {type ProfilePlace, profilePage} from './profile-page.js';

/** The profiles on file: to look at, rename, correct and set aside. */
export const profilePages = (workbench: Workbench): Pages<ProfilePlace> => ({
	start: {at: 'list'},
	pageOf: (place) => profilePage(workbench, place),
	turn: (place, entry) => turn(workbench, place, entry),
	backOf: (place) => {
		if (place.at === 'list') return;
		if (place.at === 'profile') return {at: 'list'};
		return {at: place.at === 'answer' ? 'answers' : 'profile', id: place.id};
	},
});

function turn(workbench: Workbench, place: ProfilePlace, entry: string): Turn<ProfilePlace> {
	if (place.at === 'list') return entry === 'back' ? {kind: 'out'} : {kind: 'go', to: {at: 'profile', id: entry}};
	const {id} = place;
	const at = workbench.now();
	if (!workbench.profiles().some((one) => one.id === id)) return {kind: 'go', to: {at: 'list'}};
	switch (place.at) {
		case 'profile':
			if (entry === 'rename' || entry === 'answers') return {kind: 'go', to: {at: entry, id}};
			if (entry === 'back') return {kind: 'go', to: {at: 'list'}};
			return saving(workbench, place, (profiles) => setAside(profiles, id, entry === 'set-aside'));
		case 'rename': {
			const checkedArms = workbench.archive.checkedArms();
			const change = (profiles: readonly Profile[]) => renamed(profiles, {id, typed: entry, checkedArms, at});
			return saving(workbench, {at: 'profile', id}, change);
		}
		case 'answers':
			return {kind: 'go', to: entry === 'back' ? {at: 'profile', id} : {at: 'answer', id, step: entry}};
		case 'answer': {
			if (entry === 'back') return {kind: 'go', to: {at: 'answers', id}};
			const {step} = place;
			const change = (profiles: readonly Profile[]) => corrected(profiles, {id, step, typed: entry, at});
			return saving(workbench, {at: 'answers', id}, change);
		}
	}
}

/** What would be refused is refused at once; the disk is asked only for what can be done. */
function saving(
	workbench: Workbench,
	to: ProfilePlace,
	change: (profiles: readonly Profile[]) => ProfilesChanged,
): Turn<ProfilePlace> {
	const tried = change(workbench.profiles());
	if (!tried.ok) return {kind: 'refused', sentence: profileRefusalText(tried.refusal)};
	return {kind: 'save', save: () => workbench.archive.changeProfiles(change), to};
}
