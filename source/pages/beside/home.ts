import {words} from '../../words/index.js';
import type {Unfinished, Workbench} from '../../workbench.js';
import {justFiled} from '../record-lines.js';
import {line} from '../shown-lines.js';
import {toArms} from './arms.js';
import {opening, toOther} from './other-check.js';
import {backOffer, type FaceRoom, go, listStop, type Stop, warnings} from './page.js';
import {type BesidePlace, type HomePlace, type OtherCheck, toHome} from './places.js';
import {reportLines, reportOffer} from './report-offer.js';

const say = words.beside.home;

/** The first page, and what stands between it and a check. */
export function homeAt(workbench: Workbench, room: FaceRoom, place: HomePlace): Stop<BesidePlace> {
	switch (place.at) {
		case 'home':
			return firstStop(workbench, room, place.notice);
		case 'check-open':
			return checkOpenStop(workbench, place.unfinished, place.other);
		case 'filed':
			return filedStop(workbench, place);
	}
}

/** An unfinished check comes before anything else. */
function firstStop(workbench: Workbench, room: FaceRoom, notice: string | undefined): Stop<BesidePlace> {
	const unfinished = workbench.unfinished();
	const onFile = workbench.archive.atAGlance();
	const {first: due} = onFile;
	const open = unfinished && [line(say.unfinished(unfinished), 'warn'), line(words.pages.deck.told(unfinished.deck))];
	// What became of the last key comes first: further down a small screen would not show that anything did.
	const told = warnings(notice === undefined ? [] : [notice]);
	const preparing = open ? [] : [line(say.nothingOpen)];
	const shown = [...told, ...(open ?? []), ...warnings(workbench.notices()), ...preparing];
	const leave = {kind: 'leave'} as const;
	return listStop<BesidePlace>({title: say.title(workbench), shown, esc: 'leave'}, leave, [
		['resume', unfinished && say.resume(unfinished), () => opening(workbench, 'resume')],
		['start', say.start, () => toOther(workbench, 'start')],
		['recheck', due && say.recheck(due), () => toOther(workbench, 'recheck')],
		[
			'arms',
			onFile.arms === 0 ? undefined : words.beside.arms.onFile(onFile),
			() => toArms(workbench.archive.arms().length, room),
		],
		['past', say.past, () => go({at: 'past', offset: 0})],
		['profiles', say.profiles, () => go({at: 'profiles'})],
		['settings', say.settings, () => go({at: 'settings'})],
		['practice', say.practice, () => ({kind: 'practice'})],
		['leave', say.leave, () => leave],
	]);
}

function checkOpenStop(workbench: Workbench, unfinished: Unfinished, other: OtherCheck): Stop<BesidePlace> {
	const {title, goingOn, resume, start} = say.checkOpen;
	return listStop<BesidePlace>({title, shown: [line(goingOn(unfinished), 'warn')]}, toHome, [
		['resume', resume, () => opening(workbench, 'resume')],
		['start', start, () => opening(workbench, other)],
		backOffer(toHome),
	]);
}

/** The check is filed: its result once more, whole. */
function filedStop(workbench: Workbench, place: Extract<HomePlace, {at: 'filed'}>): Stop<BesidePlace> {
	const {record, isReported} = place;
	const {id} = record.check;
	const {ready, notReady, leave, home} = say.filed;
	const title = record.outcome === 'interrupted' ? notReady : ready;
	const shown = [...warnings(workbench.notices()), ...reportLines(workbench, id, isReported), ...justFiled(record)];
	return listStop<BesidePlace>({title, shown, esc: 'first-screen'}, toHome, [
		['leave', leave, () => ({kind: 'leave'})],
		['home', home, () => toHome],
		...reportOffer(workbench, id, {...place, isReported: true}),
	]);
}
