import {dayText} from '../../dates.js';

type CalendarText = {
	/** Why it is due then, as it was said at the check. */
	readonly because: string;
	readonly last: {readonly date: string; readonly id: string};
	/** The day on which it was due, where that is over. */
	readonly dueSince?: string;
};

/** What a calendar shows of the next check of an arm. */
export const calendar = {
	summary: ({arm}: {arm: string}) => `Tonarm prüfen: ${arm}`,
	description: ({because, last, dueSince}: CalendarText) =>
		`${dueSince === undefined ? '' : `Fällig seit ${dayText(dueSince)}. `}${because} Zuletzt geprüft am ${dayText(last.date)} (${last.id}).`,
};
