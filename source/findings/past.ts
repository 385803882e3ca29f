import type {PastCheck, PastProbe} from '../check/past-check.js';
import {forceWithWay, plainNumber, sideForce, span} from './wording.js';

/** What the columns of the list are. */
export const pastHeading = 'Date, arm, verdict; then radius in mm: pull / hold band in %.';

/** A past check in a line; a long name is broken, not cut, for two arms may differ at its end. */
export function pastLabel(past: PastCheck, columns: number): string {
	const {date, arm, probe} = past;
	const state = stateOf(past);
	if (columns < 60) return `${date} ${arm} ${state}`;
	return [date, arm.padEnd(14), state.padEnd(11), ...probe.map(figuresOf)].join('  ').trimEnd();
}

/** A past check in columns, with every ±: day, arm, verdict or how it ended, figures at each radius, id. */
export const pastCells = (past: PastCheck): readonly string[] => [
	past.date,
	past.arm,
	stateOf(past),
	past.probe.map(wholeFiguresOf).join('; '),
	past.id,
];

/** A check that did not come to its end, or does not count, says so in place of its verdict. */
function stateOf({outcome, verdict, voidBecause}: PastCheck): string {
	if (voidBecause !== undefined) return 'void';
	return outcome === 'complete' ? (verdict ?? 'no verdict') : outcome;
}

function figuresOf({radiusMm, pullPct, bandPct}: PastProbe): string {
	if (pullPct === null || bandPct === null) return `${plainNumber(radiusMm)}: off scale`;
	return `${plainNumber(radiusMm)}: ${forceWithWay(pullPct, '', 1).replace('  ', ' ').trim()}/${bandPct.toFixed(1)}`;
}

function wholeFiguresOf({radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: PastProbe): string {
	const place = `${plainNumber(radiusMm)} mm`;
	if (pullPct === null || pullUncertaintyPct === null || bandPct === null || bandUncertaintyPct === null)
		return `${place} off scale`;
	return `${place} ${sideForce(pullPct, pullUncertaintyPct)}, band ${span(bandPct, bandUncertaintyPct)}`;
}
