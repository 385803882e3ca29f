import type {Check, Series} from '../check/check.js';
import {placeLabel} from '../procedure/places.js';
import {documentOfCheck} from '../results/document-of-check.js';
import {type Figures, figuresOf, isMeasured} from '../results/figures.js';
import {becauseText} from '../words/says.js';
import {sideForce, span} from '../words/wording.js';
import {bandRow} from './band-rows.js';
import {type BandRow, line, type Shown} from './shown-lines.js';

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
		.map((one) => ({...bandRow(one, true), label: `before ${placeLabel(one.place)}`}));
}

/** Before and after, side by side, for every earlier series. */
export const beforeAndAfter = (check: Check, now: Figures): Shown[] =>
	closedSeries(check).flatMap((series, index) => {
		const before = figuresOfSeries(check, series);
		const title = `Series ${index + 1} closed: ${series.closed ? becauseText(series.closed.because) : ''}`;
		return before ? [line(title, 'strong'), comparison(before, now)] : [line(`${title} (no figures)`, 'strong')];
	});

function comparison(before: Figures, now: Figures): Shown {
	const rows = before.probe.filter(isMeasured).flatMap((one) => {
		const after = now.probe.find((other) => other.place === one.place);
		if (!after || !isMeasured(after)) return [];
		const name = placeLabel(one.place);
		return [
			[
				`${name} pull`,
				sideForce(one.pullPct, one.pullUncertaintyPct),
				sideForce(after.pullPct, after.pullUncertaintyPct),
			],
			[`${name} band`, span(one.bandPct, one.bandUncertaintyPct), span(after.bandPct, after.bandUncertaintyPct)],
		];
	});
	return {
		kind: 'table',
		head: ['', 'before', 'now'],
		rows,
		caption: rows.map(([name, was, is]) => `${name}: before ${was}, now ${is}.`).join(' '),
	};
}
