import {readReason, voidReasons} from '../../results/voids.js';
import {words} from '../../words/index.js';
import type {Saved, Workbench} from '../../workbench.js';
import {recordLines} from '../record-lines.js';
import {line} from '../shown-lines.js';
import type {BesidePlace} from './beside-pages.js';
import {toOther} from './home.js';
import {type BesidePage, back, go, type Stop, type Turn} from './page.js';

/** A past check, and why it does not count; the list stands where it was left. */
export type PastCheckPlace = {readonly id: string; readonly offset: number} & (
	| {readonly at: 'past-check' | 'void-reason' | 'void-typed'}
	/** A reason that was typed, to be confirmed. */
	| {readonly at: 'void-confirm'; readonly reason: string}
);

const say = words.beside.past;
const reasonOptions = voidReasons.map((id) => ({id, label: words.results.voidReasons[id]}));
/** A reason by its id, as it is kept. */
const reasonText = (chosen: string): string => reasonOptions.find(({id}) => id === chosen)?.label ?? chosen;

/** A past check: to look at whole, to do its put-back list, to mark it void and to let it count again. */
export function pastCheckAt(workbench: Workbench, place: PastCheckPlace): Stop<BesidePlace> {
	const {at, id, offset} = place;
	const to = (where: 'past-check' | 'void-reason' | 'void-typed') => go({at: where, id, offset});
	const saving = (save: () => Promise<Saved>): Turn<BesidePlace> => ({kind: 'save', save, to: to('past-check').to});
	const markVoid = (reason: string) => saving(() => workbench.archive.markVoid(id, reason));
	switch (at) {
		case 'past-check': {
			const toList = go({at: 'past', offset} as const);
			return {
				page: checkPage(workbench, id),
				turn: (entry) => {
					if (entry === 'put-back') return toOther(workbench, {reopen: id});
					if (entry === 'void') return to('void-reason');
					return entry === 'counts-again' ? saving(() => workbench.archive.countAgain(id)) : toList;
				},
				back: toList,
			};
		}
		case 'void-reason':
			return {
				page: {
					title: say.reason.title,
					shown: [line(say.reason.whatItMeans)],
					prompt: {kind: 'choice', options: [...reasonOptions, back]},
				},
				turn: (entry) => {
					if (entry === back.id) return to('past-check');
					return entry === 'typed' ? to('void-typed') : markVoid(reasonText(entry));
				},
				back: to('past-check'),
			};
		case 'void-typed':
			return {
				page: {
					title: say.reason.title,
					shown: [line(say.reason.inFewWords)],
					prompt: {kind: 'field', initial: '', mayBeEmpty: false, unit: ''},
				},
				turn: (entry) => {
					const reason = readReason(entry);
					return reason === undefined
						? {kind: 'refused', sentence: words.results.voidReasonWanted}
						: go({at: 'void-confirm', id, offset, reason});
				},
				back: to('void-reason'),
			};
		case 'void-confirm':
			return {
				page: {
					title: say.reason.title,
					shown: [line(say.reason.whatItMeans), line(say.reason.given(place), 'strong')],
					prompt: {kind: 'yes-no', question: say.reason.question},
				},
				turn: (entry) => (entry === 'yes' ? markVoid(place.reason) : to('void-typed')),
				back: to('void-typed'),
			};
	}
}

function checkPage({archive}: Workbench, id: string): BesidePage {
	const found = archive.record(id);
	const {title, putBack, back: toList, markVoid, countAgain} = say.check;
	const backToList = {id: back.id, label: toList};
	if (!found.ok) return {title, shown: [line(found.sentence, 'bad')], prompt: {kind: 'choice', options: [backToList]}};
	const {record, putBackAt, voided} = found;
	const options = [
		...(record.outcome === 'interrupted' && putBackAt === undefined ? [{id: 'put-back', label: putBack}] : []),
		backToList,
		voided ? {id: 'counts-again', label: countAgain} : {id: 'void', label: markVoid},
	];
	// What does not count is not compared either.
	const history = voided ? [] : archive.history(record.check);
	return {title, shown: recordLines(record, putBackAt, {...found, history}), prompt: {kind: 'choice', options}};
}
