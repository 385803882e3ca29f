import {words} from '../../words/index.js';
import type {PracticeDesk, PracticeExtent} from '../../workbench.js';
import {justFiled} from '../record-lines.js';
import {line} from '../shown-lines.js';
import {backOffer, type Filed, go, type Offer, offerStop, type Pages, type Stop, warnings} from './page.js';

export type LobbyPlace =
	| {readonly at: 'arms'; readonly notice?: string}
	/** An arm is chosen, or one of them that is not told. */
	| {readonly at: 'extent'; readonly arm?: string}
	| {readonly at: 'practised'; readonly record: Filed};

const say = words.beside.practice;
const extents = ['once', 'probe', 'whole'] as const satisfies readonly PracticeExtent[];

/**
 * The pages beside practice checks: which invented arm, how much of its check, and at the end its hidden truth.
 *
 * @param hasHome practice was opened from the first page of real checks
 */
export const lobbyPages = (desk: PracticeDesk, hasHome: boolean): Pages<LobbyPlace> => ({
	start: {at: 'arms'},
	at: (place) => stopAt(desk, hasHome, place),
	filed: (record) => ({at: 'practised', record}),
	failed: (notice) => ({at: 'arms', notice}),
});

const toArms = go({at: 'arms'} as const);

function stopAt(desk: PracticeDesk, hasHome: boolean, place: LobbyPlace): Stop<LobbyPlace> {
	switch (place.at) {
		case 'arms':
			return armsStop(desk, hasHome, place.notice);
		case 'extent':
			return extentStop(desk, place.arm);
		case 'practised':
			return practisedStop(desk, place.record);
	}
}

function armsStop(desk: PracticeDesk, hasHome: boolean, notice: string | undefined): Stop<LobbyPlace> {
	const open = desk.unfinished();
	const {title, about, resume, firstTry, hidden, home, leave} = say.arms;
	const seen = desk.truthSeenOf();
	const first = desk.arms[(desk.arms.findIndex(({id}) => id === seen) + 1) % desk.arms.length];
	const goOn: Offer<LobbyPlace> = ['resume', open && resume(open), () => ({kind: 'open', open: () => desk.resume()})];
	const told = warnings(notice === undefined ? [] : [notice]);
	const shown = [line(say.notice, 'warn'), ...told, ...warnings(desk.notices()), line(about)];
	const esc = hasHome ? 'real-checks' : 'leave';
	return offerStop<LobbyPlace>({title, shown, esc}, {kind: esc}, [
		...(seen === undefined ? [goOn] : []),
		['first-try', first && firstTry(first), () => ({kind: 'open', open: () => desk.begin(first?.id, 'once')})],
		...(seen === undefined ? [] : [goOn]),
		['hidden', hidden, () => go({at: 'extent'})],
		...desk.arms.map(({id, name}): Offer<LobbyPlace> => [id, name, () => go({at: 'extent', arm: id})]),
		['home', hasHome ? home : undefined, () => ({kind: 'real-checks'})],
		['leave', leave, () => ({kind: 'leave'})],
	]);
}

function extentStop(desk: PracticeDesk, arm: string | undefined): Stop<LobbyPlace> {
	const open = desk.unfinished();
	const {title, putAway, extents: names} = say.extent;
	return offerStop<LobbyPlace>({title, shown: open ? [line(putAway(open))] : []}, toArms, [
		...extents.map((id): Offer<LobbyPlace> => [id, names[id], () => ({kind: 'open', open: () => desk.begin(arm, id)})]),
		backOffer(toArms),
	]);
}

function practisedStop(desk: PracticeDesk, record: Filed): Stop<LobbyPlace> {
	const {title, again, leave} = say.filed;
	const shown = [...warnings(desk.notices()), ...desk.practice.truth(record), ...justFiled(record)];
	return offerStop<LobbyPlace>({title, shown, esc: 'another-arm'}, toArms, [
		['again', again, () => toArms],
		['leave', leave, () => ({kind: 'leave'})],
	]);
}
