import {formatISO} from 'date-fns/formatISO';
import {firstNames} from '../results/years/arms.js';
import {type DueArm, dueArms} from '../results/years/due.js';
import {columns} from '../terminal/columns.js';
import {EXIT} from '../terminal/exit-paths.js';
import {words} from '../words/index.js';
import {giveCalendar} from './due-calendar.js';
import {withPastRows} from './past-rows.js';
import {printOut, sayFault} from './print-out.js';
import type {Shelf} from './shelf.js';

type Options = {
	readonly within?: number | undefined;
	readonly quiet?: boolean | undefined;
	readonly calendar?: string | undefined;
	readonly force?: boolean | undefined;
	readonly data?: string | undefined;
};

/** `armdrift due`: arms by the day of their next check, or as a calendar. @returns exit status: 10 when some are due */
export function runDueCommand({within, quiet = false, calendar, force = false, data}: Options): Promise<number> {
	return withPastRows({data}, async (all, shelf) => {
		const now = formatISO(new Date());
		const arms = dueArms(all, shelf.profiles(), now);
		const isDue = ({inDays}: DueArm): boolean => inDays <= (within ?? 0);
		const reasonOf = ({last}: DueArm): string => reasonAt(shelf, last.id);
		const dates = {arms, reasonOf, firstNames: firstNames(all, shelf.profiles()), now};
		const status =
			calendar === undefined
				? await printArms(within === undefined ? arms : arms.filter(isDue), reasonOf, quiet)
				: await giveCalendar(dates, {calendar, force, quiet});
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
		`last check ${due.last.date}. ${reasonOf(due)}`,
	]);
	if (rows.length > 0) return printOut(columns(rows));
	sayFault('No arm has a date for its next check, or none in that time.');
	return EXIT.done;
}
