import type {Check, Round} from '../check/check.js';
import type {Dialogue} from '../check/dialogue.js';
import {followsTurned, movesGauge, type Slot} from '../check/rounds.js';
import {openSeries} from '../check/series.js';
import {onRadiusMm} from '../procedure/bias-on.js';
import type {Facts} from '../procedure/facts.js';
import {offRadiusMm} from '../procedure/geometry.js';
import {closingOf, inGaugeUnit, isOverTop, isPlaceOffScale, topOfScale} from '../procedure/hold-limits.js';
import {isOnPlace, type Place} from '../procedure/places.js';
import {gaugeUnitOf, isPushedByHand, showsHandForce} from '../procedure/readings.js';
import {partialDocument} from '../results/document-of-check.js';
import type {Document} from '../results/document-schema.js';
import {figuresOf} from '../results/figures.js';
import {isMeasured, type MeasuredRadius} from '../results/figures-types.js';
import {afterOneMoreRound, isOneMoreWorthIt, isWorthAdvice} from '../results/one-more-round.js';
import {radiiApart, roundsAgree} from '../results/rounds-agree.js';
import {words} from '../words/index.js';
import {biasSoFar} from './bias/so-far.js';
import {onGauge, scaleLine} from './on-gauge.js';
import {roundsSoFar} from './rounds-to-scale.js';
import {line, type Shown, unheard} from './shown-lines.js';
import {touchShown} from './touches.js';

const said = words.pages.rounds;

/** What the probe screens show: the rounds so far at a place to scale, what they come to, and what one more would bring. */
export function probeSoFar(
	{check, history}: Pick<Dialogue, 'check' | 'history'>,
	facts: Facts,
	place: Place,
	slot: Slot | undefined,
): readonly Shown[] {
	const figures = figuresSoFar(check, facts, place, slot !== undefined);
	return [
		...atFirst(facts, slot),
		...roundsSoFar(check, facts, place, slot, history),
		...offScale(openSeries(check)[place], facts, place),
		// They were heard when the round before was taken.
		...(slot?.which === 'outerLimit' ? figures.map(unheard) : figures),
	];
}

/** Which way to nudge, on the deck from above, while nothing was read at a place yet. */
function atFirst(facts: Facts, slot: Slot | undefined): Shown[] {
	if (slot?.index !== 0 || slot.which !== 'innerLimit' || showsHandForce(facts)) return [];
	const radiusMm = isOnPlace(slot.place) ? onRadiusMm(facts, slot.place) : offRadiusMm(facts, slot.place);
	return radiusMm === undefined ? [] : touchShown(facts, {kind: 'nudge', radiusMm, way: 'inward'});
}

/** What the hands do before the first limit of a round; empty where they go on as they are. */
export function handsFirst(check: Check, facts: Facts, slot: Slot | undefined): string {
	if (slot?.which !== 'innerLimit') return '';
	const heads = isPushedByHand(facts) ? words.rounds.inHand : words.rounds;
	const series = openSeries(check);
	// A reading that is corrected is no new round.
	if (series[slot.place][slot.index]) return '';
	if (movesGauge(series, slot)) return heads.moved;
	if (slot.index === 0) return '';
	if (slot.gauge === 'turned') return heads.turned;
	if (followsTurned(series, slot)) return heads.turnedBack;
	return check.setAnew && !isOnPlace(slot.place) ? heads.anew : '';
}

function figuresSoFar(check: Check, facts: Facts, place: Place, isAsked: boolean): Shown[] {
	if (isOnPlace(place)) return biasSoFar(check, facts, place);
	return place === 'closing' ? closingShown(facts) : figureLines(facts, place, isAsked);
}

/** That a reading is off scale, as the one that was just taken may be. */
function offScale(taken: readonly Round[], facts: Facts, place: Place): Shown[] {
	const last = taken.at(-1);
	const begun = last?.outerLimit ? undefined : last?.innerLimit;
	const isNow = begun !== undefined && isOverTop(facts, inGaugeUnit(begun.value, facts));
	return isNow || isPlaceOffScale(facts, place) ? [offScaleLine(facts, place)] : [];
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

/** @param isAsked another round is being taken */
function figureLines(facts: Facts, place: Place, isAsked: boolean): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const {probe} = figuresOf(document);
	const named = place === 'extra' ? 'other' : place;
	const here = probe.find((one) => one.place === named);
	if (!here || !isMeasured(here)) return [];
	const judged = {figures: here, limits: facts.limits};
	return [
		...radiiApart(document).map((one) => {
			const {roundsApart, roundsApartElsewhere} = words.results;
			return line(one.radiusMm === here.radiusMm ? roundsApart(one) : roundsApartElsewhere(one), 'warn');
		}),
		{...line(said.pull(judged), 'strong'), heard: said.pullHeard(judged)},
		{...line(said.band(judged), 'strong'), heard: said.bandHeard(judged)},
		// Rounds that do not agree say nothing about what more of them would bring.
		...(roundsAgree(document) && !isAsked ? wouldDecide(document, here) : []),
		...scaleLine(onGauge(document, facts)),
	];
}

/** What more rounds would bring: with fewer than three of them nobody can tell. */
function wouldDecide(document: Document, here: MeasuredRadius): Shown[] {
	if (here.repeatability === 'assumed') return [line(words.results.repeatabilityAssumed, 'aside')];
	if (!isWorthAdvice(document, here)) return [];
	const {pullWouldDecide: pull, bandWouldDecide: band, pullAtWorst, bandAtWorst} = here;
	// What no round decides needs no word on what one more would bring.
	const isOnLimit = [pull, band].some((one) => one && 'onLimit' in one);
	return [
		...(pull ? [line(said.pullWouldDecide({by: pull, atWorst: pullAtWorst}))] : []),
		...(band ? [line(said.bandWouldDecide({by: band, atWorst: bandAtWorst}))] : []),
		...(isOnLimit ? [] : [line(oneMoreText(document, here), 'aside')]),
	];
}

/** What one round more would bring. */
function oneMoreText(document: Document, here: MeasuredRadius): string {
	const more = afterOneMoreRound(document, here);
	if (!more) return words.results.repeatabilityAssumed;
	return isOneMoreWorthIt(more, here) ? words.results.oneMoreRound(more) : words.results.oneMoreIsIdle;
}
