import type {Check, Round} from '../check/check.js';
import type {Dialogue} from '../check/dialogue.js';
import type {PastCheck} from '../check/past-check.js';
import {followsTurned, movesGauge, type Slot, usualRoundsAt} from '../check/rounds.js';
import {counts, openSeries} from '../check/series.js';
import type {Zone} from '../measures/verdict.js';
import type {Facts} from '../procedure/facts.js';
import {inGaugeUnit, isOffScale, isOverTop, topText} from '../procedure/hold-limits.js';
import {isOnPlace} from '../procedure/places.js';
import type {Place} from '../procedure/step.js';
import {gaugeMoves, roundHeads} from '../procedure/steps-probe.js';
import {partialDocument} from '../results/document-of-check.js';
import type {Document} from '../results/document-schema.js';
import {figuresOf} from '../results/figures.js';
import {isMeasured, type MeasuredRadius} from '../results/figures-types.js';
import {afterOneMoreRound, isOneMoreWorthIt, isWorthAdvice} from '../results/one-more-round.js';
import {radiiApart, roundsAgree} from '../results/rounds-agree.js';
import {words} from '../words/index.js';
import {bandAt, plainNumber, pullAt, sureFirst, wouldDecideIt} from '../words/wording.js';
import {bandsPicture, lastBands} from './band-rows.js';
import {biasSoFar} from './bias/so-far.js';
import {closingLines} from './closing-lines.js';
import {onGauge, scaleLine} from './on-gauge.js';
import {line, type Shown} from './shown-lines.js';

/** What the probe screens show: the rounds so far at a place, the band to scale, and what one more would bring. */
export function probeSoFar(
	{check, history}: Pick<Dialogue, 'check' | 'history'>,
	facts: Facts,
	place: Place,
	slot: Slot | undefined,
): readonly Shown[] {
	const series = openSeries(check);
	const rounds = series[place];
	return [
		line([slot ? roundOf(check, slot) : howMany(rounds, isOffScale(facts, place)), ...soFar(rounds)].join(' · ')),
		...headOf(check, slot),
		...pending(rounds, facts, place),
		...offScale(facts, place),
		...figuresSoFar(check, facts, place, history),
	];
}

/** What the hands do before the first limit of a round. */
function headOf(check: Check, slot: Slot | undefined): Shown[] {
	if (slot?.which !== 'innerLimit') return [];
	const series = openSeries(check);
	// A reading that is corrected is no new round.
	if (series[slot.place][slot.index]) return [];
	if (movesGauge(series, slot)) return [line(gaugeMoves, 'warn')];
	if (slot.index === 0) return [];
	if (slot.gauge === 'turned') return [line(roundHeads.turned, 'warn')];
	if (followsTurned(series, slot)) return [line(roundHeads.turnedBack, 'warn')];
	return check.setAnew && !isOnPlace(slot.place) ? [line(roundHeads.anew, 'warn')] : [];
}

function figuresSoFar(check: Check, facts: Facts, place: Place, history: readonly PastCheck[]): Shown[] {
	if (isOnPlace(place)) return biasSoFar(check, facts, place);
	return place === 'closing' ? closingLines(facts) : figureLines(facts, place, history);
}

const roundOf = (check: Check, {place, index, gauge}: Slot): string => {
	const usual = usualRoundsAt(check, place);
	const turned = gauge === 'turned' ? ', gauge turned' : '';
	return `Round ${index + 1}${usual === 1 ? '' : ` of ${Math.max(usual, index + 1)}`}${turned}`;
};

function howMany(rounds: readonly Round[], isOff: boolean): string {
	const {length} = rounds.filter(counts);
	if (isOff) return `${length} ${length === 1 ? 'round' : 'rounds'}, off scale`;
	return length === 1 ? '1 round counts' : `${length} rounds count`;
}

/** The last rounds as they were typed; there may be a dozen. */
const soFar = (rounds: readonly Round[]): string[] =>
	rounds
		.map((round, index) => {
			const {innerLimit, outerLimit, struck, gauge} = round;
			const marks = `${gauge === 'turned' ? ' turned' : ''}${struck ? ' (struck)' : ''}`;
			return outerLimit ? `${index + 1}: ${innerLimit.typed} / ${outerLimit.typed}${marks}` : '';
		})
		.filter((text) => text !== '')
		// Held together, so that a line never breaks within a round.
		.map((text) => text.replaceAll(' ', '\u00a0'))
		.slice(-3);

/** A round that lacks its outer limit. Its reading may be off scale already. */
function pending(rounds: readonly Round[], facts: Facts, place: Place): Shown[] {
	const last = rounds.at(-1);
	if (!last || last.outerLimit) return [];
	const taken = line(`This round: ${last.innerLimit.typed} / …`);
	return isOverTop(facts, inGaugeUnit(last.innerLimit.value, facts)) ? [taken, offScaleLine(facts, place)] : [taken];
}

const offScale = (facts: Facts, place: Place): Shown[] =>
	isOffScale(facts, place) ? [offScaleLine(facts, place)] : [];

function offScaleLine(facts: Facts, place: Place): Shown {
	const top = topText(facts);
	const ways = isOnPlace(place)
		? 'Set less bias, take the reading back, or go on without figures here.'
		: 'Look at the level and whether the bias is really off; take the reading back, or go on without figures here.';
	return line(`Off scale: a reading of ${top} or more gives no figure. ${ways}`, 'bad');
}

function figureLines(facts: Facts, place: Place, history: readonly PastCheck[]): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const {probe} = figuresOf(document);
	const named = place === 'extra' ? 'other' : place;
	const here = probe.find((one) => one.place === named);
	const before = lastBands(history, [named]);
	const others = probe.filter((one) => one !== here);
	if (!here || !isMeasured(here)) return bandsPicture(others, facts.limits, before);
	const {pullGoodPct, pullUsablePct, bandGoodPct, bandUsablePct} = facts.limits;
	return [
		...radiiApart(document).map((one) => {
			const {roundsApart, roundsApartElsewhere} = words.results;
			return line(one.radiusMm === here.radiusMm ? roundsApart(one) : roundsApartElsewhere(one), 'warn');
		}),
		...bandsPicture([here, ...others], facts.limits, before),
		line(
			`Pull ${pullAt(here)} (${limitInQuestion(here.pullAtWorst, pullGoodPct, pullUsablePct)}): ${verdictOf(here.pullVerdict, here.pullAtWorst)}`,
			'strong',
		),
		line(
			`Band ${bandAt(here)} (${limitInQuestion(here.bandAtWorst, bandGoodPct, bandUsablePct)}): ${verdictOf(here.bandVerdict, here.bandAtWorst)}`,
			'strong',
		),
		// Rounds that do not agree say nothing about what more of them would bring.
		...(roundsAgree(document) ? wouldDecide(document, here) : []),
		...scaleLine(onGauge(document, facts)),
	];
}

/** The limit that a figure is held against: what is good at worst against the first one, what may be beyond against the last. */
const limitInQuestion = (atWorst: Zone, goodPct: number, usablePct: number): string =>
	atWorst === 'beyond' ? `usable to ${plainNumber(usablePct)} %` : `good to ${plainNumber(goodPct)} %`;

const verdictOf = (verdict: MeasuredRadius['pullVerdict'], atWorst: MeasuredRadius['pullAtWorst']): string =>
	verdict === 'undecided' ? sureFirst(atWorst) : verdict;

/** What more rounds would bring: with fewer than three of them nobody can tell. */
function wouldDecide(document: Document, here: MeasuredRadius): Shown[] {
	if (here.repeatability === 'assumed') return [line(words.results.repeatabilityAssumed, 'dim')];
	if (!isWorthAdvice(document, here)) return [];
	return [
		...(here.pullWouldDecide ? [line(`Pull: ${wouldDecideIt(here.pullWouldDecide, here.pullAtWorst)}.`)] : []),
		...(here.bandWouldDecide ? [line(`Band: ${wouldDecideIt(here.bandWouldDecide, here.bandAtWorst)}.`)] : []),
		line(oneMoreText(document, here), 'dim'),
	];
}

/** What one round more would bring. */
function oneMoreText(document: Document, here: MeasuredRadius): string {
	const more = afterOneMoreRound(document, here);
	if (!more) return words.results.repeatabilityAssumed;
	return isOneMoreWorthIt(more, here) ? words.results.oneMoreRound(more) : words.results.oneMoreIsIdle;
}
