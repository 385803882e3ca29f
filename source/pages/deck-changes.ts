import {deckOf} from '../check/deck-state.js';
import type {Dialogue} from '../check/dialogue.js';
import {progressOf} from '../check/progress.js';
import {type Deck, deckParts} from '../procedure/deck.js';
import type {Step} from '../procedure/step.js';

/** What a step that is confirmed changes on the deck. */
export function changedBy({check, profiles}: Dialogue, step: Step, deck: Deck): readonly (keyof Deck)[] {
	if (step.input.kind !== 'confirm' || !step.leaves) return [];
	const done = {...check, answers: {...check.answers, [step.id]: {typed: 'yes', value: true, at: check.startedAt}}};
	const after = deckOf(done, progressOf(done, profiles));
	return deckParts.filter((part) => after[part] !== deck[part]);
}
