import {inGaugeUnit} from '../procedure/hold-limits.js';
import {readSigned, signOfWord} from '../procedure/read-signed.js';
import {gaugeUnitOf, pushSides, showsHandForce} from '../procedure/readings.js';
import type {Step} from '../procedure/step.js';
import {withUnit} from '../procedure/typed-text.js';
import type {LimitName} from './actions.js';
import {type Dialogue, type Position, positionOf} from './dialogue.js';
import {act, ask, calm, type Entry, refuse, textOf, visit} from './entry.js';
import {nextSlot, type Slot} from './rounds.js';
import {openSeries} from './series.js';

export function takeLimit(
	dialogue: Dialogue,
	{progress: {facts}}: Position,
	slot: Slot,
	entry: Entry,
	at: string,
): Dialogue {
	const typed = textOf(entry).trim();
	const read = readSigned(typed, gaugeUnitOf(facts), pushSides, facts);
	if (read.kind === 'refused') return refuse(dialogue, read.sentence);
	if (read.kind === 'side-wanted')
		return {...calm(dialogue), mode: {kind: 'side', typed, size: read.size, sides: pushSides}};
	return setLimit(dialogue, slot, read.value, typed, at);
}

const otherLimit = {innerLimit: 'outerLimit', outerLimit: 'innerLimit'} as const satisfies Record<LimitName, LimitName>;

/** Takes a hold limit unless it crosses the other one of its round. */
function setLimit(dialogue: Dialogue, slot: Slot, value: number, typed: string, at: string): Dialogue {
	const {facts} = positionOf(dialogue).progress;
	const round = openSeries(dialogue.check)[slot.place][slot.index];
	const other = round?.[otherLimit[slot.which]];
	const [inner, outer] = slot.which === 'innerLimit' ? [value, other?.value] : [other?.value, value];
	if (inner !== undefined && outer !== undefined && inGaugeUnit(inner, facts) > inGaugeUnit(outer, facts)) {
		const hint = showsHandForce(facts) ? 'the pushes may be swapped' : 'the limits may be swapped, or a sign is wrong';
		return refuse(
			dialogue,
			`The outer limit cannot lie inward of the inner one (${other?.typed ?? ''}): ${hint}. Type it again, or go back (Esc) to the other limit.`,
		);
	}
	return act(dialogue, {type: 'limit', ...slot, value, typed: withUnit(typed, gaugeUnitOf(facts), true), at});
}

export function chooseSide(dialogue: Dialogue, position: Position, entry: Entry, at: string): Dialogue {
	const {mode} = dialogue;
	const {step, slot, progress} = position;
	if (mode.kind !== 'side' || !step) return dialogue;
	const word = textOf(entry);
	const side = [mode.sides.plus, mode.sides.minus].find((one) => one.word === word);
	if (!side) return refuse(dialogue, `Press ${mode.sides.plus.word.charAt(0)} or ${mode.sides.minus.word.charAt(0)}.`);
	const value = mode.size * signOfWord(side, mode.sides, progress.facts);
	const typed = `${mode.typed} ${side.word}`;
	const asked: Dialogue = ask(dialogue);
	if (slot) return setLimit(asked, slot, value, typed, at);
	return {...asked, draft: typed};
}

export function chooseRounds(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	if (step.input.kind !== 'rounds') return dialogue;
	const {place} = step.input;
	const series = openSeries(dialogue.check);
	switch (textOf(entry)) {
		case 'go-on':
			return act(dialogue, {
				type: 'answer',
				step: step.id,
				value: series[place].length,
				typed: `${series[place].length} rounds`,
				at,
			});
		case 'more':
			return visit(dialogue, step.id, nextSlot(series, place));
		case 'strike':
			return {...calm(dialogue), mode: {kind: 'strike'}};
		case 'take-back':
			return act(dialogue, {type: 'take-back', at});
		default:
			return dialogue;
	}
}

export function goOnWithFewer(dialogue: Dialogue, step: Step, place: Slot['place'], at: string): Dialogue {
	const rounds = openSeries(dialogue.check)[place];
	if (!rounds.some((round) => round.outerLimit && !round.struck))
		return refuse(dialogue, 'One complete round at least is needed to go on.');
	if (rounds.some((round) => !round.outerLimit))
		return refuse(dialogue, 'This round still lacks its outer limit: type it, or take the last reading back.');
	return act(dialogue, {type: 'answer', step: step.id, value: rounds.length, typed: `${rounds.length} rounds`, at});
}
