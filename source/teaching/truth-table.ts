import {isAbove} from '../measures/compare.js';
import {line, type Shown} from '../pages/shown-lines.js';
import type {Truth} from '../practice/truth.js';
import {isMeasured, type RadiusFigures} from '../results/figures-types.js';
import {fixed} from '../units.js';
import {placeLabel} from '../words/step-text.js';
import {forceWithWay, sideForce, span} from '../words/wording.js';

/** What was found at a radius, and what was hidden there while it was probed. */
export type FoundAndHidden = {readonly figures: RadiusFigures; readonly truth: Truth};

/** A figure beside its hidden value, in words. */
export type Line = {
	readonly name: string;
	readonly found: string;
	readonly hidden: string;
	readonly isWithin: boolean | undefined;
};

/** One figure at one radius; off scale there is nothing to be within. */
function lineOf(name: string, hidden: string, hiddenPct: number, measured: Measured | undefined): Line {
	if (!measured) return {name, found: 'off scale', hidden, isWithin: undefined};
	const {found, foundPct, statedPct} = measured;
	return {name, found, hidden, isWithin: !isAbove(Math.abs(foundPct - hiddenPct), statedPct)};
}

type Measured = {readonly found: string; readonly foundPct: number; readonly statedPct: number};

function linesOf({figures, truth}: FoundAndHidden): readonly Line[] {
	const where = `${placeLabel(figures.place)} ${figures.radiusMm} mm`;
	const pull = isMeasured(figures)
		? {
				found: sideForce(figures.pullPct, figures.pullUncertaintyPct),
				foundPct: figures.pullPct,
				statedPct: figures.pullUncertaintyPct,
			}
		: undefined;
	const band = isMeasured(figures)
		? {
				found: span(figures.bandPct, figures.bandUncertaintyPct),
				foundPct: figures.bandPct,
				statedPct: figures.bandUncertaintyPct,
			}
		: undefined;
	return [
		lineOf(`${where}, side pull`, forceWithWay(truth.pullPct, '%', 1), truth.pullPct, pull),
		lineOf(`${where}, hold band`, `${fixed(truth.bandPct, 1)} %`, truth.bandPct, band),
	];
}

const answerOf = (isWithin: boolean | undefined): string => (isWithin === undefined ? '' : isWithin ? 'yes' : 'no');

/** What the bias alone was found to do at a radius; it is stated without ±. */
export const biasLine = (radiusMm: number, foundPct: number, hiddenPct: number): Line => ({
	name: `bias alone at ${Number(radiusMm.toFixed(1))} mm`,
	found: forceWithWay(foundPct, '%', 1),
	hidden: forceWithWay(hiddenPct, '%', 1),
	isWithin: undefined,
});

/** Found beside hidden, radius by radius, and whether the hidden value lies within the stated ±. */
export function truthTable(places: readonly FoundAndHidden[], bias: readonly Line[]): readonly Shown[] {
	const lines = [...places.flatMap(linesOf), ...bias];
	const caption = lines.map(
		({name, found, hidden, isWithin}) =>
			`${name}: found ${found}, hidden ${hidden}${isWithin === undefined ? '' : isWithin ? ', within the ±' : ', outside the ±'}.`,
	);
	return [
		{
			kind: 'table',
			head: ['', 'found', 'hidden', 'within ±'],
			rows: lines.map(({name, found, hidden, isWithin}) => [name, found, hidden, answerOf(isWithin)]),
			caption: caption.join(' '),
		},
		...(lines.some(({isWithin}) => isWithin === false)
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
