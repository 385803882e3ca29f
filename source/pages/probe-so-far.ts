import type {Check, Round} from '../check/check.js';
import type {Dialogue} from '../check/dialogue.js';
import type {PastCheck} from '../check/past-check.js';
import {followsTurned, movesGauge, type Slot, usualRoundsAt} from '../check/rounds.js';
import {counts, openSeries} from '../check/series.js';
import type {Facts} from '../procedure/facts.js';
import {closingOf, inGaugeUnit, isOverTop, isPlaceOffScale, topOfScale} from '../procedure/hold-limits.js';
import {isOnPlace, type Place} from '../procedure/places.js';
import {gaugeUnitOf, isPushedByHand} from '../procedure/readings.js';
import {partialDocument} from '../results/document-of-check.js';
import type {Document} from '../results/document-schema.js';
import {figuresOf} from '../results/figures.js';
import {isMeasured, type MeasuredRadius} from '../results/figures-types.js';
import {afterOneMoreRound, isOneMoreWorthIt, isWorthAdvice} from '../results/one-more-round.js';
import {radiiApart, roundsAgree} from '../results/rounds-agree.js';
import {words} from '../words/index.js';
import {bandsShown, lastBands} from './band-rows.js';
import {biasSoFar} from './bias/so-far.js';
import {onGauge, scaleLine} from './on-gauge.js';
import {line, type Shown} from './shown-lines.js';

const said = words.pages.rounds;

/** What the probe screens show: the rounds so far at a place, the band to scale, and what one more would bring. */
export function probeSoFar(
	{check, history}: Pick<Dialogue, 'check' | 'history'>,
	facts: Facts,
	place: Place,
	slot: Slot | undefined,
): readonly Shown[] {
	return [
		line(standing(check, facts, place, slot)),
		...headOf(check, slot, isPushedByHand(facts) ? words.rounds.inHand : words.rounds),
		...pending(openSeries(check)[place], facts, place),
		...figuresSoFar(check, facts, place, history),
	];
}

/** What the hands do before the first limit of a round. */
function headOf(check: Check, slot: Slot | undefined, heads: typeof words.rounds.inHand): Shown[] {
	if (slot?.which !== 'innerLimit') return [];
	const series = openSeries(check);
	// A reading that is corrected is no new round.
	if (series[slot.place][slot.index]) return [];
	if (movesGauge(series, slot)) return [line(heads.moved, 'warn')];
	if (slot.index === 0) return [];
	if (slot.gauge === 'turned') return [line(heads.turned, 'warn')];
	if (followsTurned(series, slot)) return [line(heads.turnedBack, 'warn')];
	return check.setAnew && !isOnPlace(slot.place) ? [line(heads.anew, 'warn')] : [];
}

function figuresSoFar(check: Check, facts: Facts, place: Place, history: readonly PastCheck[]): Shown[] {
	if (isOnPlace(place)) return biasSoFar(check, facts, place);
	return place === 'closing' ? closingShown(facts) : figureLines(facts, place, history);
}

/** Where the rounds stand, with the last of them as they were typed; there may be a dozen. */
function standing(check: Check, facts: Facts, place: Place, slot: Slot | undefined): string {
	const taken = openSeries(check)[place];
	return said.soFar({
		round: slot && {
			number: slot.index + 1,
			usual: usualRoundsAt(check, place),
			isTurned: slot.gauge === 'turned',
		},
		count: taken.filter(counts).length,
		isOffScale: isPlaceOffScale(facts, place),
		last: taken
			.flatMap(({innerLimit, outerLimit, struck, gauge}, index) =>
				outerLimit
					? [
							{
								number: index + 1,
								innerLimit: innerLimit.typed,
								outerLimit: outerLimit.typed,
								isTurned: gauge === 'turned',
								isStruck: struck !== undefined,
							},
						]
					: [],
			)
			.slice(-3),
	});
}

/** A round that lacks its outer limit; and that a reading is off scale, as the one that was just taken may be. */
function pending(taken: readonly Round[], facts: Facts, place: Place): Shown[] {
	const last = taken.at(-1);
	const begun = last?.outerLimit ? undefined : last?.innerLimit;
	return [
		...(begun ? [line(said.begun({innerLimit: begun.typed}))] : []),
		...(begun && isOverTop(facts, inGaugeUnit(begun.value, facts)) ? [offScaleLine(facts, place)] : []),
		...(isPlaceOffScale(facts, place) ? [offScaleLine(facts, place)] : []),
	];
}

const offScaleLine = (facts: Facts, place: Place): Shown =>
	line(said.offScale({top: topOfScale(facts), unit: gaugeUnitOf(facts), isBiasOn: isOnPlace(place)}), 'bad');

/** What the closing round says: something moved, nothing moved, or that it cannot be told. */
function closingShown(facts: Facts): Shown[] {
	const closing = closingOf(facts);
	if (!closing) return [];
	if (closing.moved) return [line(said.somethingMoved(closing), 'bad')];
	if (closing.tells) return [line(said.nothingMoved(closing), 'good')];
	return [line(said.cannotTell({...closing, pullGoodPct: facts.limits.pullGoodPct}), 'warn')];
}

function figureLines(facts: Facts, place: Place, history: readonly PastCheck[]): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const {probe} = figuresOf(document);
	const named = place === 'extra' ? 'other' : place;
	const here = probe.find((one) => one.place === named);
	const before = lastBands(history, [named]);
	const others = probe.filter((one) => one !== here);
	if (!here || !isMeasured(here)) return bandsShown(others, facts.limits, before);
	const judged = {figures: here, limits: facts.limits};
	return [
		...radiiApart(document).map((one) => {
			const {roundsApart, roundsApartElsewhere} = words.results;
			return line(one.radiusMm === here.radiusMm ? roundsApart(one) : roundsApartElsewhere(one), 'warn');
		}),
		...bandsShown([here, ...others], facts.limits, before),
		line(said.pull(judged), 'strong'),
		line(said.band(judged), 'strong'),
		// Rounds that do not agree say nothing about what more of them would bring.
		...(roundsAgree(document) ? wouldDecide(document, here) : []),
		...scaleLine(onGauge(document, facts)),
	];
}

/** What more rounds would bring: with fewer than three of them nobody can tell. */
function wouldDecide(document: Document, here: MeasuredRadius): Shown[] {
	if (here.repeatability === 'assumed') return [line(words.results.repeatabilityAssumed, 'dim')];
	if (!isWorthAdvice(document, here)) return [];
	const {pullWouldDecide: pull, bandWouldDecide: band, pullAtWorst, bandAtWorst} = here;
	return [
		...(pull ? [line(said.pullWouldDecide({by: pull, atWorst: pullAtWorst}))] : []),
		...(band ? [line(said.bandWouldDecide({by: band, atWorst: bandAtWorst}))] : []),
		line(oneMoreText(document, here), 'dim'),
	];
}

/** What one round more would bring. */
function oneMoreText(document: Document, here: MeasuredRadius): string {
	const more = afterOneMoreRound(document, here);
	if (!more) return words.results.repeatabilityAssumed;
	return isOneMoreWorthIt(more, here) ? words.results.oneMoreRound(more) : words.results.oneMoreIsIdle;
}
