import type {PastCheck} from '../check/past-check.js';
import {overriddenIn} from '../pages/verdict-lines.js';
import type {ArmSource} from '../reports/arm-report.js';
import type {CheckSource} from '../reports/check-source.js';
import {checksOfArm, historyOf, namesOf, withTools} from '../results/years/arms.js';
import {EXIT} from '../terminal/exit-paths.js';
import {didYouMean} from './did-you-mean.js';
import {sayFault} from './print-out.js';
import type {Shelf} from './shelf.js';

/** What a report is asked of. */
export type Asked = {readonly id?: string | undefined; readonly arm?: string | undefined};

/** One check, or an arm with all its checks; else why there is none, and the exit status for it. */
export type Subject =
	| {readonly of: 'check'; readonly source: CheckSource}
	| {readonly of: 'arm'; readonly source: ArmSource}
	| {readonly of: 'nothing'; readonly sentence: string; readonly status: number};

const nothing = (sentence: string, status: number = EXIT.usage): Subject => ({of: 'nothing', sentence, status});

/** The check named by its id; else the history of the arm named; else the newest check that is not void. */
export function subjectOf({id, arm}: Asked, all: readonly PastCheck[], shelf: Shelf): Subject {
	if (id !== undefined) return checkNamed(id, arm, all, shelf);
	if (arm !== undefined) return armNamed(arm, all, shelf);
	const newest = all.find(({voidBecause}) => voidBecause === undefined);
	if (newest) return checkOf(newest.id, all, shelf);
	return nothing(`There is no past check in "${shelf.dataDir}" to report on.`);
}

function checkNamed(id: string, arm: string | undefined, all: readonly PastCheck[], shelf: Shelf): Subject {
	if (shelf.store.draft().check?.id === id)
		return nothing(`Check ${id} is still open: come to its end first, then its report can be written.`);
	const row = all.find((one) => one.id === id);
	if (row && arm !== undefined && !namesOf(arm, shelf.profiles()).includes(row.arm))
		return nothing(`Check ${id} is one of "${row.arm}", not of "${arm}": leave one of the two out.`);
	return checkOf(id, all, shelf);
}

function checkOf(id: string, all: readonly PastCheck[], shelf: Shelf): Subject {
	const found = shelf.record(id);
	if (!found.ok) {
		// One that is listed and not there any more is no fault of the command line.
		const isMistyped = found.isUnknown && all.every((one) => one.id !== id);
		return nothing(found.sentence, isMistyped ? EXIT.usage : EXIT.cannotReadOrWrite);
	}
	const {record, putBackAt, voided, formerVoids} = found;
	const history = historyOf(record.check, all, shelf.profiles());
	return {of: 'check', source: {record, putBackAt, voids: {voided, formerVoids}, history}};
}

function armNamed(arm: string, all: readonly PastCheck[], shelf: Shelf): Subject {
	const names = new Set(namesOf(arm, shelf.profiles()));
	const ofArm = all.filter((one) => names.has(one.arm));
	const counting = checksOfArm(all, arm, shelf.profiles());
	const [newest] = counting;
	if (!newest) return nothing(noneOf(arm, ofArm, all));
	const found = checkOf(newest.id, all, shelf);
	if (found.of !== 'check') return found;
	const history = withTools(counting.slice(1), newest.measuredWith?.tools ?? '', shelf.profiles());
	return {
		of: 'arm',
		source: {
			arm: namesOf(arm, shelf.profiles())[0] ?? arm,
			newest: {...found.source, history},
			overridden: history.flatMap((row) => overriddenAt(row, shelf)),
			notCounted: ofArm.filter((one) => !counting.includes(one)),
		},
	};
}

function noneOf(arm: string, ofArm: readonly PastCheck[], all: readonly PastCheck[]): string {
	if (ofArm.length > 0)
		return `No check of "${arm}" counts: all are void or without figures. Name one of them by its id, see "armdrift list".`;
	const meant = didYouMean(arm, [...new Set(all.map((one) => one.arm))]);
	return `There is no past check of "${arm}"; ${meant === undefined ? 'see "armdrift list" for the arms that have any.' : `did you mean "${meant}"?`}`;
}

/** What was overridden in an earlier check; one that cannot be read is said, and left out. */
function overriddenAt({id, date}: PastCheck, shelf: Shelf): ArmSource['overridden'] {
	const found = shelf.record(id);
	if (found.ok) return [{date, overridden: overriddenIn(found.record.check)}];
	sayFault(found.sentence);
	return [];
}
