import limits from '../../../shared/limits.json' with {type: 'json'};
import type {PastCheck} from '../../check/past-check.js';
import {isAbove} from '../../measures/compare.js';
import type {ArmEvent} from '../../procedure/arm-event.js';
import {type Comparison, comparisonOf, comparisonsOf, gravestOf} from '../../results/years/comparison.js';
import {doneSinceLast} from '../../results/years/events.js';
import {words} from '../../words/index.js';
import {noteText, obstacleText} from '../../words/results-text.js';
import {eventText} from '../../words/step-text.js';
import {line, type Shown, type Tone} from '../shown-lines.js';
import {movedOf, slopesOf} from './trend-lines.js';

const tones = {changed: 'warn', perhaps: 'warn', unchanged: 'plain'} as const satisfies Record<string, Tone>;

/** One comparison in sentences: first what changed, then what did not, all in one line. */
function linesOfComparison({then: {date}, figures, notes, obstacles}: Comparison): Shown[] {
	const changed = figures.filter(({change}) => change.verdict !== 'unchanged');
	const same = figures.filter(({change}) => change.verdict === 'unchanged').map(movedOf);
	return [
		...changed.map((one) => {
			const {verdict} = one.change;
			return line(words.years.comparison.moved({date, verdict, ...movedOf(one)}), tones[verdict]);
		}),
		...(same.length === 0 ? [] : [line(words.years.comparison.unchanged({date, figures: same}))]),
		...obstacles.map((one) => line(obstacleText(one), 'warn')),
		...notes.map((one) => line(noteText(one), 'aside')),
	];
}

/** What was done between a check and the last one, where something was. */
function doneLine(now: PastCheck, earlier: readonly PastCheck[]): Shown[] {
	const what = doneSinceLast(now, earlier).map(eventText);
	return what.length === 0 ? [] : [line(words.years.comparison.done({what}))];
}

/**
 * How much of a change the warmer or colder room would make, where the arm is known to go with the temperature and the rooms
 * differ enough.
 */
function temperatureLines(now: PastCheck, then: PastCheck, earlier: readonly PastCheck[]): Shown[] {
	const [warm, before] = [now.measuredWith?.temperatureC ?? null, then.measuredWith?.temperatureC ?? null];
	if (warm === null || before === null || !isAbove(Math.abs(warm - before), limits.otherRoomC.value)) return [];
	const byC = warm - before;
	return slopesOf(earlier).map(({place, radiusMm, pctPerC}) =>
		line(words.years.comparison.room({byC, place, radiusMm, pullPct: pctPerC * byC}), 'aside'),
	);
}

/** Two checks of an arm that somebody chose: the word first, then the sizes. */
export function twoCompared(now: PastCheck, then: PastCheck, done: readonly ArmEvent[]): Shown[] {
	const comparison = comparisonOf(now, then);
	const verdict = gravestOf(comparison);
	return [
		...(verdict ? [line(words.years.comparison.between[verdict], tones[verdict])] : []),
		...(done.length === 0 ? [] : [line(words.years.comparison.doneBetween({what: done.map(eventText)}))]),
		...linesOfComparison(comparison),
	];
}

/** A check against the last one and the first of its stretch: the word first, then the sizes. */
export function comparisonLines(
	now: PastCheck,
	earlier: readonly PastCheck[],
	{wireMoves = false}: {readonly wireMoves?: boolean} = {},
): Shown[] {
	const [last, first] = comparisonsOf(now, earlier);
	if (!last) return [];
	const verdict = gravestOf(last);
	const {summary, notWithLast, wireFirst, againstFirst} = words.years.comparison;
	return [
		verdict ? line(summary[verdict], tones[verdict]) : line(notWithLast(last.then), 'warn'),
		...doneLine(now, earlier),
		...linesOfComparison(last),
		...(wireMoves && verdict && verdict !== 'unchanged' ? [line(wireFirst)] : []),
		...temperatureLines(now, last.then, earlier),
		...(first ? [line(againstFirst, 'strong'), ...linesOfComparison(first)] : []),
	];
}
