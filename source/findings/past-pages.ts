import type {Saved, Workbench} from '../workbench.js';
import {back, type Page, type Pages, type Turn} from './page.js';
import {recordLines} from './record-lines.js';
import {line} from './shown-lines.js';
import {isTypedReason, readReason, voidReasons} from './voids.js';

export type PastPlace = {readonly at: 'check' | 'reason' | 'reason-typed'};

/** A past check: to look at whole, to do its put-back list, to mark it void and to let it count again. */
export const pastPages = (workbench: Workbench, id: string): Pages<PastPlace> => ({
	start: {at: 'check'},
	pageOf: ({at}) => (at === 'check' ? checkPage(workbench, id) : reasonPages[at]),
	turn: ({at}, entry) => {
		if (at === 'check') return chosen(workbench, id, entry);
		if (at === 'reason') {
			if (entry === back.id) return {kind: 'go', to: {at: 'check'}};
			if (isTypedReason(entry)) return {kind: 'go', to: {at: 'reason-typed'}};
		}
		const read = readReason(entry);
		if (!read.ok) return {kind: 'refused', sentence: read.sentence};
		return saved(() => workbench.archive.markVoid(id, read.reason));
	},
	backOf: ({at}) => (at === 'check' ? undefined : {at: at === 'reason' ? 'check' : 'reason'}),
});

const saved = (save: () => Promise<Saved>): Turn<PastPlace> => ({kind: 'save', save, to: {at: 'check'}});

function checkPage({archive}: Workbench, id: string): Page {
	const found = archive.record(id);
	const toList = {id: 'back', label: 'back to the list'};
	if (!found.ok) return {title, shown: [line(found.sentence, 'bad')], prompt: {kind: 'choice', options: [toList]}};
	const {record, putBackAt, voided} = found;
	const options = [
		...(record.outcome === 'interrupted' && putBackAt === undefined
			? [{id: 'put-back', label: 'do its put-back list now'}]
			: []),
		toList,
		voided ? {id: 'counts-again', label: 'let it count again'} : {id: 'void', label: 'mark it void'},
	];
	// What does not count is not compared either.
	const history = voided ? [] : archive.history(record.check);
	return {title, shown: recordLines(record, putBackAt, {...found, history}), prompt: {kind: 'choice', options}};
}

const title = 'Past check';

function chosen({archive}: Workbench, id: string, entry: string): Turn<PastPlace> {
	switch (entry) {
		case 'put-back':
			return {kind: 'out', reopen: id};
		case 'void':
			return {kind: 'go', to: {at: 'reason'}};
		case 'counts-again':
			return saved(() => archive.countAgain(id));
		default:
			return {kind: 'out'};
	}
}

const voidShown = [
	line(
		'A void check stays on file, unchanged, with this reason beside it. Comparisons, trend and the day of the next check leave it out. It can be taken back.',
	),
];
const reasonPages: Readonly<Record<'reason' | 'reason-typed', Page>> = {
	reason: {
		title: 'Why does this check not count?',
		shown: voidShown,
		prompt: {kind: 'choice', options: [...voidReasons, back]},
	},
	'reason-typed': {
		title: 'Why does this check not count?',
		shown: [line('In a few words, at most 80 letters.')],
		prompt: {kind: 'field', initial: '', mayBeEmpty: false, unit: ''},
	},
};
