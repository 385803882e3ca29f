import type {Check, Series} from '../check/check.js';
import {remedyAfter} from '../check/series.js';
import {seriesThatCounts} from '../results/document-of-check.js';
import {type Figures, isMeasured} from '../results/figures.js';
import type {NextAction} from '../results/next-action.js';
import {figuresOfSeries, figuresToCompare, outcomeAfter} from '../results/tried.js';
import {words} from '../words/index.js';
import {becauseText} from '../words/says.js';
import {bandRow, bandsShown} from './band-rows.js';
import {doNowLines} from './next-action.js';
import {type BandRow, heardOf, line, type Shown, table, unheard} from './shown-lines.js';

const {bands, radii, series: said} = words.pages.verdict;

const closedSeries = (check: Check): readonly Series[] => check.series.filter((one) => one.closed);

/** The hold bands of the latest earlier series with figures, for the picture. */
export function earlierRows(check: Check): BandRow[] {
	const last = closedSeries(check)
		.map((one) => ({figures: figuresOfSeries(check, one), date: one.closed?.at.slice(0, 10)}))
		.findLast(({figures}) => figures !== undefined);
	return (last?.figures?.probe ?? [])
		.filter(isMeasured)
		.map((one) => ({...bandRow(one), earlier: true, date: last?.date, label: bands.before(one)}));
}

/** What a remedy did, foretold and seen in one line; nothing where no remedy was tried after the series. */
export function outcomeLines(check: Check, series: Series | undefined): Shown[] {
	const outcome = series && outcomeAfter(check, series);
	if (!outcome) return [];
	return [line(words.actions.outcome(outcome), outcome.kind === 'something-else' ? 'bad' : 'strong')];
}

/** What the remedy did that was tried last, and what it left on the deck. */
export function lastOutcome(check: Check, series: Series = seriesThatCounts(check)): Shown[] {
	const before = check.series[check.series.indexOf(series) - 1];
	const remedy = before && remedyAfter(before);
	const left = remedy && words.remedies[remedy].left;
	return [...outcomeLines(check, before), ...(left ? [line(left, 'bad')] : [])];
}

/**
 * What a remedy did, as far as a few rounds show it, and what is to be done now: the arm is not judged by them.
 *
 * @param action of the check
 */
export function remedyLines(check: Check, series: Series, action: NextAction): Shown[] {
	const now = figuresToCompare(check, series);
	const before = check.series[check.series.indexOf(series) - 1];
	const then = before && figuresToCompare(check, before);
	const bands = now ? bandsShown(now.probe, check.limits, earlierRows(check)) : [];
	return [
		...lastOutcome(check, series),
		...(then ? bands.map(unheard) : bands),
		...doNowLines(action),
		// With a heading of its own: what is to be done is none of it.
		...(now && then ? [line(said.beforeAndNow, 'strong'), comparison(then, now)] : []),
	];
}

/** Before and after, side by side, for every earlier series. */
export const beforeAndAfter = (check: Check, now: Figures): Shown[] =>
	closedSeries(check).flatMap((series, index) => {
		// What the last remedy did was told first of all.
		const isLast = check.series.indexOf(series) === check.series.indexOf(seriesThatCounts(check)) - 1;
		const outcome = outcomeLines(check, series);
		const before = figuresOfSeries(check, series);
		const because = series.closed ? becauseText(series.closed.because) : '';
		return [
			line(said.closed({number: index + 1, because, hasFigures: before !== undefined}), 'strong'),
			...(isLast ? outcome.map(unheard) : outcome),
			...(before ? [besideFigures(before, now)] : []),
		];
	});

/** Beside the figures of now: a voice has told those. */
function besideFigures(before: Figures, now: Figures): Shown {
	const rows = compared(before, now).map((cells) => cells.slice(0, 2));
	return {...comparison(before, now), heard: heardOf(table(['', said.columns.before], rows))};
}

const comparison = (before: Figures, now: Figures): Shown =>
	table(['', said.columns.before, said.columns.now], compared(before, now));

const compared = (before: Figures, now: Figures): string[][] =>
	before.probe.filter(isMeasured).flatMap((one) => {
		const after = now.probe.find((other) => other.place === one.place);
		if (!after || !isMeasured(after)) return [];
		return [
			[said.pull(one), radii.pull(one), radii.pull(after)],
			[said.band(one), radii.band(one), radii.band(after)],
		];
	});
