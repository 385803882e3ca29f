import {inGaugeUnit} from '../procedure/hold-limits.js';
import {readAnswer} from '../procedure/read-answer.js';
import {readSigned, signOfWord} from '../procedure/read-signed.js';
import {gaugeUnitOf, pushSides, showsHandForce} from '../procedure/readings.js';
import {remedies} from '../procedure/remedies.js';
import {type AnswerValue, type StageId, type Step, stages} from '../procedure/step.js';
import {describeTicks, nextLine, tickStates} from '../procedure/ticks.js';
import {withUnit} from '../procedure/typed-text.js';
import type {Action, LimitName} from './actions.js';
import {type Dialogue, type Excused, type Position, positionOf} from './dialogue.js';
import {otherReason, stillItems} from './prompt.js';
import {reduce} from './reduce.js';
import {nextSlot, type Slot, slotBefore} from './rounds.js';
import {openSeries} from './series.js';

/** What a face hands over: what was typed or pressed. */
export type Entry =
	| {readonly kind: 'text'; readonly text: string}
	| {readonly kind: 'choose'; readonly id: string}
	| {readonly kind: 'yes'}
	| {readonly kind: 'no'}
	/** The number of what is no longer so. */
	| {readonly kind: 'number'; readonly number: number}
	| {readonly kind: 'back'}
	| {readonly kind: 'steps'}
	| {readonly kind: 'stop'};

/** The dialogue after an entry; `back` from the very first step gives undefined: leave for home. */
export function respond(dialogue: Dialogue, entry: Entry, at: string): Dialogue | undefined {
	const position = positionOf(dialogue);
	if (entry.kind === 'back') return goBack(dialogue, position);
	if (entry.kind === 'steps') return {...calm(dialogue), mode: {kind: 'steps'}};
	if (entry.kind === 'stop') return {...calm(dialogue), mode: {kind: 'stop'}};
	const {mode} = dialogue;
	switch (mode.kind) {
		case 'ask':
			return answerStep(dialogue, position, entry, at);
		case 'side':
			return chooseSide(dialogue, position, entry, at);
		case 'reason':
			return chooseReason(dialogue, mode.excused, entry, at);
		case 'reason-typed':
			return typeReason(dialogue, mode.excused, entry, at);
		case 'strike':
			return chooseStruck(dialogue, entry);
		case 'remedy':
			return chooseRemedy(dialogue, entry, at);
		case 'steps':
			return chooseStep(dialogue, position, entry, at);
		case 'stop':
			return entry.kind === 'yes' ? act(dialogue, {type: 'stop', at}) : ask(dialogue);
	}
}

/** Without refusal and detours: the question itself, wherever it stands now. */
const calm = ({refusal: _refusal, draft: _draft, ...rest}: Dialogue): Dialogue => rest;
const ask = (dialogue: Dialogue): Dialogue => ({...calm(dialogue), mode: {kind: 'ask'}});
const refuse = (dialogue: Dialogue, refusal: string): Dialogue => ({...dialogue, refusal});

/** Lets an action happen, and goes where an answer is wanted now. */
function act(dialogue: Dialogue, action: Action): Dialogue {
	const {visiting: _visiting, ...rest} = ask(dialogue);
	return {...rest, check: reduce(dialogue.check, action)};
}

const visit = (dialogue: Dialogue, step: string, slot?: Slot): Dialogue => ({
	...ask(dialogue),
	visiting: slot ? {step, slot} : {step},
});

function goBack(dialogue: Dialogue, {progress, step, slot}: Position): Dialogue | undefined {
	const {mode} = dialogue;
	if (mode.kind === 'steps' && mode.stage) return {...calm(dialogue), mode: {kind: 'steps'}};
	if (mode.kind === 'reason-typed') return {...calm(dialogue), mode: {kind: 'reason', excused: mode.excused}};
	if (mode.kind !== 'ask') return ask(dialogue);
	if (step?.input.kind === 'rounds') {
		const before = slot ? slotBefore(slot) : lastSlot(dialogue, step.input.place);
		if (before) return visit(dialogue, step.id, before);
	}
	const {visible} = progress;
	const index = step ? visible.indexOf(step) : visible.length;
	const previous = visible[index - 1];
	return previous && previous.input.kind !== 'still' ? visit(dialogue, previous.id) : undefined;
}

function lastSlot({check}: Dialogue, place: Slot['place']): Slot | undefined {
	return slotBefore(nextSlot(openSeries(check), place));
}

function answerStep(dialogue: Dialogue, position: Position, entry: Entry, at: string): Dialogue {
	const {step, slot, stuck} = position;
	if (!step) return dialogue;
	if (stuck) return chooseWay(dialogue, position, step, entry, at);
	switch (step.input.kind) {
		case 'ticks':
			return tick(dialogue, position, step, entry, at);
		case 'profile':
			return pickProfile(dialogue, step, entry, at);
		case 'still':
			return answerStill(dialogue, step, entry, at);
		case 'rounds':
			return slot ? takeLimit(dialogue, position, slot, entry, at) : chooseRounds(dialogue, step, entry, at);
		case 'verdict':
			return chooseVerdict(dialogue, step, entry, at);
		default: {
			const read = readAnswer(step, textOf(entry), position.progress.facts);
			if (read.kind === 'refused') return refuse(dialogue, read.sentence);
			if (read.kind === 'side-wanted') return {...calm(dialogue), mode: {...read, kind: 'side'}};
			return act(dialogue, {type: 'answer', step: step.id, value: read.value, typed: read.typed, at});
		}
	}
}

const textOf = (entry: Entry): string => {
	if (entry.kind === 'text') return entry.text;
	if (entry.kind === 'choose') return entry.id;
	if (entry.kind === 'number') return String(entry.number);
	return entry.kind === 'yes' || entry.kind === 'no' ? entry.kind : '';
};

function chooseWay(dialogue: Dialogue, {progress}: Position, step: Step, entry: Entry, at: string): Dialogue {
	const chosen = textOf(entry);
	if (chosen === 'override')
		return {...calm(dialogue), mode: {kind: 'reason', excused: {kind: 'override', step: step.id}}};
	const way = progress.problemOf(step)?.ways[Number(chosen.replace('way-', ''))];
	if (!way) return dialogue;
	switch (way.do) {
		case 'set':
			return act(dialogue, {type: 'answer', step: way.step, value: way.value, typed: way.typed, at});
		case 'ask-again':
			return act(dialogue, {type: 'ask-again', steps: way.steps, at});
		case 'new-series':
			return act(dialogue, {type: 'new-series', because: way.because, steps: way.steps, at});
	}
}

function tick(dialogue: Dialogue, {progress}: Position, step: Step, entry: Entry, at: string): Dialogue {
	if (step.input.kind !== 'ticks') return dialogue;
	const mark = textOf(entry);
	if (mark !== 'yes' && mark !== 'no') return refuse(dialogue, 'Press y for yes or n for not yet.');
	const marks = progress.facts.list(step.id);
	const line = nextLine(tickStates(step.input, progress.facts, marks));
	const set = (value: AnswerValue & readonly string[]) =>
		act(dialogue, {type: 'answer', step: step.id, value, typed: describeTicks(value), at});
	if (!line) return set(mark === 'yes' ? marks : []);
	return set([...marks, `${line.id}=${mark}`]);
}

function pickProfile(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	const id = textOf(entry);
	const profile = dialogue.profiles.find((one) => one.id === id);
	if (!profile && id !== 'new') return refuse(dialogue, 'Choose one of the list by its number.');
	const answer = {value: id, typed: profile?.name ?? 'new'};
	return act(dialogue, {type: 'fill', answers: {[step.id]: answer, ...profile?.answers}, at});
}

function answerStill(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	const doubt = step.id.replace('still-', '');
	if (entry.kind === 'yes') return act(dialogue, {type: 'still-so', doubt, at});
	const items = stillItems(dialogue, step);
	const item =
		entry.kind === 'number'
			? items[entry.number - 1]
			: items.length === 1 && entry.kind === 'no'
				? items[0]
				: undefined;
	if (!item) return refuse(dialogue, 'Press y if all is still so, or the number of what is not.');
	return act(dialogue, {type: 'changed', doubt, steps: item.steps, what: item.label, at});
}

function takeLimit(dialogue: Dialogue, {progress: {facts}}: Position, slot: Slot, entry: Entry, at: string): Dialogue {
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

function chooseSide(dialogue: Dialogue, position: Position, entry: Entry, at: string): Dialogue {
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

function chooseRounds(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
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

function chooseVerdict(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	switch (textOf(entry)) {
		case 'go-on':
			return act(dialogue, {type: 'answer', step: step.id, value: true, typed: 'read', at});
		case 'remedy':
			return {...calm(dialogue), mode: {kind: 'remedy'}};
		case 'more-inner':
			return visit(dialogue, 'probe-inner', nextSlot(openSeries(dialogue.check), 'inner'));
		case 'more-outer':
			return visit(dialogue, 'probe-outer', nextSlot(openSeries(dialogue.check), 'outer'));
		case 'strike':
			return {...calm(dialogue), mode: {kind: 'strike'}};
		default:
			return dialogue;
	}
}

function chooseRemedy(dialogue: Dialogue, entry: Entry, at: string): Dialogue {
	const remedy = remedies.find(({id}) => id === textOf(entry));
	return remedy
		? act(dialogue, {type: 'new-series', because: `remedy: ${remedy.label}`, steps: remedy.steps, at})
		: dialogue;
}

function chooseStruck(dialogue: Dialogue, entry: Entry): Dialogue {
	const [place, index] = textOf(entry).split(':');
	const found = (['inner', 'outer', 'extra', 'closing'] as const).find((one) => one === place);
	if (!found || index === undefined) return dialogue;
	return {...calm(dialogue), mode: {kind: 'reason', excused: {kind: 'strike', place: found, index: Number(index)}}};
}

function chooseReason(dialogue: Dialogue, excused: Excused, entry: Entry, at: string): Dialogue {
	const reason = textOf(entry);
	return reason === otherReason
		? {...calm(dialogue), mode: {kind: 'reason-typed', excused}}
		: excuse(dialogue, excused, reason, at);
}

function typeReason(dialogue: Dialogue, excused: Excused, entry: Entry, at: string): Dialogue {
	const reason = textOf(entry).trim();
	return reason === '' ? refuse(dialogue, 'Type the reason in a few words.') : excuse(dialogue, excused, reason, at);
}

const excuse = (dialogue: Dialogue, excused: Excused, reason: string, at: string): Dialogue =>
	act(
		dialogue,
		excused.kind === 'override'
			? {type: 'override', step: excused.step, reason, at}
			: {type: 'strike', place: excused.place, index: excused.index, reason, at},
	);

function chooseStep(dialogue: Dialogue, {progress, step: current}: Position, entry: Entry, at: string): Dialogue {
	const id = textOf(entry);
	if (id === 'stop') return {...calm(dialogue), mode: {kind: 'stop'}};
	if (id === 'carry-on') return act(dialogue, {type: 'carry-on', at});
	if (id === 'take-back') return act(dialogue, {type: 'take-back', at});
	if (id === 'strike') return {...calm(dialogue), mode: {kind: 'strike'}};
	if (id === 'enough' && current?.input.kind === 'rounds')
		return goOnWithFewer(dialogue, current, current.input.place, at);
	if (id.startsWith('stage:')) {
		const stage = stageNamed(id.slice('stage:'.length));
		return stage ? {...calm(dialogue), mode: {kind: 'steps', stage}} : dialogue;
	}
	const step = progress.visible.find((one) => `step:${one.id}` === id);
	if (!step) return dialogue;
	if (progress.stateOf(step) === 'open' && step !== progress.current)
		return refuse(dialogue, `'${step.title}' cannot be asked yet: '${progress.current?.title ?? ''}' comes first.`);
	return visit(dialogue, step.id);
}

const stageNamed = (name: string): StageId | undefined =>
	Object.keys(stages).find((one): one is StageId => one === name);

function goOnWithFewer(dialogue: Dialogue, step: Step, place: Slot['place'], at: string): Dialogue {
	const rounds = openSeries(dialogue.check)[place];
	if (!rounds.some((round) => round.outerLimit && !round.struck))
		return refuse(dialogue, 'One complete round at least is needed to go on.');
	if (rounds.some((round) => !round.outerLimit))
		return refuse(dialogue, 'This round still lacks its outer limit: type it, or take the last reading back.');
	return act(dialogue, {type: 'answer', step: step.id, value: rounds.length, typed: `${rounds.length} rounds`, at});
}
