import {places} from '../procedure/places.js';
import {readText} from '../procedure/read-answer.js';
import {isReasonId} from '../procedure/reasons.js';
import {remedies, stepsOfRemedy} from '../procedure/remedies.js';
import type {Step} from '../procedure/step.js';
import type {Reason} from './actions.js';
import {goOnWithFewer, moreRounds} from './answer-rounds.js';
import {type Dialogue, type Excused, type Position, positionOf} from './dialogue.js';
import {act, ask, calm, type Entry, refuse, textOf, visit} from './entry.js';
import {firstBefore} from './go-back.js';
import type {Progress} from './progress.js';
import {choiceOf, otherReason} from './prompt-options.js';
import {plainly} from './says.js';
import {hasReadings, openSeries, remediesIn} from './series.js';
import {nameOfTrial, textOfTrial, trialsOf} from './trials.js';

export function chooseVerdict(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	switch (textOf(entry)) {
		case 'go-on':
			return act(dialogue, {type: 'answer', step: step.id, value: true, typed: 'read', at});
		case 'bias':
			return toBias(act(dialogue, {type: 'answer', step: step.id, value: 'bias', typed: 'read', at}));
		case 'other-way':
			return {...calm(dialogue), mode: {kind: 'other-way'}};
		case 'radius-between':
			return visit(dialogue, 'radius-extra');
		case 'judge':
			return moreRounds(dialogue, positionOf(dialogue).progress.facts.shownAt?.[0] ?? 'inner', at);
		case 'more-inner':
			return moreRounds(dialogue, 'inner', at);
		case 'more-outer':
			return moreRounds(dialogue, 'outer', at);
		case 'more-extra':
			return moreRounds(dialogue, 'extra', at);
		case 'strike':
			return {...calm(dialogue), mode: {kind: 'strike'}};
		default:
			return chooseRemedy(dialogue, entry, at);
	}
}

/** To the bias; where it was read already, to what it came to and what may follow. */
const toBias = (dialogue: Dialogue): Dialogue =>
	dialogue.check.answers['bias-result'] ? visit(dialogue, 'bias-result') : dialogue;

function chooseRemedy(dialogue: Dialogue, entry: Entry, at: string): Dialogue {
	const remedy = remedies.find(({id}) => choiceOf.remedy(id) === textOf(entry));
	if (!remedy) return dialogue;
	const because = {id: 'remedy', values: {remedy: remedy.id}} as const;
	const before = remediesIn(dialogue.check.series).at(-1);
	return act(dialogue, {type: 'new-series', because, steps: stepsOfRemedy(remedy.id, before), at});
}

/** After the readings with a bias setting: another one, or which of them stays. */
export function chooseBias(dialogue: Dialogue, step: Step, entry: Entry, at: string): Dialogue {
	const chosen = textOf(entry);
	if (chosen === 'adjust') return act(dialogue, {type: 'next-trial', at});
	if (chosen === 'steps') return {...calm(dialogue), mode: {kind: 'steps', stage: step.stage}};
	const trials = trialsOf(dialogue.check);
	const index = trials.findIndex((_trial, nth) => [choiceOf.keep(nth + 1), choiceOf.backTo(nth + 1)].includes(chosen));
	const trial = trials[index];
	if (!trial) return dialogue;
	return act(dialogue, {
		type: 'answer',
		step: step.id,
		value: [String(index + 1), textOfTrial(trial)],
		typed: nameOfTrial(index + 1, trial),
		at,
	});
}

export function chooseStruck(dialogue: Dialogue, entry: Entry): Dialogue {
	const series = openSeries(dialogue.check);
	const rounds = places.flatMap((place) => series[place].map((_round, index) => ({place, index})));
	const found = rounds.find(({place, index}) => choiceOf.round(place, index) === textOf(entry));
	return found ? {...calm(dialogue), mode: {kind: 'reason', excused: {kind: 'strike', ...found}}} : dialogue;
}

export function chooseReason(dialogue: Dialogue, excused: Excused, entry: Entry, at: string): Dialogue {
	const id = textOf(entry);
	if (id === otherReason) return {...calm(dialogue), mode: {kind: 'reason-typed', excused}};
	return isReasonId(id) ? excuse(dialogue, excused, {id}, at) : dialogue;
}

export function typeReason(dialogue: Dialogue, excused: Excused, entry: Entry, at: string): Dialogue {
	const read = readText(textOf(entry).trim());
	if (read.kind !== 'value') return refuse(dialogue, plainly('few-words'));
	return excuse(dialogue, excused, {id: otherReason, typed: read.typed}, at);
}

function excuse(dialogue: Dialogue, excused: Excused, reason: Reason, at: string): Dialogue {
	if (excused.kind === 'strike')
		return act(dialogue, {type: 'strike', place: excused.place, index: excused.index, reason, at});
	// What the override is given for.
	const {progress} = positionOf(dialogue);
	const step = progress.visible.find(({id}) => id === excused.step);
	const problem = step && progress.problemOf(step);
	return problem ? act(dialogue, {type: 'override', step: excused.step, reason, problem, at}) : ask(dialogue);
}

export function chooseStep(
	dialogue: Dialogue,
	{progress, step: current}: Position,
	entry: Entry,
	at: string,
): Dialogue {
	const id = textOf(entry);
	if (id === 'stop') return {...calm(dialogue), mode: {kind: 'stop'}};
	if (id === 'carry-on') return act(dialogue, {type: 'carry-on', at});
	if (id === 'take-back' || id === 'strike') {
		if (!hasReadings(openSeries(dialogue.check))) return refuse(dialogue, plainly('no-reading-yet'));
		return id === 'strike' ? {...calm(dialogue), mode: {kind: 'strike'}} : act(dialogue, {type: 'take-back', at});
	}
	if (id === 'enough' && current?.input.kind === 'rounds')
		return goOnWithFewer(dialogue, current, current.input.place, at);
	const step = progress.visible.find((one) => choiceOf.step(one) === id);
	if (step) return jump(dialogue, progress, step);
	const inStage = progress.visible.filter(({stage}) => choiceOf.stage(stage) === id);
	const [first] = inStage;
	if (!first) return dialogue;
	return inStage.length === 1
		? jump(dialogue, progress, first)
		: {...calm(dialogue), mode: {kind: 'steps', stage: first.stage}};
}

function jump(dialogue: Dialogue, progress: Progress, step: Step): Dialogue {
	const first = firstBefore(dialogue, progress, step);
	return first ? refuse(dialogue, first) : visit(dialogue, step.id);
}
