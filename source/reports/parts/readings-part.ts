import type {Check, Round, Series} from '../../check/check.js';
import {nameOfTrial, trialsOf} from '../../check/trials.js';
import {offPlaces, onPlaces, placeLabel} from '../../procedure/places.js';
import {becauseText, reasonText} from '../../words/says.js';
import {type Block, type Cell, type Section, typed, type Words} from '../report.js';

/** Every reading just as it was typed, struck and withdrawn ones too, series by series. */
export function readingsPart(check: Check): Section[] {
	const blocks = check.series.flatMap((series, index) => seriesBlocks(check, series, index + 1));
	return blocks.length === 0 ? [] : [{title: 'Readings as taken', blocks}];
}

function seriesBlocks(check: Check, series: Series, number: number): Block[] {
	const off = offPlaces.flatMap((place) => roundRows(placeLabel(place), series[place]));
	const on = trialsOf(check, series).flatMap((trial, index) =>
		onPlaces.flatMap((place) =>
			roundRows([`${placeLabel(place)}, setting `, typed(nameOfTrial(index + 1, trial))], trial[place]),
		),
	);
	const withdrawn = series.withdrawn.map(({place, limit, reading}) => [
		placeLabel(place),
		`${limit === 'innerLimit' ? 'inner' : 'outer'} limit`,
		typed(reading.typed),
	]);
	return [
		...(off.length + on.length > 0
			? [table(captionOf(series, number), ['place', 'round', 'inner limit', 'outer limit', 'note'], [...off, ...on])]
			: []),
		...(withdrawn.length > 0
			? [table(`Series ${number}: taken back, in no figure`, ['place', 'limit', 'reading'], withdrawn)]
			: []),
	];
}

/** A table; its last column is left out where nothing stands in it. */
function table(caption: Words, head: readonly string[], rows: readonly (readonly Cell[])[]): Block {
	const isBare = rows.every((cells) => cells.at(-1) === '');
	const kept = <T>(cells: readonly T[]): readonly T[] => (isBare ? cells.slice(0, -1) : cells);
	return {kind: 'table', caption, head: kept(head), rows: rows.map(kept)};
}

const captionOf = ({closed}: Series, number: number): Words =>
	closed ? [`Series ${number}, closed: `, typed(becauseText(closed.because))] : `Series ${number}`;

const roundRows = (place: Words, rounds: readonly Round[]): (readonly Cell[])[] =>
	rounds.map(({innerLimit, outerLimit, struck}, index) => [
		place,
		String(index + 1),
		typed(innerLimit.typed),
		outerLimit ? typed(outerLimit.typed) : 'not read',
		struck ? ['struck out: ', typed(reasonText(struck.reason))] : '',
	]);
