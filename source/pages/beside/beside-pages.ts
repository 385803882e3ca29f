import type {Workbench} from '../../workbench.js';
import {armsAt} from './arms.js';
import {homeAt} from './home.js';
import type {FaceRoom, Pages, Stop} from './page.js';
import {pastCheckAt} from './past-check.js';
import {pastListAt} from './past-list.js';
import type {BesidePlace} from './places.js';
import {profilesAt} from './profiles.js';
import {settingsAt} from './settings.js';

/** All pages beside real checks, the same for both faces. */
export const besidePages = (workbench: Workbench, room: FaceRoom): Pages<BesidePlace> => ({
	start: {at: 'home'},
	at: (place) => stopAt(workbench, room, place),
	filed: (record) => ({at: 'filed', record}),
	failed: (notice) => ({at: 'home', notice}),
});

function stopAt(workbench: Workbench, room: FaceRoom, place: BesidePlace): Stop<BesidePlace> {
	switch (place.at) {
		case 'home':
		case 'check-open':
		case 'filed':
			return homeAt(workbench, room, place);
		case 'find-arm':
		case 'arms':
		case 'arm':
			return armsAt(workbench, room, place);
		case 'past':
		case 'past-filter':
		case 'filter-arm':
		case 'filter-year':
		case 'filter-verdict':
			return pastListAt(workbench, room, place);
		case 'past-check':
		case 'compare-with':
		case 'compared':
		case 'void-reason':
		case 'void-typed':
		case 'void-confirm':
			return pastCheckAt(workbench, room, place);
		case 'profiles':
		case 'profile':
		case 'rename':
		case 'answers':
		case 'answer':
		case 'events':
		case 'event-kind':
		case 'event-note':
		case 'event-day':
		case 'event-strike':
			return profilesAt(workbench, place);
		case 'settings':
		case 'setting':
		case 'setting-text':
			return settingsAt(workbench, place);
	}
}
