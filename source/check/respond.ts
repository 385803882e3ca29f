import {nameOf} from '../procedure/names.js';
import {answerStep, chooseSide, chooseWay} from './answer-step.js';
import {chooseReason, chooseStep, chooseStruck, chooseVerdict, typeReason} from './detours.js';
import {type Dialogue, type Position, positionOf} from './dialogue.js';
import {wasLeft} from './doubts.js';
import {act, ask, backAtRound, calm, type Entry, refuse, takenUp} from './entry.js';
import {goBack} from './go-back.js';
import {promptOf} from './prompt.js';
import {begunAt} from './rounds.js';
import {plainly} from './says.js';

export type {Entry} from './entry.js';

/** The dialogue after an entry; `back` from the very first step gives undefined: leave for home. */
export function respond(dialogue: Dialogue, entry: Entry, at: string): Dialogue | undefined {
	const back = wasLeft(dialogue.check, at) ? takenUp(dialogue, at) : undefined;
	if (back && (back.notice || positionOf(back).step?.input.kind === 'still'))
		return refuse(back, plainly('time-passed'));
	// Where no doubt is asked now, it is kept for the case that the probe is taken up again.
	const here = back && back.check.doubts.length > 0 ? {...dialogue, check: back.check} : dialogue;
	const next = taken(here, entry, at);
	// Where the last reading of a whole round was taken back, the arm still lies where it was.
	return next && begunAt(here.check) ? backAtRound(next, positionOf(here).step?.id, at) : next;
}

function taken(dialogue: Dialogue, entry: Entry, at: string): Dialogue | undefined {
	const position = positionOf(dialogue);
	if (entry.kind === 'back') return goBack(dialogue, position);
	if (entry.kind === 'steps') return {...calm(dialogue), mode: {kind: 'steps'}};
	if (entry.kind === 'stop') return {...calm(dialogue), mode: {kind: 'stop'}};
	if (entry.kind === 'text' && isReadingOnList(dialogue, position, entry.text))
		return refuse(dialogue, {id: 'no-reading-here', values: {typed: entry.text}});
	const {mode} = dialogue;
	switch (mode.kind) {
		case 'ask':
			return answerStep(dialogue, position, entry, at);
		case 'ways':
			return position.step ? chooseWay(dialogue, position, position.step, entry, at) : dialogue;
		case 'side':
			return chooseSide(dialogue, position, entry, at);
		case 'reason':
			return chooseReason(dialogue, mode.excused, entry, at);
		case 'reason-typed':
			return typeReason(dialogue, mode.excused, entry, at);
		case 'strike':
			return chooseStruck(dialogue, entry);
		case 'other-way':
			return position.step ? chooseVerdict(dialogue, position.step, entry, at) : dialogue;
		case 'steps':
			return chooseStep(dialogue, position, entry, at);
		case 'stop':
			return entry.kind === 'yes' ? act(dialogue, {type: 'stop', at}) : ask(dialogue);
	}
}

/** A reading typed where a list is shown must not pass for a line of it: a line is its whole number, its id or its name. */
function isReadingOnList(dialogue: Dialogue, position: Position, text: string): boolean {
	const typed = text.trim();
	if (!/\d/.test(typed) || /^\d+$/.test(typed)) return false;
	const prompt = promptOf(dialogue, position);
	if (prompt.kind === 'choice' && prompt.several && /^[\d\s,]+$/.test(typed)) return false;
	const {step} = position;
	return (
		prompt.kind === 'choice' &&
		!prompt.options.some(({id}) => id === typed || (step && nameOf(dialogue.names, step.id, id) === typed))
	);
}
