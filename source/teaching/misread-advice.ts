import type {Check} from '../check/check.js';
import type {DeckState} from '../check/practice-notes.js';
import {progressOf} from '../check/progress.js';
import {isAbove} from '../measures/compare.js';
import {readAnswer} from '../procedure/read-answer.js';
import type {Step} from '../procedure/step.js';
import {lessonOf, specOn} from './deck.js';
import {instruments} from './instruments.js';

/** How far a typed number may be off what the instrument showed, in base units; instruments that are not here are not judged. */
const toleranceOf: Readonly<Record<string, number>> = {
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
	const {visible} = progressOf(check);
	const decksFor = ({id}: Step): DeckState[] =>
		id.startsWith('level-') ? [practice.deck] : [{done: []}, practice.deck];
	return visible.flatMap((step) => misread(check, step, decksFor(step)));
}

function misread(check: Check, step: Step, decks: readonly DeckState[]): string[] {
	const tolerance = toleranceOf[step.id];
	const answer = check.answers[step.id];
	if (tolerance === undefined || typeof answer?.value !== 'number' || !check.practice) return [];
	const lesson = lessonOf(check.practice);
	const {facts} = progressOf(check);
	const shown = decks.flatMap(
		(deck) => instruments[step.id]?.answer?.({lesson, spec: specOn(lesson, deck), done: deck.done, facts}) ?? [],
	);
	const isRight = shown.some((text) => {
		const read = readAnswer(step, text, facts);
		return (
			read.kind === 'value' &&
			typeof read.value === 'number' &&
			!isAbove(Math.abs(read.value - Number(answer.value)), tolerance)
		);
	});
	return isRight || shown.length === 0
		? []
		: [`${step.title}: ${answer.typed} was typed, the instrument showed ${shown.at(-1)}.`];
}
