import type {Option} from '../../procedure/step.js';
import {words} from '../../words/index.js';
import type {Unfinished, Workbench} from '../../workbench.js';
import {recordLines} from '../record-lines.js';
import {line} from '../shown-lines.js';
import type {BesidePlace} from './beside-pages.js';
import {type BesidePage, back, type Filed, go, type Stop, type Turn} from './page.js';

/** Another check than the open one: a new one, a repeated one, or the put-back list of an old one, by its id. */
type Other = 'start' | 'recheck' | {readonly reopen: string};

export type HomePlace =
	| {readonly at: 'home'; readonly notice?: string}
	/** Another check would put this one aside. */
	| {readonly at: 'check-open'; readonly unfinished: Unfinished; readonly other: Other}
	| {readonly at: 'filed'; readonly record: Filed};

const toHome = go({at: 'home'} as const);

/** The first page, and what stands between it and a check. */
export function homeAt(workbench: Workbench, place: HomePlace): Stop<BesidePlace> {
	switch (place.at) {
		case 'home':
			return {
				page: homePage(workbench, place.notice),
				turn: (entry) => turnOfHome(workbench, entry),
				back: {kind: 'leave'},
			};
		case 'check-open':
			return {
				page: checkOpenPage(place.unfinished),
				turn: (entry) => {
					if (entry === 'resume') return {kind: 'open', open: () => workbench.resume()};
					return entry === 'start' ? opening(workbench, place.other) : toHome;
				},
				back: toHome,
			};
		case 'filed':
			return {
				page: filedPage(place.record),
				turn: (entry) => (entry === 'home' ? toHome : {kind: 'leave'}),
				back: toHome,
			};
	}
}

/** To another check; one that is open is put aside only when asked. */
export function toOther(workbench: Workbench, other: Other): Turn<BesidePlace> {
	const unfinished = workbench.unfinished();
	return unfinished ? go({at: 'check-open', unfinished, other}) : opening(workbench, other);
}

const opening = (workbench: Workbench, other: Other): Turn<BesidePlace> => ({
	kind: 'open',
	open: () => (typeof other === 'object' ? workbench.reopen(other.reopen) : workbench[other]()),
});

function turnOfHome(workbench: Workbench, entry: string): Turn<BesidePlace> {
	switch (entry) {
		case 'resume':
			return {kind: 'open', open: () => workbench.resume()};
		case 'start':
		case 'recheck':
			return toOther(workbench, entry);
		case 'past':
			return go({at: 'past', offset: 0});
		case 'profiles':
		case 'settings':
			return go({at: entry});
		case 'practice':
			return {kind: 'practice'};
		default:
			return {kind: 'leave'};
	}
}

/** An unfinished check comes before anything else. */
function homePage(workbench: Workbench, notice: string | undefined): BesidePage {
	const unfinished = workbench.unfinished();
	const [due] = workbench.archive.due();
	const say = words.beside.home;
	const notices = [...workbench.notices(), ...(notice === undefined ? [] : [notice])];
	const options: readonly Option[] = [
		...(unfinished ? [{id: 'resume', label: say.resume(unfinished)}] : []),
		{id: 'start', label: say.start},
		...(due ? [{id: 'recheck', label: say.recheck({arm: due.arm, due: words.results.due(due)})}] : []),
		...(['past', 'profiles', 'settings', 'practice', 'leave'] as const).map((id) => ({id, label: say[id]})),
	];
	return {
		title: say.title(workbench),
		shown: [
			unfinished ? line(say.unfinished(unfinished), 'warn') : line(say.nothingOpen),
			...notices.map((text) => line(text, 'warn')),
		],
		prompt: {kind: 'choice', options},
		esc: 'leave',
	};
}

function checkOpenPage(unfinished: Unfinished): BesidePage {
	const {title, goingOn, resume, start} = words.beside.home.checkOpen;
	return {
		title,
		shown: [line(goingOn(unfinished), 'warn')],
		prompt: {
			kind: 'choice',
			options: [{id: 'resume', label: resume}, {id: 'start', label: start}, back],
		},
	};
}

/** The check is filed: its result once more, whole. */
function filedPage(record: Filed): BesidePage {
	const {ready, notReady, leave, home} = words.beside.home.filed;
	return {
		title: record.outcome === 'interrupted' ? notReady : ready,
		shown: recordLines(record),
		prompt: {
			kind: 'choice',
			options: [
				{id: 'leave', label: leave},
				{id: 'home', label: home},
			],
		},
		esc: 'first-screen',
	};
}
