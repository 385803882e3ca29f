import type {PastCheck} from '../check/past-check.js';
import {forceWithWay, plainNumber} from './wording.js';

type Probe = PastCheck['probe'][number];

/** What the columns of the list are. */
export const pastHeading = 'Date, arm, verdict; then radius in mm: pull / hold band in %.';

/** A past check in a line; a long name is broken, not cut, for two arms may differ at its end. A check that did not come to its end says so in place of its verdict. */
export function pastLabel({date, arm, outcome, verdict, probe}: PastCheck, columns: number): string {
	const state = outcome === 'complete' ? (verdict ?? 'no verdict') : outcome;
	if (columns < 60) return `${date} ${arm} ${state}`;
	return [date, arm.padEnd(14), state.padEnd(11), ...probe.map(figuresOf)].join('  ').trimEnd();
}

function figuresOf({radiusMm, pullPct, bandPct}: Probe): string {
	if (pullPct === null || bandPct === null) return `${plainNumber(radiusMm)}: off scale`;
	return `${plainNumber(radiusMm)}: ${forceWithWay(pullPct, '', 1).replace('  ', ' ').trim()}/${bandPct.toFixed(1)}`;
}
