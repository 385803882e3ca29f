import {afterStop} from '../procedure/index.js';
import {chooseSide} from './answer-rounds.js';
import {answerStep, chooseWay} from './answer-step.js';
import {chooseReason, chooseRemedy, chooseStep, chooseStruck, firstBefore, typeReason} from './detours.js';
import {type Dialogue, type Position, positionOf} from './dialogue.js';
import {wasLeft} from './doubts.js';
import {act, ask, calm, type Entry, refuse, visit} from './entry.js';
import {nextSlot, type Slot, slotBefore} from './rounds.js';
import {plainly} from './says.js';

export type {Entry} from './entry.js';

/** The dialogue after an entry; `back` from the very first step gives undefined: leave for home. */
export function respond(dialogue: Dialogue, entry: Entry, at: string): Dialogue | undefined {
	const back = wasLeft(dialogue.check, at) ? act(dialogue, {type: 'resume', at}) : undefined;
	if (back && positionOf(back).step?.input.kind === 'still') return refuse(back, plainly('time-passed'));
	// Where no doubt is asked now, it is kept for the case that the probe is taken up again.
	return taken(back && back.check.doubts.length > 0 ? {...dialogue, check: back.check} : dialogue, entry, at);
}

function taken(dialogue: Dialogue, entry: Entry, at: string): Dialogue | undefined {
	const position = positionOf(dialogue);
	if (entry.kind === 'back') return goBack(dialogue, position);
	if (entry.kind === 'steps') return {...calm(dialogue), mode: {kind: 'steps'}};
	if (entry.kind === 'stop') return {...calm(dialogue), mode: {kind: 'stop'}};
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
		case 'remedy':
			return chooseRemedy(dialogue, entry, at);
		case 'steps':
			return chooseStep(dialogue, position, entry, at);
		case 'stop':
			return entry.kind === 'yes' ? act(dialogue, {type: 'stop', at}) : ask(dialogue);
	}
}

function goBack(dialogue: Dialogue, {progress, step, slot}: Position): Dialogue | undefined {
	const {mode} = dialogue;
	if (mode.kind === 'steps' && mode.stage) return {...calm(dialogue), mode: {kind: 'steps'}};
	if (mode.kind === 'reason-typed') return {...calm(dialogue), mode: {kind: 'reason', excused: mode.excused}};
	if (mode.kind !== 'ask') return ask(dialogue);
	if (step?.input.kind === 'rounds') {
		const before = slot ? slotBefore(dialogue.check, slot) : lastSlot(dialogue, step.input.place);
		if (before) return visit(dialogue, step.id, before);
	}
	const {visible} = progress;
	const index = step ? visible.indexOf(step) : visible.length;
	const previous = visible[index - 1];
	const isOut =
		!previous || previous.input.kind === 'still' || (dialogue.check.reopened && !afterStop.includes(previous.stage));
	if (isOut) return;
	const first = firstBefore(dialogue, progress, previous);
	return first ? refuse(ask(withoutVisit(dialogue)), first) : visit(dialogue, previous.id);
}

const withoutVisit = ({visiting: _visiting, ...rest}: Dialogue): Dialogue => rest;

function lastSlot({check}: Dialogue, place: Slot['place']): Slot | undefined {
	return slotBefore(check, nextSlot(check, place));
}
