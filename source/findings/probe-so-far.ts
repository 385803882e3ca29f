import type {Check, Round} from '../check/check.js';
import type {Dialogue} from '../check/dialogue.js';
import type {PastCheck} from '../check/past-check.js';
import {movesGauge, type Slot, usualRoundsAt} from '../check/rounds.js';
import {counts, openSeries} from '../check/series.js';
import {reachesTop} from '../measures/hold-band.js';
import type {Zone} from '../measures/verdict.js';
import type {Facts} from '../procedure/facts.js';
import {inGaugeUnit, isOffScale, topOfScale} from '../procedure/hold-limits.js';
import {isOnPlace} from '../procedure/places.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import type {Place} from '../procedure/step.js';
import {gaugeMoves} from '../procedure/steps-probe.js';
import {units} from '../units.js';
import {bandsPicture} from './band-rows.js';
import {biasSoFar} from './bias/so-far.js';
import {closingLines} from './closing-lines.js';
import {partialDocument} from './document-of-check.js';
import {figuresOf} from './figures.js';
import {isMeasured, type MeasuredRadius} from './figures-types.js';
import {onGauge, scaleLine} from './on-gauge.js';
import {oneMoreLine} from './one-more-round.js';
import {apartLines, roundsAgree} from './rounds-agree.js';
import {line, type Shown} from './shown-lines.js';
import {bandAt, plainNumber, pullAt, sureFirst, wouldDecideIt} from './wording.js';
import {lastBands} from './years/last-bands.js';
import {zeroText} from './zero-text.js';

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
		...(slot && movesGauge(series, slot) ? [line(gaugeMoves, 'warn')] : []),
		...zeroLine(facts, slot),
		...pending(rounds, facts, place),
		...offScale(facts, place),
		...figuresSoFar(check, facts, place, history),
	];
}

function figuresSoFar(check: Check, facts: Facts, place: Place, history: readonly PastCheck[]): Shown[] {
	if (isOnPlace(place)) return biasSoFar(check, facts, place);
	return place === 'closing' ? closingLines(facts) : figureLines(facts, place, history);
}

const roundOf = (check: Check, {place, index}: Slot): string => {
	const usual = usualRoundsAt(check, place);
	return `Round ${index + 1}${usual === 1 ? '' : ` of ${Math.max(usual, index + 1)}`}`;
};

function howMany(rounds: readonly Round[], isOff: boolean): string {
	const {length} = rounds.filter(counts);
	if (isOff) return `${length} ${length === 1 ? 'round' : 'rounds'}, off scale`;
	return length === 1 ? '1 round counts' : `${length} rounds count`;
}

/** The last rounds as they were typed; there may be a dozen. */
const soFar = (rounds: readonly Round[]): string[] =>
	rounds
		.map(({innerLimit, outerLimit, struck}, index) =>
			outerLimit ? `${index + 1}: ${innerLimit.typed} / ${outerLimit.typed}${struck ? ' (struck)' : ''}` : '',
		)
		.filter((text) => text !== '')
		// Held together, so that a line never breaks within a round.
		.map((text) => text.replaceAll(' ', '\u00a0'))
		.slice(-3);

/** At the first reading: what is taken off every one of them. */
function zeroLine(facts: Facts, slot: Slot | undefined): Shown[] {
	const isFirst = slot?.place === 'inner' && slot.index === 0 && slot.which === 'innerLimit';
	return isFirst ? [line(zeroText(facts), 'dim')] : [];
}

/** A round that lacks its outer limit. Its reading may be off scale already. */
function pending(rounds: readonly Round[], facts: Facts, place: Place): Shown[] {
	const last = rounds.at(-1);
	if (!last || last.outerLimit) return [];
	const taken = line(`This round: ${last.innerLimit.typed} / …`);
	return reachesTop(inGaugeUnit(last.innerLimit.value, facts), topOfScale(facts))
		? [taken, offScaleLine(facts, place)]
		: [taken];
}

const offScale = (facts: Facts, place: Place): Shown[] =>
	isOffScale(facts, place) ? [offScaleLine(facts, place)] : [];

function offScaleLine(facts: Facts, place: Place): Shown {
	const top = `${plainNumber(topOfScale(facts))} ${units[gaugeUnitOf(facts)].label}`;
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
		...apartLines(document, here.radiusMm),
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
		...(roundsAgree(document) ? [...wouldDecide(here), oneMoreLine(document, here)] : []),
		...scaleLine(onGauge(document, facts)),
	];
}

/** The limit that a figure is held against: what is good at worst against the first one, what may be beyond against the last. */
const limitInQuestion = (atWorst: Zone, goodPct: number, usablePct: number): string =>
	atWorst === 'beyond' ? `usable to ${plainNumber(usablePct)} %` : `good to ${plainNumber(goodPct)} %`;

const verdictOf = (verdict: MeasuredRadius['pullVerdict'], atWorst: MeasuredRadius['pullAtWorst']): string =>
	verdict === 'undecided' ? sureFirst(atWorst) : verdict;

function wouldDecide(here: MeasuredRadius): Shown[] {
	return [
		...(here.pullWouldDecide ? [line(`Pull: ${wouldDecideIt(here.pullWouldDecide, here.pullAtWorst)}.`)] : []),
		...(here.bandWouldDecide ? [line(`Band: ${wouldDecideIt(here.bandWouldDecide, here.bandAtWorst)}.`)] : []),
	];
}
