import type {HistoryPoint, ShownAs} from '../shown-lines.js';
import {dateTicks, dayNumber} from './date-ticks.js';
import {forceAxis, type LimitZone} from './scale.js';

/** A check with the ends of its uncertainty. */
export type HistoryMark = HistoryPoint & {readonly day: number; readonly lowPct: number; readonly highPct: number};

export type HistoryLayout = ReturnType<typeof historyLayout>;

/** Room before the first day and after the last, in parts of the time between. */
export const roomBeside = [0.04, 0.6] as const;

/** @param rows above the axis */
export function historyLayout({points, limitsPct}: ShownAs<'history'>, rows: number) {
	const marks = points.map(
		(point): HistoryMark => ({
			...point,
			day: dayNumber(point.date),
			lowPct: point.pct - point.uncertaintyPct,
			highPct: point.pct + point.uncertaintyPct,
		}),
	);
	const days = marks.map(({day}) => day);
	const [first, last] = [Math.min(...days), Math.max(...days)];
	const lowest = Math.min(...marks.map(({lowPct}) => lowPct));
	const highest = Math.max(...marks.map(({highPct}) => highPct));
	const inSight = limitsPct.filter((limit) => (limit > 0 ? highest > 0 : lowest < 0));
	const up = forceAxis([lowest, highest, ...inSight, 0], rows);
	const [good = 0, usable = good] = [...new Set(limitsPct.map(Math.abs))].sort((one, other) => one - other);
	const isTwoSided = limitsPct.some((one) => one < 0);
	const zone = (name: LimitZone, size: number) => ({
		zone: name,
		lowPct: Math.max(up.low, isTwoSided ? -size : 0),
		highPct: Math.min(up.high, size),
	});
	return {
		/** In days, from the first check to the last. */
		over: {low: first, high: Math.max(last, first + 1)},
		up,
		/** Oldest first. */
		points: marks,
		/** The limits that lie where the figure does: to both sides of zero only for one that lies about there. */
		limits: inSight.map((pct) => ({pct, zone: Math.abs(pct) === good ? ('good' as const) : ('usable' as const)})),
		/** What lies within the limits, as far as it is in sight; the outer one first. */
		zones: [zone('usable', usable), zone('good', good)],
		/** A drawing has a little room before the first day, so that a tick may stand there. */
		dayTicks: dateTicks(
			points.map(({date}) => date),
			first - roomBeside[0] * Math.max(1, last - first),
			last,
		),
	};
}
