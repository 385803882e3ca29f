import {roundsToSee} from '../procedure/facts.js';
import {isOnPlace, offPlaces, type Place, places, stepOfRounds} from '../procedure/places.js';
import type {Action, LimitName} from './actions.js';
import type {Check, Reading, Round, Series} from './check.js';
import {counts, isComplete, openSeries, withOpenSeries} from './series.js';
import {roundsEachOf, shownAtIn, turningPlace} from './short-series.js';

type Of<T extends Action['type']> = Extract<Action, {type: T}>;

/** A place in the probe where a reading stands or is wanted. */
export type Slot = {
	readonly place: Place;
	readonly index: number;
	readonly which: LimitName;
	/** The gauge stands end for end for this round. */
	readonly gauge?: 'turned';
};

const slotOf = (check: Check, place: Place, index: number, which: LimitName): Slot =>
	isTurnedRound(check, place, index) ? {place, index, which, gauge: 'turned'} : {place, index, which};

/** The reading that is wanted next at a place. */
export function nextSlot(check: Check, place: Place): Slot {
	const rounds = openSeries(check)[place];
	const last = rounds.length - 1;
	return rounds[last] && !rounds[last].outerLimit
		? slotOf(check, place, last, 'outerLimit')
		: slotOf(check, place, last + 1, 'innerLimit');
}

/** The reading before a slot at the same place, if there is one. */
export function slotBefore(check: Check, {place, index, which}: Slot): Slot | undefined {
	if (which === 'outerLimit') return slotOf(check, place, index, 'innerLimit');
	return index === 0 ? undefined : slotOf(check, place, index - 1, 'outerLimit');
}

const isTurned = ({gauge}: Round): boolean => gauge === 'turned';

/** Of the rounds of a place the second one is taken with the gauge turned: as used, turned, as used. */
function isTurnedRound(check: Check, place: Place, index: number): boolean {
	const rounds = openSeries(check)[place];
	const taken = rounds[index];
	if (taken) return isTurned(taken);
	const counting = rounds.filter(counts);
	return place === turningPlace(check) && counting.length > 0 && !counting.some(isTurned);
}

/** Whether the round before this one, at the same place, was taken with the gauge turned: then it is turned back. */
export const followsTurned = (series: Series, {place, index, gauge}: Slot): boolean =>
	gauge === undefined && series[place][index - 1]?.gauge === 'turned';

export const readingAt = (series: Series, {place, index, which}: Slot): Reading | undefined =>
	series[place][index]?.[which];

/**
 * How many rounds are usual at a place: three at a probe radius, two where they only show what a remedy did; one where
 * it closes the probe or bias is on.
 */
export function usualRoundsAt(check: Check, place: Place): number {
	if (place === 'closing' || isOnPlace(place)) return 1;
	return shownAtIn(check, openSeries(check)) ? roundsToSee : roundsEachOf(check);
}

/** Whether enough rounds count at a place for the usual check. */
export function hasEnough(check: Check, place: Place): boolean {
	const rounds = openSeries(check)[place];
	const counting = rounds.filter(counts);
	return (
		counting.length >= usualRoundsAt(check, place) &&
		(place !== turningPlace(check) || counting.some(isTurned)) &&
		!rounds.some((round) => !round.outerLimit)
	);
}

export function setLimit(check: Check, {place, index, which, gauge, value, typed, at}: Of<'limit'>): Check {
	const series = openSeries(check);
	const reading: Reading = {typed, value, at};
	const old = series[place][index];
	const round: Round = old ? {...old, [which]: reading} : {...(gauge ? {gauge} : {}), innerLimit: reading};
	const rounds = old ? series[place].with(index, round) : [...series[place], round];
	const replaced = old?.[which];
	const withdrawn =
		replaced && replaced.value !== value
			? [...series.withdrawn, {place, limit: which, reading: replaced}]
			: series.withdrawn;
	const taken = askResultAgain(withOpenSeries(check, {...series, [place]: rounds, withdrawn}), place);
	return replaced ? taken : judgesFrom(check, lockAgain(taken, place));
}

/** From the round on with which a series begins to judge the arm, all its radii want the rounds for that. */
function judgesFrom(before: Check, check: Check): Check {
	if (!shownAtIn(before, openSeries(before)) || shownAtIn(check, openSeries(check))) return check;
	const shown = offPlaces.map((place): string => stepOfRounds(place));
	return {
		...check,
		answers: Object.fromEntries(Object.entries(check.answers).filter(([id]) => !shown.includes(id))),
	};
}

/** The place of the latest reading; the later place of the procedure where two came in the same second. */
const lastTakenAt = (series: Series): Place | undefined =>
	places
		.filter((place) => series[place].length > 0)
		.reduce<Place | undefined>(
			(latest, place) => (latest && takenAt(series, latest) > takenAt(series, place) ? latest : place),
			undefined,
		);

/** Where the gauge stands for the rounds of a place. */
const stand = (place: Place): Place => (place === 'closing' ? 'inner' : place);

/** Whether the gauge goes to another radius for the round that begins with this reading. */
export function movesGauge(series: Series, {place, index, which}: Slot): boolean {
	const last = lastTakenAt(series);
	const isNew = which === 'innerLimit' && index === series[place].length;
	return isNew && last !== undefined && stand(last) !== stand(place);
}

const takenAt = (series: Series, place: Place): number => {
	const round = series[place].at(-1);
	return Date.parse(round?.outerLimit?.at ?? round?.innerLimit.at ?? '');
};

/** Takes the latest reading of the open series back; it stays in the record as withdrawn. */
export function takeBack(check: Check, chosen?: Place): Check {
	const series = openSeries(check);
	const place = chosen ?? lastTakenAt(series);
	const last = place && series[place].at(-1);
	if (!place || !last) return check;
	const {outerLimit, struck: _struck, ...rest} = last;
	const limit: LimitName = outerLimit ? 'outerLimit' : 'innerLimit';
	const rounds = outerLimit ? [...series[place].slice(0, -1), rest] : series[place].slice(0, -1);
	const withdrawn = [...series.withdrawn, {place, limit, reading: outerLimit ?? last.innerLimit}];
	const {[stepOfRounds(place)]: _reopened, ...answers} = check.answers;
	return askResultAgain(withOpenSeries({...check, answers}, {...series, [place]: rounds, withdrawn}), place);
}

/** Where a round was begun and lacks its outer limit. */
export function begunAt(check: Check): Place | undefined {
	const series = openSeries(check);
	return places.find((place) => !series[place].every(isComplete));
}

/** Rounds that lack their outer limit begin anew; what was read of them stays in the record as withdrawn. */
export function withoutBegun(check: Check): Check {
	const place = begunAt(check);
	if (!place) return check;
	const series = openSeries(check);
	const lone = series[place].filter((round) => !isComplete(round));
	const withdrawn = lone.map(({innerLimit}) => ({place, limit: 'innerLimit', reading: innerLimit}));
	const left = {[place]: series[place].filter(isComplete), withdrawn: [...series.withdrawn, ...withdrawn]};
	return withoutBegun(withOpenSeries(check, {...series, ...left}));
}

/** Strikes a round out: it stays in the record, out of the figures. */
export function strike(check: Check, {place, index, reason, at}: Of<'strike'>): Check {
	const series = openSeries(check);
	const round = series[place][index];
	if (!round) return check;
	const struck = withOpenSeries(check, {
		...series,
		[place]: series[place].with(index, {...round, struck: {reason, at}}),
	});
	const {[stepOfRounds(place)]: reopened, ...answers} = struck.answers;
	return askResultAgain(reopened && !hasEnough(struck, place) ? {...struck, answers} : struck, place);
}

/** A round more leaves the arm on the gauge: it is locked again before anything is read on. */
function lockAgain(check: Check, place: Place): Check {
	const {'probe-end': _locked, ...answers} = check.answers;
	return isOnPlace(place) ? check : {...check, answers};
}

/** What was read with other figures is shown again: the verdict, or what the bias leaves. */
function askResultAgain(check: Check, place: Place): Check {
	const {verdict, 'bias-result': _old, ...answers} = check.answers;
	return {...check, answers: isOnPlace(place) && verdict ? {...answers, verdict} : answers};
}
