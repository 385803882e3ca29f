import {differenceInMinutes} from 'date-fns/differenceInMinutes';
import {halfADay} from '../procedure/step-groups.js';
import {closeSeries} from './ask-anew.js';
import type {Check} from './check.js';
import {doubtedAfter} from './doubts.js';
import {plainly} from './says.js';
import {hasReadings, openSeries} from './series.js';

/**
 * A check that is taken up again: what may have changed meanwhile is asked, and a probe that was left half done overnight
 * begins a new series, for rounds of yesterday are not mixed with those of today.
 */
export function resumed(check: Check, at: string): Check {
	const today = isProbedOvernight(check, at) ? closeSeries(check, plainly('left-overnight'), at) : check;
	return {...doubtedAfter(today, at), resumedAt: [...check.resumedAt, at]};
}

function isProbedOvernight(check: Check, at: string): boolean {
	const isHalfDone = hasReadings(openSeries(check)) && !check.answers.verdict && !check.stopped;
	return isHalfDone && check.touchedAt !== undefined && differenceInMinutes(at, check.touchedAt) >= halfADay;
}
