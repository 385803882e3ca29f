import type {Check} from './check.js';
import type {PastCheck} from './past-check.js';
import {hasReadings} from './series.js';

/**
 * A check of an arm that has earlier ones on file repeats the last of them in substance, however it was begun: what was
 * done since is asked. Once there are readings it stays as it is.
 */
export function following(check: Check, [last]: readonly PastCheck[]): Check {
	const {follows, ...rest} = check;
	if (check.recheckOf !== undefined || check.reopened || follows === last?.id) return check;
	if (check.series.some(hasReadings)) return check;
	return last ? {...rest, follows: last.id} : rest;
}
