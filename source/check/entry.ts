import {stepOfRounds} from '../procedure/places.js';
import type {StepId} from '../procedure/step-ids.js';
import type {Action} from './actions.js';
import type {Check} from './check.js';
import {type Dialogue, positionOf} from './dialogue.js';
import {reduce} from './reduce.js';
import {begunAt, nextSlot, type Slot} from './rounds.js';
import {type Because, type Notice, plainly, type Refusal} from './says.js';
import {openSeries} from './series.js';

/** What a face hands over: what was typed or pressed. */
export type Entry =
	| {readonly kind: 'text'; readonly text: string}
	| {readonly kind: 'choose'; readonly id: string}
	| {readonly kind: 'yes'}
	| {readonly kind: 'no'}
	/** The number of what is no longer so. */
	| {readonly kind: 'number'; readonly number: number}
	/** All open lines of a list at once: the numbers of those that are not so, from 1. */
	| {readonly kind: 'marks'; readonly notSo: readonly number[]}
	| {readonly kind: 'back'}
	| {readonly kind: 'steps'}
	| {readonly kind: 'stop'};

/** An entry as text, whatever way it was given. */
export const textOf = (entry: Entry): string => {
	if (entry.kind === 'text') return entry.text;
	if (entry.kind === 'choose') return entry.id;
	if (entry.kind === 'number') return String(entry.number);
	return entry.kind === 'yes' || entry.kind === 'no' ? entry.kind : '';
};

/** Without refusal and detours: the question itself, wherever it stands now. */
export const calm = ({refusal: _refusal, notice: _notice, ...rest}: Dialogue): Dialogue => rest;
export const ask = (dialogue: Dialogue): Dialogue => ({...calm(dialogue), mode: {kind: 'ask'}});
/** The entry is not taken, and it is told why. */
export const refuse = (dialogue: Dialogue, refusal: Refusal): Dialogue => ({...dialogue, refusal});

/** Lets an action happen, and goes where an answer is wanted now. */
export function act(dialogue: Dialogue, action: Action): Dialogue {
	const {visiting: _visiting, ...rest} = ask(dialogue);
	const check = reduce(dialogue.check, action);
	const next = {...rest, check};
	const notice = seriesNotice(dialogue.check, check) ?? backNotice(next, action);
	return notice === undefined ? next : {...next, notice};
}

/** A check that is taken up again: what may have changed meanwhile is asked first. */
export const takenUp = (dialogue: Dialogue, at: string): Dialogue =>
	backAtRound(act(dialogue, {type: 'resume', at}), undefined, at);

/**
 * Comes back to a round that was begun and left before its outer limit was read: it begins anew, with its inner limit.
 *
 * @param from the step that was asked before; undefined where the check had been left
 */
export function backAtRound(next: Dialogue, from: StepId | undefined, at: string): Dialogue {
	const begun = begunAt(next.check);
	const step = positionOf(next).step?.id;
	if (!begun || next.mode.kind !== 'ask' || step !== stepOfRounds(begun) || step === from) return next;
	const check = reduce(next.check, {type: 'begin-anew', at});
	return {...next, check, visiting: {step, slot: nextSlot(check, begun)}, notice: plainly('round-anew')};
}

/** Says why an answer leads back: what came before does not pass any more. */
function backNotice(next: Dialogue, action: Action): Notice | undefined {
	if (action.type !== 'answer') return;
	const {progress, step, stuck} = positionOf(next);
	const places = progress.visible.map(({id}) => id);
	if (!step || !stuck || places.indexOf(step.id) >= places.indexOf(action.step)) return;
	return {id: 'does-not-pass-any-more', values: {step: action.step}};
}

/** Says that the rounds so far are closed: they are kept, and those that come are not mixed with them. */
export function seriesNotice(before: Check, after: Check): Notice | undefined {
	const tried = openSeries(after).trials.length;
	if (after.series.length === before.series.length)
		return tried > openSeries(before).trials.length ? {id: 'setting-kept', values: {number: tried}} : undefined;
	const because = after.series.at(-2)?.closed?.because as Because | undefined;
	return because && {id: 'series-kept', values: {number: after.series.length - 1, because}};
}

/** Goes to a step, or to a reading within it, that is not the one that wants an answer. */
export const visit = (dialogue: Dialogue, step: StepId, slot?: Slot): Dialogue => ({
	...ask(dialogue),
	visiting: slot ? {step, slot} : {step},
});
