import {isMeasured, type RadiusFigures} from '../findings/figures-types.js';
import {line, type Shown} from '../findings/shown-lines.js';
import {forceWithWay, sideForce, span} from '../findings/wording.js';
import type {Truth} from '../practice/truth.js';
import {placeLabel} from '../procedure/places.js';
import {fixed} from '../units.js';

/** What was found at a radius, and what was hidden there while it was probed. */
export type FoundAndHidden = {readonly figures: RadiusFigures; readonly truth: Truth};

const isWithin = (found: number, statedPct: number, hidden: number): boolean => Math.abs(found - hidden) <= statedPct;
const stands = (within: boolean): string => (within ? 'within' : 'outside');

function pullCells({figures, truth}: FoundAndHidden): [found: string, hidden: string] {
	const hidden = forceWithWay(truth.pullPct, '%', 1);
	if (!isMeasured(figures)) return ['off scale', hidden];
	const {pullPct, pullUncertaintyPct} = figures;
	return [
		sideForce(pullPct, pullUncertaintyPct),
		`${hidden} (${stands(isWithin(pullPct, pullUncertaintyPct, truth.pullPct))})`,
	];
}

function bandCells({figures, truth}: FoundAndHidden): [found: string, hidden: string] {
	const hidden = `${fixed(truth.bandPct, 1)} %`;
	if (!isMeasured(figures)) return ['off scale', hidden];
	const {bandPct, bandUncertaintyPct} = figures;
	return [
		span(bandPct, bandUncertaintyPct),
		`${hidden} (${stands(isWithin(bandPct, bandUncertaintyPct, truth.bandPct))})`,
	];
}

/** Found beside hidden, radius by radius; whether the hidden value lies within the stated ± stands beside it. */
export function truthTable(places: readonly FoundAndHidden[]): readonly Shown[] {
	const rows = places.map((one) => [
		`${placeLabel(one.figures.place)} ${one.figures.radiusMm} mm`,
		...pullCells(one),
		...bandCells(one),
	]);
	const caption = rows.map(
		([where, pull, truePull, band, trueBand]) =>
			`${where}: side pull found ${pull}, hidden ${truePull}; hold band found ${band}, hidden ${trueBand}.`,
	);
	const isMissed = rows.some((cells) => cells.some((cell) => cell.endsWith('(outside)')));
	return [
		{
			kind: 'table',
			head: ['', 'side pull found', 'hidden', 'hold band found', 'hidden'],
			rows,
			caption: caption.join(' '),
		},
		...(isMissed
			? [
					line(
						'A hidden value lies outside its ± once in twenty times by chance; oftener where the advice below was not kept.',
					),
				]
			: []),
	];
}

/** What the hidden pull is made of. */
export function madeOf({figures, truth}: FoundAndHidden): Shown {
	const parts = [
		`wires ${forceWithWay(truth.wirePct, '%', 1)}`,
		`tilt ${forceWithWay(truth.tiltPct, '%', 1)}`,
		...(truth.biasPct === 0 ? [] : [`bias ${forceWithWay(truth.biasPct, '%', 1)}`]),
	];
	return line(`The hidden pull at the ${placeLabel(figures.place)} radius: ${parts.join(', ')}.`);
}
