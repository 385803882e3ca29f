import type {ReadingNote} from '../../source/check/practice-notes.js';
import {type Place, stepOfRounds} from '../../source/procedure/places.js';
import {adviceLines} from '../../source/teaching/advice.js';
import {standingReadings} from '../../source/teaching/truth-lines.js';
import {type AtPractice, begun, checkOf, goneOn, type Habits, wordsOf} from './practised.js';
import {words} from './said.js';

/** What a practice check is told to do better, a line for each advice. */
export const adviceOf = (here: AtPractice): readonly string[] => {
	const check = checkOf(here);
	return wordsOf(adviceLines(check, standingReadings(check))).split('\n');
};

/** Up to the verdict, on a deck that somebody else has prepared. */
export const prepared = (arm: string, habits: Habits = {}): AtPractice =>
	goneOn(begun({arm, seed: 1, isPrepared: true}), habits, 'verdict');

/** Up to the verdict, from the first question. */
export const whole = (arm: string, habits: Habits = {}): AtPractice =>
	goneOn(begun({arm, seed: 1, isPrepared: false}), habits, 'verdict');

export const {praise} = words.practice.advice;

/** Readings of a place as advice names them. */
export const readingsAt = (
	{bench}: AtPractice,
	place: Place,
	when: (note: ReadingNote) => boolean = () => true,
): readonly (ReadingNote & {readonly place: Place})[] =>
	bench.notes.readings
		.filter((note) => note.step === stepOfRounds(place) && when(note))
		.map((note) => ({...note, place}));
