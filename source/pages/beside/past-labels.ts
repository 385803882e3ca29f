import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {words} from '../../words/index.js';
import type {FaceRoom} from './page.js';

const say = words.beside.past;

/** Whether a list has room for figures beside day, arm and verdict. */
export const hasFigures = ({columns}: FaceRoom): boolean => columns >= 60;

/** The mark and number before an option, and an ellipsis that is spelled with three points. */
const beforeOption = 6;
/** Less tells nothing of a name. */
const leastName = 8;

/** Past checks, each in a line: where keys turn the list, a long name is cut so that it stays one. */
export function pastLabels(rows: readonly PastCheck[], room: FaceRoom): readonly string[] {
	const whenOf = whenIn(rows);
	const gap = hasFigures(room) ? '  ' : ' ';
	const widest = (texts: readonly string[]) => Math.max(0, ...texts.map(({length}) => length));
	const states = rows.map(say.state);
	const others = rows.map(({probe}, index) => {
		const state = states[index] ?? '';
		return hasFigures(room) ? [state.padEnd(widest(states)), ...probe.map(figuresOf)].join(gap).trimEnd() : state;
	});
	const days = rows.map(whenOf);
	const left = room.columns - beforeOption - widest(days) - widest(others) - 2 * gap.length;
	const names = rows.map(({arm}) => (room.hasKeys ? cutName(arm, Math.max(leastName, left)) : arm));
	return names.map((name, index) => {
		const [when = '', other = ''] = [days[index], others[index]];
		return hasFigures(room)
			? [when.padEnd(widest(days)), name.padEnd(widest(names)), other].join(gap)
			: [when, name, other].join(gap);
	});
}

/** A name with an ellipsis where it is too long; its end stays, since two arms may differ there. */
function cutName(name: string, most: number): string {
	const letters = [...name];
	if (letters.length <= most) return name;
	const tail = Math.floor((most - 1) / 3);
	return [...letters.slice(0, most - 1 - tail), '…', ...letters.slice(letters.length - tail)].join('');
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
