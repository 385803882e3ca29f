import type {Check, Series} from '../check/check.js';
import {documentOfCheck} from '../results/document-of-check.js';
import {type Figures, figuresOf, isMeasured} from '../results/figures.js';
import {words} from '../words/index.js';
import {becauseText} from '../words/says.js';
import {bandRow} from './band-rows.js';
import {type BandRow, line, type Shown, table} from './shown-lines.js';

const {bands, radii, series: said} = words.pages.verdict;

/** Figures of an earlier series, where it has any. */
function figuresOfSeries(check: Check, series: Series): Figures | undefined {
	const found = documentOfCheck(check, series);
	return found.ok ? figuresOf(found.document) : undefined;
}

const closedSeries = (check: Check): readonly Series[] => check.series.filter((one) => one.closed);

/** The hold bands of the latest earlier series with figures, for the picture. */
export function earlierRows(check: Check): BandRow[] {
	const figures = closedSeries(check)
		.map((one) => figuresOfSeries(check, one))
		.findLast((one) => one !== undefined);
	return (figures?.probe ?? [])
		.filter(isMeasured)
		.map((one) => ({...bandRow(one), earlier: true, label: bands.before(one)}));
}

/** Before and after, side by side, for every earlier series. */
export const beforeAndAfter = (check: Check, now: Figures): Shown[] =>
	closedSeries(check).flatMap((series, index) => {
		const before = figuresOfSeries(check, series);
		const because = series.closed ? becauseText(series.closed.because) : '';
		return [
			line(said.closed({number: index + 1, because, hasFigures: before !== undefined}), 'strong'),
			...(before ? [comparison(before, now)] : []),
		];
	});

function comparison(before: Figures, now: Figures): Shown {
	const rows = before.probe.filter(isMeasured).flatMap((one) => {
		const after = now.probe.find((other) => other.place === one.place);
		if (!after || !isMeasured(after)) return [];
		return [
			[said.pull(one), radii.pull(one), radii.pull(after)],
			[said.band(one), radii.band(one), radii.band(after)],
		];
	});
	return table(['', said.columns.before, said.columns.now], rows);
}
