import {words} from '../../words/index.js';
import type {PracticeDesk, PracticeExtent} from '../../workbench.js';
import {recordLines} from '../record-lines.js';
import {line} from '../shown-lines.js';
import {type BesidePage, back, type Filed, go, type Pages, type Stop, type Turn} from './page.js';

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

function stopAt(desk: PracticeDesk, hasHome: boolean, place: LobbyPlace): Stop<LobbyPlace> {
	const toArms = go({at: 'arms'} as const);
	switch (place.at) {
		case 'arms':
			return {
				page: armsPage(desk, hasHome, place.notice),
				turn: (entry) => turnOfArms(desk, entry),
				back: {kind: hasHome ? 'real-checks' : 'leave'},
			};
		case 'extent':
			return {
				page: extentPage(desk),
				turn: (entry) => {
					const extent = extents.find((one) => one === entry);
					return extent ? {kind: 'open', open: () => desk.begin(place.arm, extent)} : toArms;
				},
				back: toArms,
			};
		case 'practised':
			return {
				page: practisedPage(desk, place.record),
				turn: (entry) => (entry === 'again' ? toArms : {kind: 'leave'}),
				back: toArms,
			};
	}
}

function turnOfArms(desk: PracticeDesk, entry: string): Turn<LobbyPlace> {
	switch (entry) {
		case 'leave':
			return {kind: 'leave'};
		case 'home':
			return {kind: 'real-checks'};
		case 'resume':
			return {kind: 'open', open: () => desk.resume()};
		default:
			return go({at: 'extent', ...(entry === 'hidden' ? {} : {arm: entry})});
	}
}

function armsPage(desk: PracticeDesk, hasHome: boolean, notice: string | undefined): BesidePage {
	const open = desk.unfinished();
	const {title, about, resume, hidden, home, leave} = say.arms;
	const notices = [...desk.notices(), ...(notice === undefined ? [] : [notice])];
	const options = [
		...(open ? [{id: 'resume', label: resume(open)}] : []),
		{id: 'hidden', label: hidden},
		...desk.arms.map(({id, name}) => ({id, label: name})),
		...(hasHome ? [{id: 'home', label: home}] : []),
		{id: 'leave', label: leave},
	];
	return {
		title,
		shown: [line(say.notice, 'warn'), line(about), ...notices.map((text) => line(text, 'warn'))],
		prompt: {kind: 'choice', options},
		esc: hasHome ? 'real-checks' : 'leave',
	};
}

function extentPage(desk: PracticeDesk): BesidePage {
	const open = desk.unfinished();
	return {
		title: say.extent.title,
		shown: open ? [line(say.extent.putAway(open))] : [],
		prompt: {kind: 'choice', options: [...extents.map((id) => ({id, label: say.extent.extents[id]})), back]},
	};
}

function practisedPage({practice}: PracticeDesk, record: Filed): BesidePage {
	const {title, again, leave} = say.filed;
	return {
		title,
		shown: [...practice.truth(record), ...recordLines(record)],
		prompt: {
			kind: 'choice',
			options: [
				{id: 'again', label: again},
				{id: 'leave', label: leave},
			],
		},
		esc: 'another-arm',
	};
}
