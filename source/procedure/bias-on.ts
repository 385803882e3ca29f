import {isAbove, isBelow} from '../measures/compare.js';
import {leastSkatingRadiusMm} from '../measures/skating.js';
import type {Facts} from './facts.js';
import {armOf} from './geometry.js';
import {type OnPlace, onPlaces} from './places.js';
import {type Problem, problem, wayTo} from './problem.js';

const radiusSteps = {
	'bias-outer': 'radius-outer',
	'bias-middle': 'bias-radius-middle',
	'bias-inner': 'radius-inner',
} as const satisfies Record<OnPlace, string>;

export type OnRadius = {readonly place: OnPlace; readonly radiusMm: number};

/** Where the rounds with the bias on are taken, in the order in which they are taken. */
export const onRadii = (facts: Facts): readonly OnRadius[] =>
	onPlaces.flatMap((place) => {
		const radiusMm = onRadiusMm(facts, place);
		return radiusMm === undefined ? [] : [{place, radiusMm}];
	});

export const onRadiusMm = (facts: Facts, place: OnPlace): number | undefined => facts.number(radiusSteps[place]);

/** A middle radius worth probing: where skating is least, else halfway. */
export function middleSuggestion(facts: Facts): string | undefined {
	const arm = armOf(facts);
	const inner = facts.number('radius-inner');
	const outer = facts.number('radius-outer');
	if (!arm || inner === undefined || outer === undefined || isBelow(outer - inner, 2 * nearestMm)) return;
	const least = Math.round(leastSkatingRadiusMm(arm) ?? 0);
	const isBetween = isAbove(least - inner, nearestMm) && isAbove(outer - least, nearestMm);
	return String(isBetween ? least : Math.round((inner + outer) / 2));
}

/** Two radii nearer than this say the same. */
const nearestMm = 5;

export function middleProblem(facts: Facts): Problem | undefined {
	const radiusMm = facts.number('bias-radius-middle');
	const inner = facts.number('radius-inner');
	const outer = facts.number('radius-outer');
	if (radiusMm === undefined || inner === undefined || outer === undefined) return;
	if (isAbove(radiusMm, inner) && isBelow(radiusMm, outer)) return;
	const values = {innerMm: inner, outerMm: outer};
	return problem('middle-not-between', values, wayTo('correct-middle', 'bias-radius-middle'));
}
