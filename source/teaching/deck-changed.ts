import type {Check} from '../check/check.js';
import {openSeries} from '../check/series.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {offPlaces, stepOfRounds} from '../procedure/places.js';
import {lessonOf, specOn} from './deck.js';

/** What of an arm the rounds without bias hang on, beside the bias. */
const stateOf = ({tilt, wire, damping}: ArmSpec): string => JSON.stringify([tilt, wire, damping?.isIn ?? false]);

const isOn = ({bias}: ArmSpec): boolean => bias?.isOn ?? false;

/**
 * Whether hands have put something right at the deck since the rounds of the open series were taken: they hang on a deck
 * that is no more. A bias that was switched on for readings of its own is none of that.
 */
export function isDeckChanged({practice, ...check}: Check): boolean {
	if (!practice) return false;
	const series = openSeries(check);
	const times = offPlaces.flatMap((place) =>
		series[place].flatMap((round) => [round.innerLimit.at, round.outerLimit?.at]),
	);
	const last = practice.readings.findLast(
		({step, at}) => offPlaces.some((place) => step === stepOfRounds(place)) && times.includes(at),
	);
	if (!last) return false;
	const lesson = lessonOf(practice);
	const [then, now] = [specOn(lesson, last.deck), specOn(lesson, practice.deck)];
	return stateOf(then) !== stateOf(now) || (isOn(then) && !isOn(now));
}
