import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {words} from '../../words/index.js';

const say = words.beside.past;

/** Past checks, each in a line; a long name is broken, not cut, for two arms may differ at its end. */
export function pastLabels(rows: readonly PastCheck[], columns: number): readonly string[] {
	const whenOf = whenIn(rows);
	const widest = Math.max(0, ...rows.map((past) => whenOf(past).length));
	return rows.map((past) => {
		const {arm, probe} = past;
		const [when, state] = [whenOf(past), say.state(past)];
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
		say.state(past),
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

function figuresOf({radiusMm, pullPct, bandPct}: PastProbe): string {
	if (pullPct === null || bandPct === null) return say.offScale({radiusMm});
	return say.figures({radiusMm, pullPct, bandPct});
}

function wholeFiguresOf({radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct}: PastProbe): string {
	if (pullPct === null || pullUncertaintyPct === null || bandPct === null || bandUncertaintyPct === null)
		return say.wholeOffScale({radiusMm});
	return say.wholeFigures({radiusMm, pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct});
}
