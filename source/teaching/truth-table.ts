import {isAbove} from '../measures/compare.js';
import {line, type Shown} from '../pages/shown-lines.js';
import type {Truth} from '../practice/truth.js';
import {isMeasured, type RadiusFigures} from '../results/figures-types.js';
import {practiceWords} from '../words/practice.js';

const said = practiceWords.truth;

/** What was found at a radius, and what was hidden there while it was probed. */
export type FoundAndHidden = {readonly figures: RadiusFigures; readonly truth: Truth};

/** A figure beside its hidden value, in words. */
export type Compared = ReturnType<typeof compared> | ReturnType<typeof biasCompared>;

type Stated = {readonly pct: number; readonly uncertaintyPct: number};

/** One figure at one radius; off scale there is nothing to be within. */
function compared(
	of: 'pull' | 'band',
	{place, radiusMm}: RadiusFigures,
	hiddenPct: number,
	stated: Stated | undefined,
) {
	const {name, found, hidden} = said[of];
	return {
		name: name({place, radiusMm}),
		found: stated ? found(stated) : said.offScale,
		hidden: hidden({pct: hiddenPct}),
		isWithin: stated && !isAbove(Math.abs(stated.pct - hiddenPct), stated.uncertaintyPct),
	};
}

function comparedAt({figures, truth}: FoundAndHidden): readonly Compared[] {
	const isFound = isMeasured(figures);
	const pull = isFound ? {pct: figures.pullPct, uncertaintyPct: figures.pullUncertaintyPct} : undefined;
	const band = isFound ? {pct: figures.bandPct, uncertaintyPct: figures.bandUncertaintyPct} : undefined;
	return [compared('pull', figures, truth.pullPct, pull), compared('band', figures, truth.bandPct, band)];
}

/** How many of the stated ± hold the hidden truth, of how many. */
export function heldOf(places: readonly FoundAndHidden[]): {readonly held: number; readonly of: number} {
	const stated = places.flatMap(comparedAt).filter(({isWithin}) => isWithin !== undefined);
	return {held: stated.filter(({isWithin}) => isWithin).length, of: stated.length};
}

/** What the bias alone was found to do at a radius; it is stated without ±. */
export const biasCompared = (radiusMm: number, foundPct: number, hiddenPct: number) => ({
	name: said.bias.name({radiusMm}),
	found: said.bias.found({pct: foundPct}),
	hidden: said.bias.hidden({pct: hiddenPct}),
	isWithin: undefined,
});

/** Found beside hidden, radius by radius, and whether the hidden value lies within the stated ±. */
export function truthTable(places: readonly FoundAndHidden[], bias: readonly Compared[]): readonly Shown[] {
	const rows = [...places.flatMap(comparedAt), ...bias];
	return [
		{
			kind: 'table',
			head: said.head,
			rows: rows.map((row) => [row.name, row.found, row.hidden, said.isWithin(row)]),
			caption: rows.map(said.compared).join(' '),
		},
		...(rows.some(({isWithin}) => isWithin === false) ? [line(said.outside)] : []),
	];
}

/** What the hidden pull is made of. */
export const madeOf = ({figures: {place}, truth}: FoundAndHidden): Shown => line(said.madeOf({place, ...truth}));
