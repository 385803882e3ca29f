import type {Dialogue} from '../check/dialogue.js';
import {following} from '../check/following.js';
import {type Entry, respond} from '../check/respond.js';
import type {Saved, Workbench} from '../workbench.js';
import {anotherArm} from './another-arm.js';

/** Where an entry in a check leads. */
export type CheckTurn =
	/** Back from the first question, or on to another invented arm. */
	| {readonly kind: 'home'}
	/** The next question; or the same one, and one sentence why (`refusal`). */
	| {readonly kind: 'go' | 'refused'; readonly dialogue: Dialogue}
	/** An answer, to be put on the disk before the next question shows. */
	| {readonly kind: 'save'; readonly dialogue: Dialogue};

export function checkTurn(dialogue: Dialogue, entry: Entry, now: string): CheckTurn {
	if (entry.kind === 'choose' && entry.id === anotherArm) return {kind: 'home'};
	const next = respond(dialogue, entry, now);
	if (!next) return {kind: 'home'};
	if (next.check !== dialogue.check) return {kind: 'save', dialogue: next};
	return {kind: next.refusal === undefined ? 'go' : 'refused', dialogue: next};
}

/** A dialogue whose answer is on the disk: with what the workbench has noted beside it, and with what is on file by now. */
export const afterSaving = (
	next: Dialogue,
	{kept = next.check, notice}: Extract<Saved, {ok: true}>,
	workbench: Workbench,
): Dialogue => {
	const history = workbench.archive.history(kept);
	return {
		...next,
		check: following(kept, history),
		...(notice === undefined ? {} : {notice}),
		profiles: workbench.profiles(),
		history,
	};
};
