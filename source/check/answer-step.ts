import {profileSteps} from '../procedure/index.js';
import {nameOf} from '../procedure/names.js';
import type {Way} from '../procedure/problem.js';
import {readAnswer} from '../procedure/read-answer.js';
import {type Step, takes} from '../procedure/step.js';
import type {AnswerValue} from '../procedure/step-ids.js';
import {doubtAskedBy} from '../procedure/steps-still.js';
import {describeTicks, nextLine, openLines, tickStates} from '../procedure/ticks.js';
import {chooseRounds, takeLimit} from './answer-rounds.js';
import {chooseBias, chooseVerdict} from './detours.js';
import {type Dialogue, type Position, ticksAtOnce} from './dialogue.js';
import {act, ask, calm, type Entry, refuse, textOf} from './entry.js';
import {choiceOf, stillItems} from './prompt-options.js';
import {plainly} from './says.js';

/** Takes an entry as the answer to the step that is shown. */
export function answerStep(dialogue: Dialogue, position: Position, entry: Entry, at: string): Dialogue {
	const {step, slot, stuck, mendable} = position;
	if (!step) return dialogue;
	if (mendable && textOf(entry).trim() === '') return {...calm(dialogue), mode: {kind: 'ways'}};
	if (stuck && !mendable) return chooseWay(dialogue, position, step, entry, at);
	switch (step.input.kind) {
		case 'ticks':
			return tick(dialogue, position, step, entry, at);
		case 'profile':
			return pickProfile(dialogue, step, entry, at);
		case 'still':
			return answerStill(dialogue, step, entry, at);
		case 'rounds':
			return slot ? takeLimit(dialogue, position, slot, entry, at) : chooseRounds(dialogue, position, step, entry, at);
		case 'verdict':
			return chooseVerdict(dialogue, step, entry, at);
		case 'bias-result':
			return chooseBias(dialogue, step, entry, at);
		case 'text':
		case 'choice':
		case 'several':
		case 'confirm':
		case 'number':
		case 'signed':
		case 'clock': {
			const read = readAnswer(step, textOf(entry), position.progress.facts, dialogue.names);
			if (read.kind === 'refused') return refuse(dialogue, read.refusal);
			if (read.kind === 'side-wanted')
				return {...calm(dialogue), mode: {kind: 'side', typed: read.typed, sides: read.sides}};
			return act(dialogue, {type: 'answer', step: step.id, value: read.value, typed: read.typed, at});
		}
	}
}

/** The side of a size that was typed without it: with that the answer is whole, and taken at once. */
export function chooseSide(dialogue: Dialogue, position: Position, entry: Entry, at: string): Dialogue {
	const {mode} = dialogue;
	if (mode.kind !== 'side') return dialogue;
	const {plus, minus} = mode.sides;
	const side = [plus, minus].find(({word}) => word === textOf(entry));
	if (!side) return refuse(dialogue, {id: 'press-side', values: {plus: plus.word, minus: minus.word}});
	return answerStep(
		ask(dialogue),
		position,
		{kind: 'text', text: `${mode.typed} ${dialogue.names?.sides[side.word] ?? side.word}`},
		at,
	);
}

/** Takes one of the ways out of an answer that does not pass. */
export function chooseWay(dialogue: Dialogue, {progress}: Position, step: Step, entry: Entry, at: string): Dialogue {
	const chosen = textOf(entry);
	if (chosen === 'override')
		return {...calm(dialogue), mode: {kind: 'reason', excused: {kind: 'override', step: step.id}}};
	const way = progress.problemOf(step)?.ways.find((_way, index) => choiceOf.way(index) === chosen);
	if (!way) return dialogue;
	switch (way.do) {
		case 'set':
			return act(dialogue, {type: 'answer', step: way.step, value: way.value, typed: typedOf(way, dialogue), at});
		case 'ask-again':
			return act(dialogue, {type: 'ask-again', steps: way.steps, at});
		case 'new-series':
			return act(dialogue, {type: 'new-series', because: plainly(way.because), steps: way.steps, at});
	}
}

/** What is kept as typed of an answer that a way out sets. */
const typedOf = ({step, value}: Extract<Way, {do: 'set'}>, {names}: Dialogue): string =>
	typeof value === 'string' ? nameOf(names, step, value) : describeTicks(value);

function tick(dialogue: Dialogue, {progress}: Position, step: Step, entry: Entry, at: string): Dialogue {
	if (!takes(step, 'ticks')) return dialogue;
	const marks = progress.facts.list(step.id);
	const states = tickStates(step, progress.facts);
	const set = (value: AnswerValue & readonly string[]) =>
		act(dialogue, {type: 'answer', step: step.id, value, typed: describeTicks(value), at});
	if (entry.kind === 'marks') return set([...marks, ...marksOf(openLines(states), entry.notSo)]);
	const mark = textOf(entry);
	if (mark !== 'yes' && mark !== 'no') return refuse(dialogue, plainly('press-yes-or-no'));
	const line = nextLine(states);
	if (ticksAtOnce(dialogue, step)) return set(mark === 'yes' ? states.map((one) => `${one.line}=yes`) : []);
	if (!line) return set(mark === 'yes' ? marks : []);
	return set([...marks, `${line}=${mark}`]);
}

/** What is not so is asked again by itself; where nothing else was asked, it does not pass. */
function marksOf(lines: readonly string[], notSo: readonly number[]): string[] {
	const so = lines.filter((_line, index) => !notSo.includes(index + 1));
	return so.length > 0 ? so.map((line) => `${line}=yes`) : lines.map((line) => `${line}=no`);
}

function pickProfile(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	const id = textOf(entry);
	const profile = dialogue.profiles.find((one) => one.id === id);
	if (!profile && id !== 'new') return refuse(dialogue, plainly('choose-by-number'));
	const asked = step.input.kind === 'profile' ? profileSteps(step.input.of) : [];
	if (profile)
		return act(dialogue, {
			type: 'fill',
			answers: {[step.id]: {value: id, typed: profile.name}, ...profile.answers},
			clears: asked,
			at,
		});
	const picked = act(dialogue, {type: 'answer', step: step.id, value: id, typed: 'new', at});
	return act(picked, {type: 'ask-again', steps: asked, at});
}

function answerStill(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	const doubt = doubtAskedBy(step);
	if (!doubt) return dialogue;
	if (entry.kind === 'yes') return act(dialogue, {type: 'still-so', doubt: doubt.id, at});
	const items = stillItems(dialogue, step);
	const item =
		entry.kind === 'number'
			? items[entry.number - 1]
			: items.length === 1 && entry.kind === 'no'
				? items[0]
				: undefined;
	if (!item) return refuse(dialogue, plainly('press-still'));
	return act(dialogue, {type: 'changed', doubt: doubt.id, steps: item.steps, item: item.id, at});
}
