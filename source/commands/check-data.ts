import type {PastCheck} from '../check/past-check.js';
import type {Profile} from '../procedure/facts.js';
import {documentOfCheck} from '../results/document-of-check.js';
import {type FinishedCheck, summaryOf} from '../results/record.js';
import {withoutCustomer} from '../results/without-customer.js';
import {namesOf} from '../results/years/arms.js';
import {sayFault} from './print.js';
import type {ReportSubject} from './report.js';

/** What is asked of a shelf for that. */
type Shelf = {
	readonly profiles: () => readonly Profile[];
	readonly record: (
		id: string,
	) => {readonly ok: true; readonly record: FinishedCheck} | {readonly ok: false; readonly sentence: string};
};

/**
 * A past check for scripts; its keys stand in the help topic on scripts, with their units. Nothing is left out: what is
 * not known is null.
 */
export function checkAsData(row: PastCheck, shelf: Shelf) {
	const found = shelf.record(row.id);
	if (!found.ok) sayFault(found.sentence);
	return dataOf(row, shelf, found.ok ? found.record : undefined);
}

function dataOf(row: PastCheck, shelf: Shelf, record: FinishedCheck | undefined) {
	const {
		id,
		date,
		startedAt,
		arm,
		outcome,
		voidBecause = null,
		isVoidUnknown = false,
		doneAfter: _done,
		...figures
	} = row;
	const armToday = namesOf(arm, shelf.profiles())[0] ?? arm;
	const overrides = record?.check.overrides.map(({step, reason, at}) => {
		return {step, reason: reason.id, typed: reason.typed ?? null, at};
	});
	return {
		id,
		date,
		startedAt,
		arm,
		armToday,
		outcome,
		voidBecause,
		isVoidUnknown,
		...figures,
		overrides: overrides ?? null,
	};
}

type Beside = {readonly all: readonly PastCheck[]; readonly shelf: Shelf};

/** A report as data: a check with its figures and its record, or an arm with all its checks. */
export function reportAsData(subject: ReportSubject, {all, shelf}: Beside) {
	if (subject.of === 'check') return wholeCheck(subject.source, {all, shelf});
	const [arm = subject.source.arm, ...formerNames] = namesOf(subject.source.arm, shelf.profiles());
	const names = [arm, ...formerNames];
	return {arm, formerNames, checks: all.filter((one) => names.includes(one.arm)).map((row) => checkAsData(row, shelf))};
}

type CheckSource = Extract<ReportSubject, {of: 'check'}>['source'];

function wholeCheck({record, putBackAt}: CheckSource, {all, shelf}: Beside) {
	const {check, finishedAt, issued, nextCheck} = record;
	const row = all.find(({id}) => id === check.id) ?? summaryOf(record);
	const found = documentOfCheck(check);
	return {
		...dataOf(row, shelf, record),
		isPractice: check.practice !== undefined,
		finishedAt,
		putBackAt: putBackAt ?? null,
		nextBecause: nextCheck?.because ?? null,
		figures: issued?.figures ?? null,
		findings: issued?.findings ?? [],
		document: found.ok ? found.document : null,
		record: withoutCustomer(record),
	};
}
