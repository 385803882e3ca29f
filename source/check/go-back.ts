import {isPlaceOffScale} from '../procedure/hold-limits.js';
import {afterStop, stepById} from '../procedure/index.js';
import type {Place} from '../procedure/places.js';
import type {Step} from '../procedure/step.js';
import type {Check} from './check.js';
import {deckOf, keptBy} from './deck-state.js';
import type {Dialogue, Position} from './dialogue.js';
import {ask, calm, visit} from './entry.js';
import {isPassed, type Progress} from './progress.js';
import {hasEnough, nextSlot, type Slot, slotBefore} from './rounds.js';
import type {Refusal} from './says.js';

/** Where Esc leads: out of a detour, else to the last screen that was answered. Undefined: out of the check. */
export function goBack(dialogue: Dialogue, position: Position): Dialogue | undefined {
	const {mode, check} = dialogue;
	const {progress, step, slot} = position;
	if (mode.kind === 'steps' && mode.stage) return {...calm(dialogue), mode: {kind: 'steps'}};
	if (mode.kind === 'reason-typed') return {...calm(dialogue), mode: {kind: 'reason', excused: mode.excused}};
	if (mode.kind !== 'ask') return ask(dialogue);
	if (step?.input.kind === 'rounds') {
		const before = slot ? slotBefore(check, slot) : lastSlot(check, step.input.place);
		if (before) return visit(dialogue, step.id, before);
	}
	const {visible, facts} = progress;
	const index = step ? visible.indexOf(step) : visible.length;
	const isFilled = fillings(check);
	const previous = visible
		.slice(0, index)
		.findLast((one) => !isOut(check, one) && !isFilled(one) && !firstBefore(dialogue, progress, one));
	if (!previous) return;
	if (previous.input.kind !== 'rounds') return visit(dialogue, previous.id);
	const {place} = previous.input;
	// Gone past with fewer rounds than usual: what comes after enough of them was never shown.
	const isListShown = hasEnough(check, place) || isPlaceOffScale(facts, place);
	return visit(dialogue, previous.id, isListShown ? undefined : lastSlot(check, place));
}

const lastSlot = (check: Check, place: Place): Slot | undefined => slotBefore(check, nextSlot(check, place));

/** A step that nobody has answered; or that stays as it is, since a filed check was opened again for its put-back list. */
const isOut = ({answers, reopened}: Check, {id, stage}: Step): boolean =>
	!answers[id] || (reopened === true && !afterStop.includes(stage));

/**
 * Which answers nobody has typed: they came all at once, with the check that is repeated or a deck that was prepared, or
 * with a profile, when it was picked.
 */
function fillings({answers, recheckOf, practice}: Check): (step: Step) => boolean {
	const given = Object.entries(answers);
	const beginsFilled = recheckOf !== undefined || practice?.isPrepared === true;
	const first = beginsFilled ? Math.min(...given.map(([, {at}]) => Date.parse(at))) : Number.NaN;
	const picks = given.flatMap(([id, {value, at}]) => (isPicker(stepById(id)) && value !== 'new' ? [at] : []));
	return (step) => {
		const {at = ''} = answers[step.id] ?? {};
		return Date.parse(at) === first || (!isPicker(step) && picks.includes(at));
	};
}

const isPicker = (step: Step | undefined): boolean => step?.input.kind === 'profile';

/** What keeps a step from being asked out of its turn: it is open still, or the deck does not stand as it wants it. */
export function firstBefore({check}: Dialogue, progress: Progress, step: Step): Refusal | undefined {
	const {stateOf, current} = progress;
	if (step === current || isPassed(stateOf(step))) return;
	const isKept = stateOf(step) === 'open' || keptBy(deckOf(check, progress), step, progress).length > 0;
	return isKept ? {id: 'comes-first', values: {step: step.id, first: current?.id}} : undefined;
}
