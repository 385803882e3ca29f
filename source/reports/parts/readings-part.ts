import type {Check, Round, Series} from '../../check/check.js';
import {nameOfTrial, trialsOf} from '../../check/trials.js';
import {offPlaces, onPlaces} from '../../procedure/places.js';
import {reportWords} from '../../words/reports.js';
import {becauseText, reasonText} from '../../words/says.js';
import {placeLabel} from '../../words/step-text.js';
import {around, type Phrase, type ReportBlock, type Section, type TableCell, tableBlock, typed} from '../report.js';

const {captions, columns, readings, sections} = reportWords;

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
	const rounds = [...off, ...on];
	// A column without a note in it is left out.
	const columnsOf = rounds.every((cells) => cells.at(-1) === '') ? roundColumns : ([...roundColumns, 'note'] as const);
	return [
		...(rounds.length > 0
			? [
					tableBlock(
						captionOf(series, number),
						columnsOf,
						rounds.map((cells) => cells.slice(0, columnsOf.length)),
					),
				]
			: []),
		...(withdrawn.length > 0
			? [tableBlock(captions.seriesTakenBack({number}), ['place', 'limit', 'reading'], withdrawn)]
			: []),
	];
}

const roundColumns = ['place', 'round', 'innerLimit', 'outerLimit'] as const;

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
