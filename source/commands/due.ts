import {formatISO} from 'date-fns/formatISO';
import type {Shelf} from '../desk/shelf.js';
import type {CalendarEvent} from '../reports/calendar.js';
import {firstNames} from '../results/years/arms.js';
import {type DueArm, dueArms} from '../results/years/due.js';
import {readPlainFile} from '../store/read-plain-file.js';
import type {Thing} from '../store/store-fault.js';
import {TargetFile} from '../store/target-file.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {withPastRows} from './past-rows.js';
import {isBlocked, orRefuse, printOut, sayFault} from './print.js';

const say = words.commands.due;
const thing: Thing = {id: 'calendar', values: {}};

type Options = {
	readonly within?: number | undefined;
	readonly quiet?: boolean | undefined;
	readonly calendar?: string | undefined;
	readonly force?: boolean | undefined;
	readonly data?: string | undefined;
};

/** `armdrift due`: arms by the day of their next check, or as a calendar. @returns exit status: 10 when some are due */
export function runDue({within, quiet = false, calendar, force = false, data}: Options): Promise<number> {
	return withPastRows({data}, async (all, shelf) => {
		const now = formatISO(new Date());
		const arms = dueArms(all, shelf.profiles(), now);
		const isDue = ({inDays}: DueArm): boolean => inDays <= (within ?? 0);
		const reasonOf = ({last}: DueArm): string => reasonAt(shelf, last.id);
		const first = firstNames(all, shelf.profiles());
		const eventOf = (due: DueArm): CalendarEvent => {
			return {due, because: reasonOf(due), identity: first.get(due.arm) ?? due.arm};
		};
		const status =
			calendar === undefined
				? await printArms(within === undefined ? arms : arms.filter(isDue), reasonOf, quiet)
				: await giveCalendar(arms.map(eventOf), {calendar, force, quiet, now});
		if (status !== EXIT.done) return status;
		return arms.some(isDue) ? EXIT.due : EXIT.done;
	});
}

/** Why the next check is due then, as it was said at this one; nothing where it can't be read. */
function reasonAt(shelf: Shelf, id: string): string {
	const found = shelf.record(id);
	return found.ok ? (found.record.nextCheck?.because ?? '') : '';
}

async function printArms(arms: readonly DueArm[], reasonOf: (due: DueArm) => string, quiet: boolean): Promise<number> {
	if (quiet) return EXIT.done;
	const rows = arms.map((due) => [
		due.date,
		words.results.due(due),
		due.arm,
		say.lastCheck({date: due.last.date, because: reasonOf(due)}),
	]);
	if (rows.length > 0) return printOut(columns(rows));
	sayFault(say.none);
	return EXIT.done;
}

/** More than the first lines of a calendar need. */
const HEAD_BYTES = 512;

type CalendarWanted = {
	readonly calendar: string;
	readonly force: boolean;
	readonly quiet: boolean;
	readonly now: string;
};

/** Writes all dates as a calendar, to a file or to standard output. @returns exit status */
async function giveCalendar(events: readonly CalendarEvent[], wanted: CalendarWanted): Promise<number> {
	const {calendar: file, force, quiet, now} = wanted;
	// RFC 5545 3.6: a calendar has at least one component.
	if (events.length === 0) {
		sayFault(say.noCalendar);
		return EXIT.done;
	}
	const {calendarOf, isOwnCalendar} = await import('../reports/calendar.js');
	const text = calendarOf(events, now);
	if (file === '-') return printOut(text);
	return orRefuse(() => {
		const there = readPlainFile(thing, file);
		const isOwn = there.state === 'bytes' && isOwnCalendar(there.bytes.toString('utf8', 0, HEAD_BYTES));
		const target = new TargetFile(file, {thing, force: force || isOwn, option: '--calendar'});
		target.write(text);
		target.finish();
		return quiet ? EXIT.done : printOut(`${say.written({arms: events.length, file})}\n`);
	}, isBlocked);
}
