import type {Dialogue, Position} from '../check/dialogue.js';
import {isPassed, type Progress} from '../check/progress.js';
import {type Step, sheetStages} from '../procedure/step.js';
import {words} from '../words/index.js';
import {titleOf} from '../words/step-text.js';
import {answerInWords} from './answer-text.js';
import {line, type Shown} from './shown-lines.js';

const said = words.pages.view;

/** The lines of the page that a question belongs to: what was answered, what is asked, what is still to come. */
export function sheetOf({mode, check}: Dialogue, {step, progress}: Position): readonly Shown[] {
	if (mode.kind === 'ask' && step?.stage === 'back') return stillToDo(step, progress);
	if (mode.kind !== 'ask' || !step || !sheetStages.includes(step.stage)) return [];
	// What is usual was taken of what nobody is asked.
	const isTaken = (one: Step) => one !== step && !check.answers[one.id] && progress.stateOf(one) === 'done';
	return progress.visible
		.filter((one) => one.stage === step.stage && one.input.kind !== 'profile' && !isTaken(one))
		.map(({id}) => {
			const title = titleOf(id);
			if (id === step.id) return line(said.sheetLineAsked({title}), 'strong');
			const answer = check.answers[id];
			const typed = answer && answerInWords(id, answer, progress.facts);
			return line(said.sheetLine({title, typed}), typed === undefined ? 'aside' : 'plain');
		});
}

/** The list by which the deck is put back: what is done, what is asked, what is still to come. */
const stillToDo = (asked: Step, {visible, stateOf}: Progress): readonly Shown[] =>
	visible
		.filter(({stage}) => stage === asked.stage)
		.map((step) => {
			if (step === asked) return line(said.sheetLineAsked({title: titleOf(step.id)}), 'strong');
			return line(titleOf(step.id), isPassed(stateOf(step)) ? 'good' : 'plain');
		});
