import type {Facts, Profile} from '../procedure/facts.js';
import {isOffScale} from '../procedure/hold-limits.js';
import {readAnswer} from '../procedure/read-answer.js';
import type {Place, Sides, StageId, Step} from '../procedure/step.js';
import type {Check} from './check.js';
import {type Progress, progressOf} from './progress.js';
import {hasEnough, nextSlot, readingAt, type Slot} from './rounds.js';
import {openSeries} from './series.js';

/** What a reason is asked for. */
export type Excused =
	| {readonly kind: 'override'; readonly step: string}
	| {readonly kind: 'strike'; readonly place: Place; readonly index: number};

/** What the dialogue is about beside the question itself. */
export type Mode =
	| {readonly kind: 'ask'}
	/** A size was typed without its side: one key says which. */
	| {readonly kind: 'side'; readonly typed: string; readonly size: number; readonly sides: Sides}
	| {readonly kind: 'reason'; readonly excused: Excused}
	| {readonly kind: 'reason-typed'; readonly excused: Excused}
	| {readonly kind: 'strike'}
	| {readonly kind: 'remedy'}
	| {readonly kind: 'steps'; readonly stage?: StageId}
	| {readonly kind: 'stop'};

/**
 * One conversation over one check, shared by all faces: a face draws it and hands over what was typed. Nothing of it
 * but the check is stored; where it stands is computed from the answers.
 */
export type Dialogue = {
	readonly check: Check;
	readonly profiles: readonly Profile[];
	readonly mode: Mode;
	/** A step that someone went back or jumped to, although another one wants an answer. */
	readonly visiting?: {readonly step: string; readonly slot?: Slot};
	/** Why the last entry was not taken. */
	readonly refusal?: string;
	/** A reading put together from what was typed and the side that was chosen: shown with its consequence, then accepted. */
	readonly draft?: string;
};

export const startDialogue = (check: Check, profiles: readonly Profile[]): Dialogue => ({
	check,
	profiles,
	mode: {kind: 'ask'},
});

/** What is on the screen: the step, and within a probe the reading that is asked for. */
export type Position = {
	readonly progress: Progress;
	/** Undefined when the check is complete. */
	readonly step: Step | undefined;
	/** The reading that is asked for; undefined when the rounds of this place are shown to go on from. */
	readonly slot: Slot | undefined;
	/** The answer fails and the ways out are offered. */
	readonly stuck: boolean;
};

export function positionOf({check, profiles, visiting}: Dialogue): Position {
	const progress = progressOf(check, profiles);
	const visited = visiting && progress.visible.find((one) => one.id === visiting.step);
	const step = visited ?? progress.current;
	const stuck = step !== undefined && progress.stateOf(step) === 'problem';
	return {progress, step, slot: slotAt(check, progress.facts, step, visited ? visiting?.slot : undefined), stuck};
}

function slotAt(check: Check, facts: Facts, step: Step | undefined, chosen: Slot | undefined): Slot | undefined {
	if (step?.input.kind !== 'rounds') return;
	if (chosen) return chosen;
	const series = openSeries(check);
	const {place} = step.input;
	const pending = nextSlot(series, place);
	if (pending.which === 'outerLimit') return pending;
	if (check.answers[step.id] || isOffScale(facts, place) || hasEnough(series, place)) return;
	return pending;
}

/** What stood in a field before: the earlier answer, or what the step suggests. */
export function earlierText(dialogue: Dialogue, {step, slot, progress}: Position): string {
	if (!step) return '';
	if (dialogue.draft !== undefined) return dialogue.draft;
	if (slot) return readingAt(openSeries(dialogue.check), slot)?.typed ?? '';
	const earlier = dialogue.check.answers[step.id]?.typed;
	// Under another unit of the gauge the earlier text may no longer be an answer.
	if (earlier !== undefined && readAnswer(step, earlier, progress.facts).kind !== 'refused') return earlier;
	return step.suggest?.(progress.facts) ?? '';
}
