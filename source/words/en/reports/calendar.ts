import {dayText} from '../../dates.js';

/** What a calendar shows of the next check of an arm. */
export const calendar = {
	summary: ({arm}: {arm: string}) => `Check tonearm: ${arm}`,
	description: ({because, last}: {because: string; last: {readonly date: string; readonly id: string}}) =>
		`${because} Last checked on ${dayText(last.date)} (${last.id}).`,
};
