import type {Answer, Check} from '../check/check.js';
import type {DeckState} from '../check/practice-notes.js';
import {progressOf} from '../check/progress.js';
import {isAbove} from '../measures/compare.js';
import type {Facts} from '../procedure/facts.js';
import {readAnswer} from '../procedure/read-answer.js';
import type {Step} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';
import {words} from '../words/index.js';
import {titleOf} from '../words/step-text.js';
import {lessonOf, specOn} from './deck.js';
import {instruments} from './instruments.js';

/** How far a typed number may be off what the instrument showed, in base units; instruments that are not here are not judged. */
const toleranceOf: Readonly<Partial<Record<StepId, number>>> = {
	'level-lr-1': 0.1,
	'level-lr-2': 0.1,
	'level-fb-1': 0.1,
	'level-fb-2': 0.1,
	'force-reading': 0.2,
	'force-at-height': 0.2,
	'mat-thickness': 0.2,
	clearance: 0.3,
	'back-force': 0.2,
};

/**
 * Instruments that were not typed as they showed. Where hands were at the deck in between, what they showed before counts as
 * right too; but a level that was turned is to be read anew.
 */
export function misreadAdvice(check: Check): string[] {
	const {practice} = check;
	if (!practice) return [];
	const {visible, facts} = progressOf(check);
	const lesson = lessonOf(practice);
	const decksFor = ({stage}: Step): DeckState[] => (stage === 'level' ? [practice.deck] : [{done: []}, practice.deck]);
	const judged = visible.filter(({id}) => toleranceOf[id] !== undefined);
	return judged.flatMap((step) => {
		const shown = decksFor(step).flatMap(
			(deck) => instruments[step.id]?.answer?.({lesson, spec: specOn(lesson, deck), done: deck.done, facts}) ?? [],
		);
		return misread(step, check.answers[step.id], shown, facts);
	});
}

/** @param shown what the instrument showed, as it would be typed; any of it counts as right */
function misread(step: Step, answer: Answer | undefined, shown: readonly string[], facts: Facts): string[] {
	const tolerance = toleranceOf[step.id];
	const value = answer?.value;
	const last = shown.at(-1);
	if (tolerance === undefined || !answer || typeof value !== 'number' || last === undefined) return [];
	const isRight = shown.some((text) => {
		const read = readAnswer(step, text, facts);
		return read.kind === 'value' && typeof read.value === 'number' && !isAbove(Math.abs(read.value - value), tolerance);
	});
	return isRight ? [] : [words.practice.advice.misread({step: titleOf(step.id), typed: answer.typed, shown: last})];
}
