import type {PastCheck, PastProbe} from '../check/past-check.js';
import {forceWithWay, plainNumber, sideForce, span} from '../words/wording.js';

/** What the columns of the list are. */
export const pastHeading = 'Date, arm, verdict; then radius in mm: pull / hold band in %.';

/** Past checks, each in a line; a long name is broken, not cut, for two arms may differ at its end. */
export function pastLabels(rows: readonly PastCheck[], columns: number): readonly string[] {
	const whenOf = whenIn(rows);
	const widest = Math.max(0, ...rows.map((past) => whenOf(past).length));
	return rows.map((past) => {
		const {arm, probe} = past;
		const [when, state] = [whenOf(past), stateOf(past)];
		if (columns < 60) return `${when} ${arm} ${state}`;
		return [when.padEnd(widest), arm.padEnd(14), state.padEnd(11), ...probe.map(figuresOf)].join('  ').trimEnd();
	});
}

/** Past checks in columns, with every ±: day, arm, verdict or how it ended, figures at each radius, id. */
export function pastCells(rows: readonly PastCheck[]): readonly (readonly string[])[] {
	const whenOf = whenIn(rows);
	return rows.map((past) => [
		whenOf(past),
		past.arm,
		stateOf(past),
		past.probe.map(wholeFiguresOf).join('; '),
		past.id,
	]);
}

/** The day of a check, with the time on the wall clock there where the list has another one of that day. */
function whenIn(rows: readonly PastCheck[]): (past: PastCheck) => string {
	const counts = new Map<string, number>();
	for (const {date} of rows) counts.set(date, (counts.get(date) ?? 0) + 1);
	return ({date, startedAt}) => ((counts.get(date) ?? 0) > 1 ? `${date} ${startedAt.slice(11, 16)}` : date);
}

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
