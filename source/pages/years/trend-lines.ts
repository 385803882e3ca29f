import {differenceInCalendarDays} from 'date-fns/differenceInCalendarDays';
import {parseISO} from 'date-fns/parseISO';
import limits from '../../../shared/limits.json' with {type: 'json'};
import type {PastCheck, PastProbe} from '../../check/past-check.js';
import {isSeasonTold, isTrend, trendOf} from '../../measures/trend.js';
import {type ComparedFigure, comparisonOf, obstaclesOf, probeAt, stretchOf} from '../../results/years/comparison.js';
import {doneSinceLast} from '../../results/years/events.js';
import {words} from '../../words/index.js';
import {eventText} from '../../words/step-text.js';
import {line, type Shown} from '../shown-lines.js';

const daysInYear = 365.25;

/** One check of an arm at one radius, in percent of the newest playing force. */
type Point = {
	readonly date: string;
	readonly temperatureC: number | null;
	readonly pullPct: number;
	readonly pullUncertaintyPct: number;
	readonly bandPct: number;
	readonly bandUncertaintyPct: number;
};

export type RadiusHistory = {readonly place: string; readonly radiusMm: number; readonly points: readonly Point[]};

function pointOf(check: PastCheck, probe: PastProbe, newestMn: number): Point[] {
	const {pullPct, pullUncertaintyPct, bandPct, bandUncertaintyPct} = probe;
	const {measuredWith} = check;
	if (pullPct === null || pullUncertaintyPct === null || bandPct === null || bandUncertaintyPct === null) return [];
	if (!measuredWith) return [];
	// Compared as forces: percent of one and the same playing force.
	const scale = measuredWith.playingMn / newestMn;
	return [
		{
			date: check.date,
			temperatureC: measuredWith.temperatureC,
			pullPct: pullPct * scale,
			pullUncertaintyPct: pullUncertaintyPct * scale,
			bandPct: bandPct * scale,
			bandUncertaintyPct: bandUncertaintyPct * scale,
		},
	];
}

/** The checks of an arm by radius, oldest first, as far as they can be compared with the newest. */
export function historiesOf(checks: readonly PastCheck[]): readonly RadiusHistory[] {
	const [newest] = checks;
	const now = newest?.measuredWith;
	if (!newest || !now) return [];
	const comparable = checks.filter((then) => obstaclesOf(newest, then).length === 0);
	return newest.probe.map(({place, radiusMm}) => ({
		place,
		radiusMm,
		points: comparable
			.flatMap((check) => {
				const probe = probeAt(check, radiusMm);
				return probe ? pointOf(check, probe, now.playingMn) : [];
			})
			.toReversed(),
	}));
}

const yearsSince = (first: string, date: string): number =>
	differenceInCalendarDays(parseISO(date), parseISO(first)) / daysInYear;

const warmth = (points: readonly Point[]) =>
	points.flatMap(({temperatureC, pullPct}) => (temperatureC === null ? [] : [{x: temperatureC, y: pullPct}]));

/** The drift of the pull at one radius over the years, and with temperature where that is known. */
function trendOfRadius({place, radiusMm, points}: RadiusHistory): Shown[] {
	const [first] = points;
	if (!first) return [];
	const {drifts, noTrend, seasonOpen, withTemperature} = words.years.longRun;
	const trend = trendOf(points.map(({date, pullPct}) => ({x: yearsSince(first.date, date), y: pullPct})));
	if (!trend) return [];
	const radius = {place, radiusMm};
	const told = {...radius, checks: points.length, date: first.date};
	const isDrift = isTrend(trend);
	const isSeasonOpen = isDrift && !isSeasonTold(points.map(({date}) => date));
	const warm = warmth(points);
	const byWarmth = trendOf(warm);
	return [
		isDrift ? line(drifts({...told, trend}), 'warn') : line(noTrend(told)),
		...(isSeasonOpen ? [line(seasonOpen(radius), 'warn')] : []),
		...(byWarmth && isTrend(byWarmth)
			? [line(withTemperature({...radius, trend: byWarmth, checks: warm.length}), 'warn')]
			: []),
	];
}

/** How the pull at each radius goes with the temperature, in percent for each °C, where that is seen in the history. */
export const slopesOf = (
	checks: readonly PastCheck[],
): {readonly place: string; readonly radiusMm: number; readonly pctPerC: number}[] =>
	historiesOf(stretchOf(checks)).flatMap(({place, radiusMm, points}) => {
		const trend = trendOf(warmth(points));
		return trend && isTrend(trend) ? [{place, radiusMm, pctPerC: trend.slope}] : [];
	});

/** How a figure moved, in percent of the present playing force. */
export const movedOf = ({figure, place, radiusMm, playingMn, change}: ComparedFigure) => ({
	figure,
	place,
	radiusMm,
	movedPct: (100 * change.differenceMn) / playingMn,
	uncertaintyPct: (100 * change.uncertaintyMn) / playingMn,
});

/** How the pull stepped where the present stretch began with something that was done; the newest check tells its own. */
function stepLines(checks: readonly PastCheck[]): Shown[] {
	const stretch = stretchOf(checks);
	const [now, before] = [stretch.at(-1), checks.slice(stretch.length)];
	const [last] = before;
	if (!now || !last || stretch.length < 2) return [];
	const what = doneSinceLast(now, before).map(eventText);
	const figures = comparisonOf(now, last)
		.figures.filter(({figure}) => figure === 'pull')
		.map(movedOf);
	if (what.length === 0 || figures.length === 0) return [];
	return [line(words.years.longRun.step({what, date: now.date, figures}))];
}

/** The long run of an arm: drift with time and temperature; its newest check first. */
export function trendLines(checks: readonly PastCheck[]): Shown[] {
	const stretch = stretchOf(checks);
	const histories = historiesOf(stretch);
	const lines = histories.flatMap(trendOfRadius);
	const most = Math.max(0, ...histories.map(({points}) => points.length));
	const least = limits.trendChecks.value;
	const {date} = stretch.at(-1) ?? {};
	const few =
		date !== undefined && lines.length === 0 && most > 1
			? [line(words.years.longRun.tooFew({checks: most, date, least}), 'aside')]
			: [];
	return [...stepLines(checks), ...lines, ...few];
}
