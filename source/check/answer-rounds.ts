import {inGaugeUnit, topOfScale, topText} from '../procedure/hold-limits.js';
import {isOnPlace, type Place, stepOfRounds} from '../procedure/places.js';
import {readSigned} from '../procedure/read-signed.js';
import {gaugeSides, gaugeUnitOf, pushSides, showsHandForce} from '../procedure/readings.js';
import type {Step} from '../procedure/step.js';
import {withUnit} from '../procedure/typed-text.js';
import type {LimitName} from './actions.js';
import {linesPutBack} from './ask-anew.js';
import type {Check} from './check.js';
import {type Dialogue, type Position, positionOf} from './dialogue.js';
import {act, ask, calm, type Entry, refuse, textOf, visit} from './entry.js';
import {nextSlot, type Slot} from './rounds.js';
import {plainly, type Refusal} from './says.js';
import {counts, openSeries} from './series.js';

export function takeLimit(
	dialogue: Dialogue,
	{progress: {facts}}: Position,
	slot: Slot,
	entry: Entry,
	at: string,
): Dialogue {
	const typed = textOf(entry).trim();
	const unit = gaugeUnitOf(facts);
	const sides = slot.gauge === 'turned' ? gaugeSides : pushSides;
	const read = readSigned(typed, unit, sides, facts);
	if (read.kind === 'refused') return refuse(dialogue, read.refusal);
	const size = read.kind === 'value' ? Math.abs(read.value) : read.size;
	if (inGaugeUnit(size, facts) > mostOverTop * (topOfScale(facts) ?? Number.POSITIVE_INFINITY))
		return refuse(dialogue, {id: 'off-the-scale', values: {typed, top: topText(facts)}});
	if (read.kind === 'side-wanted') return {...calm(dialogue), mode: {kind: 'side', typed, sides}};
	return setLimit(dialogue, slot, read.value, withUnit(typed, unit, sides, dialogue.names), at);
}

/** A reading is believed up to so many times the top of the scale; beyond, it was mistyped. */
const mostOverTop = 2;

const otherLimit = {innerLimit: 'outerLimit', outerLimit: 'innerLimit'} as const satisfies Record<LimitName, LimitName>;

/** Takes a hold limit unless it crosses the other one of its round. */
function setLimit(dialogue: Dialogue, slot: Slot, value: number, typed: string, at: string): Dialogue {
	const {facts} = positionOf(dialogue).progress;
	const round = openSeries(dialogue.check)[slot.place][slot.index];
	const other = round?.[otherLimit[slot.which]];
	if (other) {
		const [inner, outer] = slot.which === 'innerLimit' ? [value, other.value] : [other.value, value];
		if (isCrossed(slot, inGaugeUnit(inner, facts), inGaugeUnit(outer, facts)))
			return refuse(dialogue, crossed(dialogue, slot, [inner, outer], other.typed));
	}
	const first = firstThis(dialogue, slot.place, at);
	if (first) return first;
	return act(dialogue, {type: 'limit', ...slot, value, typed, at});
}

/** With the gauge turned the limits lie the other way round in its sign. */
const isCrossed = ({gauge}: Slot, inner: number, outer: number): boolean =>
	gauge === 'turned' ? outer > inner : inner > outer;

/** Why crossed limits cannot be: what is the likeliest slip. */
function crossed(dialogue: Dialogue, slot: Slot, pair: Pair, other: string): Refusal {
	const {facts} = positionOf(dialogue).progress;
	if (slot.gauge === 'turned') return {id: 'crossed-turned', values: {other}};
	const isHand = showsHandForce(facts);
	const [inner, outer] = pair;
	// Zero between them: the gauge shows a push of the arm either way. A hand does push either way.
	const isAcross = !isHand && inner > 0 && outer < 0;
	if (areSignsSwapped(dialogue.check, slot, pair) ?? isAcross) return {id: 'signs-swapped', values: {other}};
	return {id: isHand ? 'crossed-pushes' : 'crossed-limits', values: {other}};
}

type Pair = readonly [inner: number, outer: number];

/**
 * Whether crossed limits would lie nearer to the other rounds of the place with the opposite signs than with one limit
 * taken for the other; undefined where there are no others to tell.
 */
function areSignsSwapped(check: Check, {place, index}: Slot, [inner, outer]: Pair): boolean | undefined {
	const others = openSeries(check)[place].filter((round, nth) => nth !== index && counts(round) && !round.gauge);
	if (others.length === 0) return;
	const far = (asInner: number, asOuter: number): number =>
		others.reduce(
			(sum, {innerLimit, outerLimit}) =>
				sum + Math.abs(asInner - innerLimit.value) + Math.abs(asOuter - (outerLimit?.value ?? 0)),
			0,
		);
	return far(-inner, -outer) < far(outer, inner);
}

/** What must be asked before a reading may join the others. */
function firstThis(dialogue: Dialogue, place: Place, at: string): Dialogue | undefined {
	if (linesPutBack(dialogue.check).length > 0) return probeAnew(dialogue, at);
	const isOn = dialogue.check.answers['bias-on']?.value === true;
	if (dialogue.check.doubts.length > 0) {
		const asked = isOnPlace(place) ? ask(dialogue) : act(dialogue, {type: 'doubt', at});
		return refuse(asked, plainly('doubts-first'));
	}
	if (isOn && !isOnPlace(place)) return refuse(act(dialogue, {type: 'bias-off-again', at}), plainly('bias-off-first'));
	if (!isOn && isOnPlace(place)) return refuse(visit(dialogue, 'bias-on'), plainly('bias-on-first'));
	return;
}

const probeAnew = (dialogue: Dialogue, at: string): Dialogue =>
	refuse(act(dialogue, {type: 'work-again', at}), plainly('was-being-put-back'));

/** More rounds at a place; where the putting back has begun, only after what it changed was asked. */
export const moreRounds = (dialogue: Dialogue, place: Place, at: string): Dialogue =>
	firstThis(dialogue, place, at) ?? visit(dialogue, stepOfRounds(place), nextSlot(dialogue.check, place));

export function chooseRounds(
	dialogue: Dialogue,
	{progress: {facts}}: Position,
	step: Step,
	entry: Entry,
	at: string,
): Dialogue {
	if (step.input.kind !== 'rounds') return dialogue;
	const {place} = step.input;
	const series = openSeries(dialogue.check);
	switch (textOf(entry)) {
		case 'go-on':
			return act(dialogue, {
				type: 'answer',
				step: step.id,
				value: series[place].length,
				typed: countOf(dialogue, series[place].length),
				at,
			});
		case 'probe-again': {
			const [way] = step.verify?.(facts)?.ways ?? [];
			return way?.do === 'new-series'
				? act(dialogue, {type: 'new-series', because: plainly(way.because), steps: way.steps, at})
				: dialogue;
		}
		case 'adjust':
			return act(dialogue, {type: 'next-trial', at});
		case 'more':
			return moreRounds(dialogue, place, at);
		case 'strike':
			return {...calm(dialogue), mode: {kind: 'strike'}};
		case 'take-back':
			return act(dialogue, {type: 'take-back', place, at});
		default:
			return dialogue;
	}
}

/** As a number where no names are given. */
const countOf = ({names}: Dialogue, rounds: number): string => names?.rounds(rounds) ?? String(rounds);

export function goOnWithFewer(dialogue: Dialogue, step: Step, place: Slot['place'], at: string): Dialogue {
	const rounds = openSeries(dialogue.check)[place];
	if (!rounds.some((round) => round.outerLimit && !round.struck))
		return refuse(dialogue, plainly('one-round-at-least'));
	if (rounds.some((round) => !round.outerLimit)) return refuse(dialogue, plainly('outer-limit-lacks'));
	return act(dialogue, {
		type: 'answer',
		step: step.id,
		value: rounds.length,
		typed: countOf(dialogue, rounds.length),
		at,
	});
}
