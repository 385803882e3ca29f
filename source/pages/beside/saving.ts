import type {Profile} from '../../procedure/facts.js';
import type {ProfilesChanged} from '../../results/profile-changes.js';
import {profileRefusalText} from '../../words/results-text.js';
import type {Workbench} from '../../workbench.js';
import type {Turn} from './page.js';
import type {BesidePlace, ProfilePlace} from './places.js';

/** What would be refused is refused at once; the disk is asked only for what can be done. */
export function saving(
	workbench: Workbench,
	to: ProfilePlace,
	change: (profiles: readonly Profile[]) => ProfilesChanged,
): Turn<BesidePlace> {
	const tried = change(workbench.profiles());
	if (!tried.ok) return {kind: 'refused', sentence: profileRefusalText(tried.refusal)};
	return {kind: 'save', save: () => workbench.archive.changeProfiles(change), to};
}
