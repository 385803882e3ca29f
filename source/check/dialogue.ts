import type {Facts, Profile} from '../procedure/facts.js';
import {isPlaceOffScale} from '../procedure/hold-limits.js';
import {type Names, nameOf} from '../procedure/names.js';
import type {Place} from '../procedure/places.js';
import type {Problem} from '../procedure/problem.js';
import {readAnswer, unitOf} from '../procedure/read-answer.js';
import type {Sides, StageId, Step} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';
import {withUnit} from '../procedure/typed-text.js';
import type {Check} from './check.js';
import {following} from './following.js';
import type {PastCheck} from './past-check.js';
import {type Progress, progressOf} from './progress.js';
import {hasEnough, nextSlot, readingAt, type Slot} from './rounds.js';
import type {Notice, Refusal} from './says.js';
import {openSeries} from './series.js';

/** What a reason is asked for. */
export type Excused =
	| {readonly kind: 'override'; readonly step: StepId}
	| {readonly kind: 'strike'; readonly place: Place; readonly index: number};

/** What the dialogue is about beside the question itself. */
export type Mode =
	| {readonly kind: 'ask'}
	/** A size was typed without its side: one key says which. */
	| {readonly kind: 'side'; readonly typed: string; readonly sides: Sides}
	/** The ways out of an answer that does not pass. */
	| {readonly kind: 'ways'}
	| {readonly kind: 'reason'; readonly excused: Excused}
	| {readonly kind: 'reason-typed'; readonly excused: Excused}
	| {readonly kind: 'strike'}
	/** What else can be done at the verdict than its next action. */
	| {readonly kind: 'other-way'}
	| {readonly kind: 'steps'; readonly stage?: StageId}
	| {readonly kind: 'stop'};

/**
 * One conversation over one check, shared by all faces: a face draws it and hands over what was typed. Nothing of it
 * but the check is stored; where it stands is computed from the answers.
 */
export type Dialogue = {
	readonly check: Check;
	readonly profiles: readonly Profile[];
	/** Earlier checks of this arm that count, newest first. */
	readonly history: readonly PastCheck[];
	/** Of the language in which the check is held; what is typed is kept by them. */
	readonly names?: Names;
	/** For those who know the way: a whole list is ticked with one key, and steps are asked in short words. */
	readonly isBrisk?: boolean;
	readonly mode: Mode;
	/** A step that someone went back or jumped to, although another one wants an answer. */
	readonly visiting?: {readonly step: StepId; readonly slot?: Slot};
	/** Why the last entry was not taken. */
	readonly refusal?: Refusal;
	/** Something that happened with the last entry and is not to be seen otherwise. */
	readonly notice?: Notice;
};

export const startDialogue = (
	check: Check,
	profiles: readonly Profile[],
	history: readonly PastCheck[] = [],
	names?: Names,
	isBrisk = false,
): Dialogue => ({
	check: following(check, history),
	profiles,
	history,
	...(names ? {names} : {}),
	...(isBrisk ? {isBrisk} : {}),
	mode: {kind: 'ask'},
});

/** Whether a list is asked as a whole: with n it is asked line by line. */
export const ticksAtOnce = ({check, isBrisk = false}: Dialogue, {id}: Step): boolean =>
	isBrisk && check.answers[id] === undefined;

/** What is on the screen: the step, and within a probe the reading that is asked for. */
export type Position = {
	readonly progress: Progress;
	/** Undefined when the check is complete. */
	readonly step: Step | undefined;
	/** The reading that is asked for; undefined when the rounds of this place are shown to go on from. */
	readonly slot: Slot | undefined;
	/** The answer does not pass. */
	readonly stuck: boolean;
	/** It can be mended by typing another one: the field stays open, and the ways out are an Enter away. */
	readonly mendable: boolean;
};

export function positionOf({check, profiles, visiting}: Dialogue): Position {
	const progress = progressOf(check, profiles);
	const visited = visiting && progress.visible.find((one) => one.id === visiting.step);
	const step = visited ?? progress.current;
	const stuck = step !== undefined && progress.stateOf(step) === 'problem';
	const mendable = stuck && isMendable(step, progress.problemOf(step));
	return {
		progress,
		step,
		slot: slotAt(check, progress.facts, step, visited ? visiting?.slot : undefined),
		stuck,
		mendable,
	};
}

/** A number that is wrong by itself, not one of several readings that belong together. */
function isMendable({id, input}: Step, problem: Problem | undefined): boolean {
	const [first] = problem?.ways ?? [];
	return input.kind === 'number' && first?.do === 'ask-again' && first.steps.length === 1 && first.steps[0] === id;
}

function slotAt(check: Check, facts: Facts, step: Step | undefined, chosen: Slot | undefined): Slot | undefined {
	if (step?.input.kind !== 'rounds') return;
	if (chosen) return chosen;
	const {place} = step.input;
	const pending = nextSlot(check, place);
	if (pending.which === 'outerLimit') return pending;
	if (check.answers[step.id] || isPlaceOffScale(facts, place) || hasEnough(check, place)) return;
	return pending;
}

/** What stood in a field before: the earlier answer, or what the step suggests. */
export function earlierText(dialogue: Dialogue, {step, slot, progress, mendable}: Position): string {
	if (!step) return '';
	// What has just been refused is not offered again.
	if (mendable) return '';
	if (slot) return readingAt(openSeries(dialogue.check), slot)?.typed ?? '';
	const answer = dialogue.check.answers[step.id];
	if (answer?.again && step.typedAnew) return '';
	const earlier = answer?.typed;
	// Under another unit of the gauge the earlier text may no longer be an answer.
	if (earlier !== undefined && readAnswer(step, earlier, progress.facts).kind !== 'refused') return earlier;
	const suggested = nameOf(dialogue.names, step.id, step.suggest?.(progress.facts) ?? '');
	return step.input.kind === 'number' ? withUnit(suggested, unitOf(step.input, progress.facts)) : suggested;
}
