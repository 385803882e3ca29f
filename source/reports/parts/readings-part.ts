import type {Check, Round, Series} from '../../check/check.js';
import {nameOfTrial, trialsOf} from '../../check/trials.js';
import {offPlaces, onPlaces, placeLabel} from '../../procedure/places.js';
import {words} from '../../words/index.js';
import {becauseText, reasonText} from '../../words/says.js';
import {around, type Phrase, type ReportBlock, type Section, type TableCell, typed} from '../report.js';

const {captions, columns, readings, sections} = words.reports;

/** Every reading just as it was typed, struck and withdrawn ones too, series by series. */
export function readingsPart(check: Check): Section[] {
	const blocks = check.series.flatMap((series, index) => seriesBlocks(check, series, index + 1));
	return blocks.length === 0 ? [] : [{title: sections.readings, blocks}];
}

function seriesBlocks(check: Check, series: Series, number: number): ReportBlock[] {
	const off = offPlaces.flatMap((place) => roundRows(placeLabel(place), series[place]));
	const on = trialsOf(check, series).flatMap((trial, index) =>
		onPlaces.flatMap((place) =>
			roundRows(
				around(nameOfTrial(index + 1, trial), (setting) =>
					readings.placeWithSetting({place: placeLabel(place), setting}),
				),
				trial[place],
			),
		),
	);
	const withdrawn = series.withdrawn.map(({place, limit, reading}) => [
		placeLabel(place),
		columns[limit === 'innerLimit' ? limit : 'outerLimit'],
		typed(reading.typed),
	]);
	return [
		...(off.length + on.length > 0
			? [
					table(
						captionOf(series, number),
						[columns.place, columns.round, columns.innerLimit, columns.outerLimit, columns.note],
						[...off, ...on],
					),
				]
			: []),
		...(withdrawn.length > 0
			? [table(captions.seriesTakenBack({number}), [columns.place, columns.limit, columns.reading], withdrawn)]
			: []),
	];
}

/** A table; its last column is left out where nothing stands in it. */
function table(caption: Phrase, head: readonly string[], rows: readonly (readonly TableCell[])[]): ReportBlock {
	const isBare = rows.every((cells) => cells.at(-1) === '');
	const kept = <T>(cells: readonly T[]): readonly T[] => (isBare ? cells.slice(0, -1) : cells);
	return {kind: 'table', caption, head: kept(head), rows: rows.map(kept)};
}

const captionOf = ({closed}: Series, number: number): Phrase =>
	closed
		? around(becauseText(closed.because), (because) => captions.seriesClosed({number, because}))
		: captions.series({number});

const roundRows = (place: Phrase, rounds: readonly Round[]): (readonly TableCell[])[] =>
	rounds.map(({innerLimit, outerLimit, struck}, index) => [
		place,
		String(index + 1),
		typed(innerLimit.typed),
		outerLimit ? typed(outerLimit.typed) : readings.notRead,
		struck ? around(reasonText(struck.reason), (reason) => readings.struck({reason})) : '',
	]);
