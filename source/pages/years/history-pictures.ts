import type {PastCheck} from '../../check/past-check.js';
import type {ArmEvent} from '../../procedure/arm-event.js';
import type {VerdictLimits} from '../../procedure/facts.js';
import {doneOver} from '../../results/years/events.js';
import {words} from '../../words/index.js';
import {eventText} from '../../words/step-text.js';
import type {HistoryEvent} from '../instruments/history.js';
import {inWords, type Shown} from '../shown-lines.js';
import {historiesOf, type RadiusHistory} from './trend-lines.js';

/** One check has no history. */
const leastPoints = 2;

/** What was done, each with its day and a letter. */
const marked = (events: readonly ArmEvent[]): readonly HistoryEvent[] =>
	events.map((event, index) => ({
		date: event.on,
		mark: letters[index % letters.length] ?? '',
		label: eventText(event),
	}));

const letters = 'abcdefghijklmnopqrstuvwxyz';

function picture(
	figure: 'pull' | 'band',
	history: RadiusHistory,
	limits: VerdictLimits,
	done: readonly ArmEvent[],
): Shown {
	const {place, radiusMm} = history;
	const points = history.points.map((point) => ({
		date: point.date,
		pct: point[`${figure}Pct`],
		uncertaintyPct: point[`${figure}UncertaintyPct`],
	}));
	const [first = '', last = ''] = [points[0]?.date, points.at(-1)?.date];
	const events = marked(done.filter(({on}) => on >= first && on <= last));
	const told = {
		place,
		radiusMm,
		points,
		done: events.map(({date, label}) => ({date, what: label})),
	};
	const inward = figure === 'pull' ? [-limits.pullUsablePct, -limits.pullGoodPct] : [];
	return {
		kind: 'history',
		label: words.years.pictures[figure](told),
		points,
		limitsPct: [...inward, limits[`${figure}GoodPct`], limits[`${figure}UsablePct`]],
		events,
		caption: words.years.pictures[`${figure}InWords`](told),
		// A voice tells it once.
		heard: words.years.pictures[`${figure}InWords`]({...told, done: []}),
	};
}

/** Pull and hold band at every radius of the newest check, over all checks that can be compared with it. */
export function historyPictures(checks: readonly PastCheck[], limits: VerdictLimits): Shown[] {
	const done = doneOver(checks);
	return historiesOf(checks)
		.filter(({points}) => points.length >= leastPoints)
		.flatMap((history) => [picture('pull', history, limits, done), picture('band', history, limits, done)])
		.map((one, index) => (index === 0 ? {...one, heard: inWords(one)} : one));
}
