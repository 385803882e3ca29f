import {closeSync, lstatSync, openSync, readSync} from 'node:fs';
import type {DueArm} from '../results/years/due.js';
import {StoreError} from '../store/store-error.js';
import {TargetFile} from '../store/target-file.js';
import {EXIT} from '../terminal/exit-paths.js';
import {printOut, sayFault} from './print-out.js';

type Dates = {
	readonly arms: readonly DueArm[];
	readonly reasonOf: (due: DueArm) => string;
	/** The name under which an arm was first checked, by its name of today. */
	readonly firstNames: ReadonlyMap<string, string>;
	readonly now: string;
};
/** More than its first lines need. */
const HEAD_BYTES = 512;

type Wanted = {readonly calendar: string; readonly force: boolean; readonly quiet: boolean};

/** Writes all dates as a calendar, to a file or to standard output. @returns exit status */
export async function giveCalendar({arms, reasonOf, firstNames, now}: Dates, wanted: Wanted): Promise<number> {
	// RFC 5545 3.6: a calendar has at least one component.
	if (arms.length === 0) {
		sayFault('No arm has a date for its next check, so there is no calendar to write.');
		return EXIT.done;
	}
	const {calendarOf, isOwnCalendar} = await import('../reports/calendar.js');
	const events = arms.map((due) => ({due, because: reasonOf(due), identity: firstNames.get(due.arm) ?? due.arm}));
	const text = calendarOf(events, now);
	const {calendar: file, force, quiet} = wanted;
	if (file === '-') return printOut(text);
	const refused = write(file, text, force || isOwnCalendar(headOf(file)));
	if (refused) {
		sayFault(refused.sentence.replaceAll('--out', '--calendar'));
		return refused.code === 'blocked' ? EXIT.usage : EXIT.cannotReadOrWrite;
	}
	const count = arms.length === 1 ? 'the date of one arm' : `the dates of ${arms.length} arms`;
	return quiet ? EXIT.done : printOut(`Wrote ${count} to "${file}".\n`);
}

/** What stands at the beginning of a plain file; nothing where there is none, or none that can be read. */
function headOf(file: string): string {
	if (!lstatSync(file, {throwIfNoEntry: false})?.isFile()) return '';
	let descriptor: number | undefined;
	try {
		descriptor = openSync(file, 'r');
		const bytes = Buffer.alloc(HEAD_BYTES);
		return bytes.toString('utf8', 0, readSync(descriptor, bytes));
	} catch {
		return '';
	} finally {
		if (descriptor !== undefined) closeSync(descriptor);
	}
}

function write(file: string, text: string, mayReplace: boolean): StoreError | undefined {
	try {
		const target = new TargetFile(file, {what: 'The calendar', force: mayReplace});
		target.write(text);
		target.finish();
		return undefined;
	} catch (error) {
		if (error instanceof StoreError) return error;
		throw error;
	}
}
