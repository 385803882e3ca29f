import {formatISO} from 'date-fns/formatISO';
import {didYouMean} from '../desk/did-you-mean.js';
import type {Shelf} from '../desk/shelf.js';
import type {Profile} from '../procedure/facts.js';
import type {CalendarEvent} from '../reports/calendar.js';
import {firstNames} from '../results/years/arms.js';
import {type DueArm, dueArms} from '../results/years/due.js';
import {readPlainFile} from '../store/read-plain-file.js';
import type {Thing} from '../store/store-fault.js';
import {TargetFile} from '../store/target-file.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {armNamed} from './arm-named.js';
import {jsonList} from './json-text.js';
import {withPastRows} from './past-rows.js';
import {isBlocked, orRefuse, printOut, refuseWith, sayFault} from './print.js';

const say = words.commands.due;
const thing: Thing = {id: 'calendar', values: {}};

export type DueOptions = {
	/** Only this arm, by its name or a part of it. */
	readonly arm?: string | undefined;
	readonly as?: 'text' | 'json' | undefined;
	readonly within?: number | undefined;
	readonly quiet?: boolean | undefined;
	readonly calendar?: string | undefined;
	readonly force?: boolean | undefined;
	readonly data?: string | undefined;
};

/** `armdrift due`: arms by the day of their next check, or as a calendar. @returns exit status: 10 when some are due */
export function runDue(options: DueOptions): Promise<number> {
	const {arm, as, within, quiet = false, calendar, force = false, data} = options;
	return withPastRows({data}, async (all, shelf) => {
		const named = arm === undefined ? undefined : armNamed(arm, all, shelf);
		if (named && !named.ok) return named.status;
		// No date of an arm that nobody knows would pass for one that is not due.
		if (named && !named.isKnown)
			return refuseWith(
				say.noneOfArm({arm: named.arm, meant: didYouMean(named.arm, [...new Set(all.map((one) => one.arm))])}),
			);
		const isMeant = (one: DueArm): boolean => named === undefined || one.arm === named.arm;
		const now = formatISO(new Date());
		const profiles = shelf.profiles();
		const arms = dueArms(all, profiles, now).filter(isMeant);
		const isDue = ({inDays}: DueArm): boolean => inDays <= (within ?? 0);
		const reasonOf = ({last}: DueArm): string => reasonAt(shelf, last.id);
		if (calendar !== undefined) {
			const first = firstNames(all, profiles);
			const eventOf = (due: DueArm, isCancelled: boolean): CalendarEvent => {
				return {due, because: reasonOf(due), identity: first.get(due.arm) ?? due.arm, isCancelled};
			};
			const given = new Set(arms.map((one) => one.arm));
			const aside = dueArms(all, profiles.map(taken), now).filter((one) => isMeant(one) && !given.has(one.arm));
			const events = [...arms.map((one) => eventOf(one, false)), ...aside.map((one) => eventOf(one, true))];
			const status = await giveCalendar(events, {calendar, force, quiet, now});
			if (status !== EXIT.done) return status;
		} else if (!quiet) {
			const wanted = within === undefined ? arms : arms.filter(isDue);
			const status = await printArms(wanted, {reasonOf, as, within});
			if (status !== EXIT.done) return status;
		}
		return arms.some(isDue) ? EXIT.due : EXIT.done;
	});
}

/** A profile as if it were not set aside. */
const taken = ({setAside: _aside, ...profile}: Profile): Profile => profile;

/** Why the next check is due then, as it was said at this one; nothing where it can't be read. */
function reasonAt(shelf: Shelf, id: string): string {
	const found = shelf.record(id);
	return found.ok ? (found.record.nextCheck?.because ?? '') : '';
}

async function printArms(
	arms: readonly DueArm[],
	{reasonOf, as, within}: Pick<DueOptions, 'as' | 'within'> & {readonly reasonOf: (due: DueArm) => string},
): Promise<number> {
	if (as === 'json') {
		const dataOf = (due: DueArm) => {
			const {arm, date: nextDate, inDays, last} = due;
			return {arm, nextDate, inDays, because: reasonOf(due), lastId: last.id, lastDate: last.date};
		};
		return printOut(jsonList(arms.map(dataOf)));
	}
	const rows = arms.map((due) => [
		due.date,
		words.results.due(due),
		due.arm,
		say.lastCheck({date: due.last.date, because: reasonOf(due)}),
	]);
	if (rows.length > 0) return printOut(columns(rows));
	sayFault(within === undefined ? say.none : say.noneWithin({days: within}));
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
	const cancelled = events.filter(({isCancelled}) => isCancelled).length;
	return orRefuse(() => {
		const there = readPlainFile(thing, file);
		const isOwn = there.state === 'bytes' && isOwnCalendar(there.bytes.toString('utf8', 0, HEAD_BYTES));
		const target = new TargetFile(file, {thing, force: force || isOwn, option: '--calendar'});
		target.write(text);
		target.finish();
		return quiet ? EXIT.done : printOut(`${say.written({arms: events.length - cancelled, cancelled, file})}\n`);
	}, isBlocked);
}
