import {deckOf} from '../check/deck-state.js';
import type {Dialogue} from '../check/dialogue.js';
import {progressOf} from '../check/progress.js';
import type {Slot} from '../check/rounds.js';
import {type Deck, deckParts} from '../procedure/deck.js';
import type {Step} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';

/** Steps in which the arm is moved and put back: while they are asked it is in somebody's hand. */
const armInHand: readonly StepId[] = [
	'force-reading',
	'force-at-height',
	'guard-gap',
	'clearance',
	'lifter-clear',
	'first-swing',
	'back-force',
];

/** Whether the arm is in the hand while a step is asked. */
export const isArmInHand = ({id}: Step): boolean => armInHand.includes(id);

/** How the deck stands while a reading is asked: the arm lies on the gauge from the first nudge on. */
export const whileAsked = (deck: Deck, slot: Slot | undefined): Deck =>
	slot && deck.arm === 'in-rest' && deck.gauge !== 'away' ? {...deck, arm: 'on-gauge'} : deck;

/** What a step that is confirmed changes on the deck. */
export function changedBy({check, profiles}: Dialogue, step: Step, deck: Deck): readonly (keyof Deck)[] {
	if (isArmInHand(step)) return ['arm'];
	if (step.input.kind !== 'confirm' || !step.leaves) return [];
	const done = {...check, answers: {...check.answers, [step.id]: {typed: 'yes', value: true, at: check.startedAt}}};
	const after = deckOf(done, progressOf(done, profiles));
	return deckParts.filter((part) => after[part] !== deck[part]);
}
