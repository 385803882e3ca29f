import path from 'node:path';
import {formatISO} from 'date-fns/formatISO';
import {isCounted, type PastCheck} from '../check/past-check.js';
import {didYouMean} from '../desk/did-you-mean.js';
import {Hindrance} from '../desk/hindrance.js';
import type {Shelf} from '../desk/shelf.js';
import {overriddenIn} from '../pages/verdict-lines.js';
import {type ArmSource, armReport} from '../reports/arm-report.js';
import {checkReport} from '../reports/check-report.js';
import type {CheckSource, Imprint} from '../reports/check-source.js';
import {htmlOf} from '../reports/html/html-of.js';
import {makerReport} from '../reports/maker-report.js';
import {markdownOf} from '../reports/markdown-of.js';
import type {Report} from '../reports/report.js';
import {checksOfArm, historyOf, namesOf, withTools} from '../results/years/arms.js';
import {TargetFile} from '../store/target-file.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {armNamed} from './arm-named.js';
import {jsonText} from './json-text.js';
import {withPastRows} from './past-rows.js';
import {isBlocked, orRefuse, printLines, printOut, refuseWith, sayFault} from './print.js';

const say = words.commands.report;

export type ReportForm = 'html' | 'markdown' | 'maker' | 'json';

export type ReportOptions = {
	readonly id?: string | undefined;
	readonly arm?: string | undefined;
	readonly as: ReportForm;
	/** File to write; `-` or nothing for standard output. */
	readonly out?: string | undefined;
	/** Replaces a file that is there already. */
	readonly force?: boolean | undefined;
	/** It is about a practice check. */
	readonly practice?: boolean | undefined;
	readonly data?: string | undefined;
	readonly version: string;
};

/**
 * `armdrift report`: a check, or the history of an arm, as a page, as Markdown, as a page for the maker, or as data.
 * @returns exit status
 */
export function runReport(options: ReportOptions): Promise<number> {
	const {id, arm, as, out = '-', force = false, practice, data, version} = options;
	return withPastRows({data, practice}, async (all, shelf) => {
		const named = arm === undefined ? undefined : armNamed(arm, all, shelf);
		if (named && !named.ok) return named.status;
		const subject = subjectOf({id, arm: named?.arm}, all, shelf);
		if (subject.of === 'nothing') return refuseWith(subject.sentence, subject.status);
		const text = await reportText(subject, as, {all, shelf, version});
		return out === '-' ? printOut(text) : intoFile(text, out, force);
	});
}

type Beside = {readonly all: readonly PastCheck[]; readonly shelf: Shelf; readonly version: string};

/** A report in one of its forms. */
export async function reportText(subject: ReportSubject, as: ReportForm, beside: Beside): Promise<string> {
	if (as === 'json') {
		const {reportAsData} = await import('./check-data.js');
		return `${jsonText(reportAsData(subject, beside))}\n`;
	}
	const report = reportOn(subject, as, {version: beside.version, writtenOn: today()});
	return as === 'markdown' ? markdownOf(report) : htmlOf(report);
}

/** The page on a filed check by its id. @throws Hindrance where it cannot be had */
export function pageOnCheck(id: string, shelf: Shelf, version: string): string {
	const subject = checkOf(id, shelf.all(), shelf);
	if (subject.of === 'nothing') throw new Hindrance('missing', shelf.dataDir, subject.sentence);
	return htmlOf(reportOn(subject, 'html', {version, writtenOn: today()}));
}

/** The page on an arm with all its checks, and the id of the newest that counts. @throws Hindrance where it cannot be had */
export function pageOnArm(arm: string, shelf: Shelf, version: string) {
	const subject = subjectOf({id: undefined, arm}, shelf.all(), shelf);
	if (subject.of !== 'arm') {
		throw new Hindrance('missing', shelf.dataDir, subject.of === 'nothing' ? subject.sentence : words.beside.arms.none);
	}
	const page = htmlOf(reportOn(subject, 'html', {version, writtenOn: today()}));
	return {page, newestId: subject.source.newest.record.check.id};
}

const today = (): string => formatISO(new Date(), {representation: 'date'});

export type ReportSubject = Exclude<Subject, {of: 'nothing'}>;

function reportOn(subject: ReportSubject, as: Exclude<ReportForm, 'json'>, imprint: Imprint): Report {
	// A maker gets one check: of an arm, the newest that counts, with those before it as its history.
	if (as === 'maker') return makerReport(subject.of === 'arm' ? subject.source.newest : subject.source, imprint);
	return subject.of === 'arm' ? armReport(subject.source, imprint) : checkReport(subject.source, imprint);
}

/** Writes the file, and says where it lies: a name alone may be meant from another folder. */
export function intoFile(text: string, out: string, force: boolean): Promise<number> {
	return orRefuse(() => {
		const file = new TargetFile(out, {thing: {id: 'report', values: {}}, force});
		file.write(text);
		file.finish();
		return printLines([say.written({file: path.resolve(out)})]);
	}, isBlocked);
}

/** One check, or an arm with all its checks; else why there is none, and the exit status for it. */
type Subject =
	| {readonly of: 'check'; readonly source: CheckSource}
	| {readonly of: 'arm'; readonly source: ArmSource}
	| {readonly of: 'nothing'; readonly sentence: string; readonly status: number};

const nothing = (sentence: string, status: number = EXIT.usage): Subject => ({of: 'nothing', sentence, status});

/** The check named by its id; else the history of the arm named; else the newest check that is not void. */
function subjectOf({id, arm}: Pick<ReportOptions, 'id' | 'arm'>, all: readonly PastCheck[], shelf: Shelf): Subject {
	if (id !== undefined) return checkNamed(id, arm, all, shelf);
	if (arm !== undefined) return historyNamed(arm, all, shelf);
	const newest = all.find(isCounted);
	if (newest) return checkOf(newest.id, all, shelf);
	return nothing(say.none(shelf));
}

function checkNamed(id: string, arm: string | undefined, all: readonly PastCheck[], shelf: Shelf): Subject {
	if (shelf.store.draft().check?.id === id) return nothing(say.open({id}));
	const row = all.find((one) => one.id === id);
	if (row && arm !== undefined && !namesOf(arm, shelf.profiles()).includes(row.arm))
		return nothing(say.ofOtherArm({id, of: row.arm, arm}));
	return checkOf(id, all, shelf);
}

export function checkOf(id: string, all: readonly PastCheck[], shelf: Shelf): Subject {
	const found = shelf.record(id);
	if (!found.ok) {
		// One that is listed and not there any more is no fault of the command line.
		const isMistyped = found.isUnknown && all.every((one) => one.id !== id);
		return nothing(found.sentence, isMistyped ? EXIT.usage : EXIT.cannotReadOrWrite);
	}
	const {record, putBackAt, voided, formerVoids, unknownBecause} = found;
	const history = historyOf(record.check, all, shelf.profiles());
	return {of: 'check', source: {record, putBackAt, voids: {voided, formerVoids, unknownBecause}, history}};
}

function historyNamed(arm: string, all: readonly PastCheck[], shelf: Shelf): Subject {
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
	if (ofArm.length > 0) return say.noneCounts({arm});
	return say.noneOfArm({arm, meant: didYouMean(arm, [...new Set(all.map((one) => one.arm))])});
}

/** What was overridden in an earlier check; one that cannot be read is said, and left out. */
function overriddenAt({id, date}: PastCheck, shelf: Shelf): ArmSource['overridden'] {
	const found = shelf.record(id);
	if (found.ok) return [{date, overridden: overriddenIn(found.record.check)}];
	sayFault(found.sentence);
	return [];
}
