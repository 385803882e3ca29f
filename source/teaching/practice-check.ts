import type {Check} from '../check/check.js';
import {startDialogue} from '../check/dialogue.js';
import type {PracticeNotes} from '../check/practice-notes.js';
import {lessonArms} from '../practice/arms.js';
import {practiceWords} from '../words/practice.js';
import {names} from '../words/step-text.js';
import {lessonOf} from './deck.js';
import {knownAnswers} from './prepared.js';

/** What is practised. */
export type PracticeTask = {
	/** Id of an invented arm; without one the seed chooses. */
	readonly arm: string | undefined;
	readonly seed: number;
	/** Everything before the probe was done by somebody else. */
	readonly isPrepared: boolean;
	/** How many rounds at each radius, where it is fewer than usual. */
	readonly roundsEach?: number;
};

/** What is kept beside a practice check that begins. */
export function newNotes({arm, seed, isPrepared, roundsEach}: PracticeTask): PracticeNotes {
	const chosen = arm ?? lessonArms[seed % lessonArms.length]?.id ?? '';
	return {
		arm: chosen,
		seed,
		isPrepared,
		...(roundsEach === undefined ? {} : {roundsEach}),
		deck: {done: []},
		readings: [],
		isRevealed: false,
		...(arm === undefined ? {isHidden: true} : {}),
	};
}

/** What the arm is called in its check: a hidden one has a number instead of its name. */
export const armNameOf = (notes: PracticeNotes): string =>
	notes.isHidden ? practiceWords.bench.hiddenArm(notes) : practiceWords.arms[lessonOf(notes).id].name;

/** A new check of an invented arm: what is known of arm and tools is filled in. */
export function practiceCheck(blank: Check, notes: PracticeNotes): Check {
	const check = {...blank, practice: notes};
	return {
		...check,
		answers: knownAnswers(startDialogue(check, [], [], names), armNameOf(notes)),
	};
}
