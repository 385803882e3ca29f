import {words} from '../../words/index.js';
import type {Workbench} from '../../workbench.js';
import {type FaceRoom, go, type Stop} from './page.js';
import {pastFilterAt, toldFilter} from './past-filter.js';
import {hasFigures, pastLabels} from './past-labels.js';
import {type BesidePlace, type PastListPlace, toHome} from './places.js';
import {turnedList} from './turned-list.js';

const say = words.beside.past;

/** Past checks, newest first, all of them or those that are wanted. */
export function pastListAt(workbench: Workbench, room: FaceRoom, place: PastListPlace): Stop<BesidePlace> {
	const {at, offset, only} = place;
	if (at !== 'past') return pastFilterAt(workbench, {...place, at});
	// The line of the filter takes one of those that a screen has.
	const checks = room.hasKeys ? {...room, listRows: Math.max(1, room.listRows - 1)} : room;
	const {total, rows, notices} = workbench.archive.past({offset, limit: checks.listRows, only});
	const labels = pastLabels(rows, room);
	const {noneSuch, filter} = say;
	return turnedList<BesidePlace>({
		title: say.title,
		room: checks,
		offset,
		total,
		told: total === 0 ? (only ? noneSuch : say.none) : (span) => say.span({...span, hasFigures: hasFigures(room)}),
		notices,
		offers: [
			[
				'filter',
				total === 0 && !only ? undefined : filter.now(toldFilter(only)),
				() => go({...place, at: 'past-filter'}),
			],
		],
		rows: rows.map(({id}, index) => ({id, label: labels[index] ?? id})),
		older: say.older,
		turnTo: (to) => ({...place, offset: to}),
		choose: (id) => go({at: 'past-check', id, offset, ...(only && {only})}),
		back: backFrom(only),
	});
}

/** Home; where one arm's checks were looked at, back to that arm. */
function backFrom(only: PastListPlace['only']) {
	const arm = only?.armNames?.[0];
	return arm === undefined ? toHome : go({at: 'arm', arm} as const);
}
