import type {Check} from '../check/check.js';
import type {Slot} from '../check/rounds.js';
import {counts, isComplete, openSeries, usualRounds} from '../check/series.js';
import type {Facts} from '../procedure/facts.js';
import {closingOf, isOffScale, topOfScale} from '../procedure/hold-limits.js';
import {gaugeUnitOf} from '../procedure/readings.js';
import type {Place} from '../procedure/step.js';
import {limitAsk} from '../procedure/steps-probe.js';
import {units} from '../units.js';
import {bandsPicture} from './band-rows.js';
import {partialDocument} from './document-of-check.js';
import type {Document} from './document-schema.js';
import {figuresOf} from './figures.js';
import {isMeasured, type MeasuredRadius} from './figures-types.js';
import {afterOneMoreRound} from './one-more-round.js';
import {line, type Shown} from './shown-lines.js';
import {bandAt, plainNumber, pullAt, sureFirst, wouldDecideIt} from './wording.js';

/** What the probe screens show: the rounds so far at a place, the band to scale, and what one more would bring. */
export function probeSoFar(check: Check, facts: Facts, place: Place, slot: Slot | undefined): readonly Shown[] {
	const rounds = openSeries(check)[place];
	const asked = slot ? [line(limitAsk(facts, slot.which), 'strong')] : [];
	const taken = rounds.flatMap((round, index) => {
		if (slot?.index === index && !round.outerLimit) return [line(`Round ${index + 1}: ${round.innerLimit.typed} / …`)];
		return [];
	});
	const last = rounds.filter(isComplete).slice(-3).map(describeRound(rounds));
	const head = [
		line(
			`${slot ? `Round ${slot.index + 1}${place === 'closing' ? '' : ` of ${Math.max(usualRounds, slot.index + 1)}`}` : describeCount(rounds.filter(counts).length)}${last.length > 0 ? ` · so far ${last.join(' · ')}` : ''}`,
			'dim',
		),
	];
	return [
		...head,
		...taken,
		...asked,
		...offScale(facts, place),
		...(place === 'closing' ? closingLines(facts) : figureLines(facts, place)),
	];
}

const describeRound =
	(rounds: Check['series'][number]['inner']) =>
	(round: Check['series'][number]['inner'][number]): string =>
		`${rounds.indexOf(round) + 1}: ${round.innerLimit.typed} / ${round.outerLimit?.typed ?? ''}${round.struck ? ' (struck)' : ''}`;

function offScale(facts: Facts, place: Place): Shown[] {
	if (!isOffScale(facts, place)) return [];
	const top = `${plainNumber(topOfScale(facts))} ${units[gaugeUnitOf(facts)].label}`;
	return [
		line(
			`Off scale: a reading of ${top} or more gives no figure. Look at the level and whether the bias is really off; take the reading back, or go on without figures here.`,
			'bad',
		),
	];
}

function closingLines(facts: Facts): Shown[] {
	const closing = closingOf(facts);
	if (!closing) return [];
	const off = Math.abs(closing.centrePct - closing.meanPct).toFixed(2);
	return [
		closing.moved
			? line(`${off} % off the inner mean: something moved.`, 'bad')
			: line(`${off} % off the inner mean: nothing moved.`, 'good'),
	];
}

function figureLines(facts: Facts, place: Place): Shown[] {
	const document = partialDocument(facts);
	if (!document) return [];
	const {probe} = figuresOf(document);
	const here = probe.find((one) => one.place === (place === 'extra' ? 'other' : place));
	const others = probe.filter((one) => one !== here);
	if (!here || !isMeasured(here)) return bandsPicture(others, facts.limits);
	return [
		...bandsPicture([here, ...others], facts.limits),
		line(
			`Pull ${pullAt(here)} (good to ${plainNumber(facts.limits.pullGoodPct)} %): ${verdictOf(here.pullVerdict, here.pullAtWorst)}`,
			'strong',
		),
		line(
			`Band ${bandAt(here)} (good to ${plainNumber(facts.limits.bandGoodPct)} %): ${verdictOf(here.bandVerdict, here.bandAtWorst)}`,
			'strong',
		),
		...wouldDecide(here),
		...oneMore(document, here),
	];
}

const verdictOf = (verdict: MeasuredRadius['pullVerdict'], atWorst: MeasuredRadius['pullAtWorst']): string =>
	verdict === 'undecided' ? sureFirst(atWorst) : verdict;

function wouldDecide(here: MeasuredRadius): Shown[] {
	return [
		...(here.pullWouldDecide ? [line(`Pull: ${wouldDecideIt(here.pullWouldDecide, here.pullAtWorst)}.`)] : []),
		...(here.bandWouldDecide ? [line(`Band: ${wouldDecideIt(here.bandWouldDecide, here.bandAtWorst)}.`)] : []),
	];
}

function oneMore(document: Document, here: MeasuredRadius): Shown[] {
	const more = afterOneMoreRound(document, here);
	if (!more) return [line('A second round will show how well rounds repeat.', 'dim')];
	return [
		line(
			`One round more would bring ± ${more.pullUncertaintyPct.toFixed(2)} % and ± ${more.bandUncertaintyPct.toFixed(2)} %.`,
			'dim',
		),
	];
}

const describeCount = (count: number): string => (count === 1 ? '1 round counts' : `${count} rounds count`);
