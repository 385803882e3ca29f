import {getQuarter} from 'date-fns/getQuarter';
import {parseISO} from 'date-fns/parseISO';
import limits from '../../shared/limits.json' with {type: 'json'};

/**
 * Whether a drift can be told from the season: the checks fall in at least three of the four calendar quarters, of
 * whatever years. Checks every six months meet the same two seasons for ever.
 *
 * @param dates days as yyyy-mm-dd, in any order
 */
export const isSeasonTold = (dates: readonly string[]): boolean =>
	new Set(dates.map((date) => getQuarter(parseISO(date)))).size >= limits.seasonQuarters.value;
