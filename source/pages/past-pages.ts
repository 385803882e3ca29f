import {readReason, voidReasons} from '../results/voids.js';
import {words} from '../words/index.js';
import type {Saved, Workbench} from '../workbench.js';
import {back, type Page, type Pages, type Turn} from './page.js';
import {recordLines} from './record-lines.js';
import {line} from './shown-lines.js';

export type PastPlace =
	| {readonly at: 'check' | 'reason' | 'reason-typed'}
	/** A reason that was typed, to be confirmed. */
	| {readonly at: 'confirm'; readonly reason: string};

/** A past check: to look at whole, to do its put-back list, to mark it void and to let it count again. */
export const pastPages = (workbench: Workbench, id: string): Pages<PastPlace> => ({
	start: {at: 'check'},
	pageOf: (place) => {
		if (place.at === 'check') return checkPage(workbench, id);
		return place.at === 'confirm' ? confirmPage(place.reason) : reasonPages[place.at];
	},
	turn: (place, entry) => {
		switch (place.at) {
			case 'check':
				return chosen(workbench, id, entry);
			case 'reason':
				if (entry === back.id) return {kind: 'go', to: {at: 'check'}};
				if (entry === 'typed') return {kind: 'go', to: {at: 'reason-typed'}};
				return saved(() => workbench.archive.markVoid(id, reasonText(entry)));
			case 'reason-typed': {
				const reason = readReason(entry);
				return reason === undefined
					? {kind: 'refused', sentence: words.results.voidReasonWanted}
					: {kind: 'go', to: {at: 'confirm', reason}};
			}
			case 'confirm':
				if (entry !== 'yes') return {kind: 'go', to: {at: 'reason-typed'}};
				return saved(() => workbench.archive.markVoid(id, place.reason));
		}
	},
	backOf: ({at}) => (at === 'check' ? undefined : before[at]),
});

const before = {
	reason: {at: 'check'},
	'reason-typed': {at: 'reason'},
	confirm: {at: 'reason-typed'},
} as const satisfies Record<Exclude<PastPlace['at'], 'check'>, PastPlace>;

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
const reasonOptions = voidReasons.map((id) => ({id, label: words.results.voidReasons[id]}));
/** A reason by its id, as it is kept. */
const reasonText = (chosen: string): string => reasonOptions.find(({id}) => id === chosen)?.label ?? chosen;
const confirmPage = (reason: string): Page => ({
	title: 'Why does this check not count?',
	shown: [...voidShown, line(`Reason: ${reason}`, 'strong')],
	prompt: {kind: 'yes-no', question: 'Mark this check void?'},
});

const reasonPages: Readonly<Record<'reason' | 'reason-typed', Page>> = {
	reason: {
		title: 'Why does this check not count?',
		shown: voidShown,
		prompt: {kind: 'choice', options: [...reasonOptions, back]},
	},
	'reason-typed': {
		title: 'Why does this check not count?',
		shown: [line('In a few words, at most 80 letters.')],
		prompt: {kind: 'field', initial: '', mayBeEmpty: false, unit: ''},
	},
};
