import type {Check, Reading, Round} from '../check/check.js';
import type {PastCheck} from '../check/past-check.js';
import {type Slot, usualRoundsAt} from '../check/rounds.js';
import {counts, openSeries} from '../check/series.js';
import type {Facts} from '../procedure/facts.js';
import {inGaugeUnit, isPlaceOffScale} from '../procedure/hold-limits.js';
import {isOnPlace, type Place} from '../procedure/places.js';
import {showsHandForce} from '../procedure/readings.js';
import {partialDocument} from '../results/document-of-check.js';
import {seriesRead} from '../results/series-read.js';
import {words} from '../words/index.js';
import {signedTyped} from '../words/typed.js';
import {lastBands, roundsShown} from './band-rows.js';
import {line, type Shown} from './shown-lines.js';

const said = words.pages.rounds;

/** The rounds of a place, each to scale; in words as they were typed. There may be a dozen: the last ones. */
export function roundsSoFar(
	check: Check,
	facts: Facts,
	place: Place,
	slot: Slot | undefined,
	history: readonly PastCheck[],
): Shown[] {
	const taken = openSeries(check)[place];
	const caption = [standing(check, facts, place, slot), ...begunText(taken)].join(' ');
	const heard = lastHeard(check, facts, place, slot);
	const document = partialDocument(facts, 1);
	const scale = document && seriesRead(document).scale;
	const named = place === 'extra' ? 'other' : place === 'closing' ? 'inner' : place;
	const before = isOnPlace(place) ? [] : lastBands(history, [named]);
	if (taken.length + before.length === 0) return [];
	// With the bias on the limits of the arm's own pull do not hold: what is read stands against the curve.
	if (!scale || showsHandForce(facts) || isOnPlace(place)) return [{...line(caption), heard}];
	const asPct = ({gauge}: Round, reading: Reading): number => {
		const pct = scale.factor * (inGaugeUnit(reading.value, facts) - scale.zero);
		return gauge === 'turned' ? 0 - pct : pct;
	};
	const rows = taken.flatMap((round, index) =>
		round.outerLimit && !round.struck
			? [
					{
						label: String(index + 1),
						innerLimit: asPct(round, round.innerLimit),
						outerLimit: asPct(round, round.outerLimit),
					},
				]
			: [],
	);
	const last = taken.at(-1);
	const begun =
		last && !last.outerLimit ? {label: String(taken.length), lowPct: asPct(last, last.innerLimit)} : undefined;
	return [{...roundsShown(rows.slice(-3), begun, facts.limits, before, caption), heard}];
}

function standing(check: Check, facts: Facts, place: Place, slot: Slot | undefined): string {
	const taken = openSeries(check)[place];
	return said.soFar({
		isAsked: slot !== undefined,
		count: taken.filter(counts).length,
		isOffScale: isPlaceOffScale(facts, place),
		last: wholeRounds(taken).slice(-3),
	});
}

/** Rounds with both limits, as they were typed. */
const wholeRounds = (taken: readonly Round[]) =>
	taken.flatMap(({innerLimit, outerLimit, struck, gauge}, index) =>
		outerLimit
			? [
					{
						number: index + 1,
						innerLimit: signedTyped(innerLimit.typed),
						outerLimit: signedTyped(outerLimit.typed),
						isTurned: gauge === 'turned',
						isStruck: struck !== undefined,
					},
				]
			: [],
	);

/** What a voice reads back: the limit or the round that was just taken, and at last how many rounds count. */
function lastHeard(check: Check, facts: Facts, place: Place, slot: Slot | undefined): string {
	const taken = openSeries(check)[place];
	if (begunText(taken).length > 0)
		return said.innerHeard({innerLimit: signedTyped(taken.at(-1)?.innerLimit.typed ?? '')});
	const [last] = wholeRounds(taken).slice(-1);
	return said.heard({
		count: slot === undefined ? taken.filter(counts).length : undefined,
		isOffScale: isPlaceOffScale(facts, place),
		last,
	});
}

/** Which round is asked for, of how many. */
export const roundAsked = (check: Check, slot: Slot | undefined) =>
	slot && {
		number: slot.index + 1,
		usual: usualRoundsAt(check, slot.place),
		isTurned: slot.gauge === 'turned',
	};

/** A round that lacks its outer limit. */
const begunText = (taken: readonly Round[]): readonly string[] => {
	const last = taken.at(-1);
	return last && !last.outerLimit ? [said.begun({innerLimit: signedTyped(last.innerLimit.typed)})] : [];
};
