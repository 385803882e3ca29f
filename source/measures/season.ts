import {addMonths} from 'date-fns/addMonths';
import {formatISO} from 'date-fns/formatISO';
import {getQuarter} from 'date-fns/getQuarter';
import {parseISO} from 'date-fns/parseISO';
import limits from '../../shared/limits.json' with {type: 'json'};

/**
 * Whether a drift can be told from the season: the checks span at least 18 calendar months (clamped to the end of
 * the month) and fall in at least three of the four calendar quarters, of whatever years.
 *
 * @param dates days as yyyy-mm-dd, in any order
 * @throws RangeError for a day that is none
 */
export const isSeasonTold = (dates: readonly string[]): boolean => {
	const days = dates.map((date) => dayText(parseISO(date))).toSorted();
	const [first, last] = [days.at(0), days.at(-1)];
	if (first === undefined || last === undefined) return false;
	const longEnough = last >= dayText(addMonths(parseISO(first), limits.seasonMonths.value));
	const quarters = new Set(days.map((day) => getQuarter(parseISO(day))));
	return longEnough && quarters.size >= limits.seasonQuarters.value;
};

// Days are compared as text: an hour that a time zone leaves out cannot come between.
const dayText = (day: Date): string => formatISO(day, {representation: 'date'});
