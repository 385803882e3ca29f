import path from 'node:path';
import {formatISO} from 'date-fns/formatISO';
import {armReport} from '../reports/arm-report.js';
import {checkReport} from '../reports/check-report.js';
import type {CheckSource, Imprint} from '../reports/check-source.js';
import {htmlOf} from '../reports/html/html-of.js';
import {makerReport} from '../reports/maker-report.js';
import {markdownOf} from '../reports/markdown-of.js';
import type {Report} from '../reports/report.js';
import {StoreError} from '../store/store-error.js';
import {TargetFile} from '../store/target-file.js';
import {EXIT} from '../terminal/exit-paths.js';
import {printable} from '../terminal/printable.js';
import {withPastRows} from './past-rows.js';
import {printOut, sayFault} from './print-out.js';
import {type Subject, subjectOf} from './report-subject.js';

export type ReportForm = 'html' | 'markdown' | 'maker';

type Options = {
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
 * `armdrift report`: a check, or the history of an arm, as a page, as Markdown, or as a page for the maker.
 * @returns exit status
 */
export function runReportCommand(options: Options): Promise<number> {
	const {id, arm, as, out = '-', force = false, practice, data, version} = options;
	return withPastRows({data, practice}, async (all, shelf) => {
		const subject = subjectOf({id, arm: arm?.trim()}, all, shelf);
		if (subject.of === 'nothing') {
			sayFault(subject.sentence);
			return subject.status;
		}
		const report = reportOn(subject, as, {version, writtenOn: formatISO(new Date(), {representation: 'date'})});
		const text = as === 'markdown' ? markdownOf(report) : htmlOf(report);
		return out === '-' ? printOut(text) : intoFile(text, out, force);
	});
}

type Found = Exclude<Subject, {of: 'nothing'}>;

function reportOn(subject: Found, as: ReportForm, imprint: Imprint): Report {
	if (as === 'maker') return makerReport(checkIn(subject), imprint);
	return subject.of === 'arm' ? armReport(subject.source, imprint) : checkReport(subject.source, imprint);
}

/** A maker gets one check: of an arm, the newest that counts, with those before it as its history. */
const checkIn = (subject: Found): CheckSource => (subject.of === 'arm' ? subject.source.newest : subject.source);

/** Writes the file, and says where it lies: a name alone may be meant from another folder. */
function intoFile(text: string, out: string, force: boolean): number | Promise<number> {
	try {
		const file = new TargetFile(out, {what: 'The report', force});
		file.write(text);
		file.finish();
		return printOut(`Wrote the report to "${printable(path.resolve(out))}".\n`);
	} catch (error) {
		if (!(error instanceof StoreError)) throw error;
		sayFault(error.sentence);
		return error.code === 'blocked' ? EXIT.usage : EXIT.cannotReadOrWrite;
	}
}
