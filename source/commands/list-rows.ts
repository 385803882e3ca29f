import {isCounted, type PastCheck} from '../check/past-check.js';
import {didYouMean} from '../desk/did-you-mean.js';
import {attempt} from '../desk/hindrance.js';
import type {Shelf} from '../desk/shelf.js';
import {pastCells} from '../pages/beside/past-labels.js';
import {namesOf} from '../results/years/arms.js';
import {COMPARED_ROWS} from '../store/history.js';
import {markOfList} from '../store/kept-view.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {saidBack} from '../visible-text.js';
import {words} from '../words/index.js';
import {armNamed} from './arm-named.js';
import {jsonList} from './json-text.js';
import {verdictWords} from './option-values.js';
import {withPastRows} from './past-rows.js';
import {printOut, refuseWith, sayFault} from './print.js';

const say = words.commands.list;

export type ListOptions = {
	readonly arm?: string | undefined;
	readonly verdict?: string | undefined;
	/** First and last day, or month, or year: `2026-11`. */
	readonly since?: string | undefined;
	readonly until?: string | undefined;
	readonly limit?: number | undefined;
	readonly as: string;
	readonly data?: string | undefined;
};

/**
 * Prints the past checks that are wanted, worked out from their rows.
 * @param mark how all that the list is taken from stood before; without it the list is not kept for the next time
 * @returns exit status
 */
export function printRows(
	{arm, verdict, since = '', until, limit, as, data}: ListOptions,
	mark?: string,
): Promise<number> {
	if (verdict !== undefined && !verdictWords.includes(verdict)) {
		const meant = didYouMean(verdict, verdictWords);
		return Promise.resolve(refuseWith(say.unknownVerdict({verdict: saidBack(verdict), meant, known: verdictWords})));
	}
	const isWanted = (row: PastCheck): boolean =>
		(verdict === undefined || (isCounted(row) && (row.verdict ?? 'none') === verdict)) &&
		row.date.slice(0, since.length) >= since &&
		(until === undefined || row.date.slice(0, until.length) <= until);
	// The newest checks that are wanted may lie far back.
	const isOfAll = limit !== undefined && arm === undefined && verdict === undefined && since === '' && !until;
	return withPastRows(isOfAll ? {data, limit} : {data}, async (all, shelf, isSound) => {
		const named = arm === undefined ? undefined : armNamed(arm, all, shelf);
		if (named && !named.ok) return named.status;
		const names = named && new Set(namesOf(named.arm, shelf.profiles()));
		const ofArm = names ? all.filter((one) => names.has(one.arm)) : all;
		if (ofArm.length === 0 && named) {
			const known = new Set(all.map((one) => one.arm));
			return refuseWith(say.noneOfArm({arm: named.arm, meant: didYouMean(named.arm, [...known])}));
		}
		const rows = ofArm.filter(isWanted).slice(0, limit);
		if (as === 'json') {
			const {checkAsData} = await import('./check-data.js');
			return printOut(jsonList(rows.map((row) => checkAsData(row, shelf))));
		}
		if (rows.length > 0) {
			const text = columns(pastCells(rows));
			const status = await printOut(text);
			if (isSound && rows.length > COMPARED_ROWS) await keep(text, shelf, mark);
			return status;
		}
		sayFault(ofArm.length > 0 ? say.noneSuch : say.none(shelf));
		return EXIT.done;
	});
}

/** Keeps the list as it was printed, unless something that it is taken from has changed meanwhile. */
async function keep(content: string, shelf: Shelf, mark: string | undefined): Promise<void> {
	if (mark === undefined || shelf.store.isListPending() || mark !== markOfList(shelf.dataDir)) return;
	await attempt(() => shelf.store.keepView('list', {mark, content}));
}
