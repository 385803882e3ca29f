import {summaryOf} from '../../results/record.js';
import {isKnownToCount, readReason, voidReasons} from '../../results/voids.js';
import {words} from '../../words/index.js';
import type {Saved, Workbench} from '../../workbench.js';
import {recordLines} from '../record-lines.js';
import {line} from '../shown-lines.js';
import {comparedAt} from './compared.js';
import {toOther} from './other-check.js';
import {backOffer, type FaceRoom, fieldStop, go, listStop, type Offer, type Stop, type Turn} from './page.js';
import type {BesidePlace, PastCheckPlace} from './places.js';
import {reportLines, reportOffer} from './report-offer.js';

const say = words.beside.past;
const {title} = say.reason;

/** A past check: to look at whole, to do its put-back list, to mark it void and to let it count again. */
export function pastCheckAt(workbench: Workbench, room: FaceRoom, place: PastCheckPlace): Stop<BesidePlace> {
	const {at, id, offset, only} = place;
	const here = {id, offset, ...(only && {only})};
	const to = (where: 'past-check' | 'void-reason' | 'void-typed') => go({at: where, ...here});
	const saving = (save: () => Promise<Saved>): Turn<BesidePlace> => ({kind: 'save', save, to: to('past-check').to});
	const markVoid = (reason: string) => saving(() => workbench.archive.markVoid(id, reason));
	switch (at) {
		case 'past-check':
			return checkStop(workbench, place, {
				markVoid: to('void-reason'),
				countAgain: () => saving(() => workbench.archive.countAgain(id)),
			});
		case 'compare-with':
		case 'compared':
			return comparedAt(workbench, room, place);
		case 'void-reason':
			return listStop<BesidePlace>({title, shown: [line(say.reason.whatItMeans)]}, to('past-check'), [
				...voidReasons.map((reason): Offer<BesidePlace> => {
					const text = words.results.voidReasons[reason];
					return [reason, text, () => (reason === 'typed' ? to('void-typed') : markVoid(text))];
				}),
				backOffer(to('past-check')),
			]);
		case 'void-typed':
			return fieldStop<BesidePlace>({title, shown: [line(say.reason.inFewWords)]}, to('void-reason'), (entry) => {
				const reason = readReason(entry);
				return reason === undefined
					? {kind: 'refused', sentence: words.results.voidReasonWanted}
					: go({at: 'void-confirm', ...here, reason});
			});
		case 'void-confirm':
			return {
				page: {
					title,
					shown: [line(say.reason.whatItMeans), line(say.reason.given(place), 'strong')],
					prompt: {kind: 'yes-no', question: say.reason.question},
				},
				turn: (entry) => (entry === 'yes' ? markVoid(place.reason) : to('void-typed')),
				back: to('void-typed'),
			};
	}
}

type Marking = {readonly markVoid: Turn<BesidePlace>; readonly countAgain: () => Turn<BesidePlace>};

function checkStop(
	workbench: Workbench,
	{id, offset, only, isReported}: Extract<PastCheckPlace, {at: 'past-check'}>,
	{markVoid, countAgain}: Marking,
): Stop<BesidePlace> {
	const {archive} = workbench;
	const found = archive.record(id);
	const {check} = say;
	const here = {id, offset, ...(only && {only})};
	const toList = go<BesidePlace>({at: 'past', offset, ...(only && {only})});
	const backToList: Offer<BesidePlace> = ['back', check.back, () => toList];
	if (!found.ok) return listStop({title: check.title, shown: [line(found.sentence, 'bad')]}, toList, [backToList]);
	const {record, putBackAt, voided, unknownBecause} = found;
	// What does not count for sure is not compared either.
	const counts = isKnownToCount(found);
	const history = counts ? archive.history(record.check) : [];
	const isToPutBack = record.outcome === 'interrupted' && putBackAt === undefined;
	const shown = [
		...reportLines(workbench, id, isReported),
		...(unknownBecause === undefined ? [] : [line(unknownBecause, 'bad')]),
		...recordLines(record, putBackAt, {...found, history}),
	];
	const title = check.titleOf(summaryOf(record));
	const isComparable = counts && archive.ofArm(summaryOf(record).arm).some((one) => one.id !== id);
	return listStop<BesidePlace>({title, shown}, toList, [
		['put-back', isToPutBack ? check.putBack : undefined, () => toOther(workbench, {reopen: id})],
		backToList,
		['counts-again', counts ? undefined : check.countAgain, countAgain],
		['void', voided ? undefined : check.markVoid, () => markVoid],
		['compare', isComparable ? check.compare : undefined, () => go({at: 'compare-with', ...here, from: 0})],
		...reportOffer(workbench, id, {at: 'past-check', ...here, isReported: true}),
	]);
}
