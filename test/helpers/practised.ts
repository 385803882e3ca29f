import type {Check} from '../../source/check/check.js';
import {type Dialogue, positionOf, startDialogue} from '../../source/check/dialogue.js';
import {promptOf} from '../../source/check/prompt.js';
import {newCheck} from '../../source/check/reduce.js';
import {type Entry, respond} from '../../source/check/respond.js';
import {issuedOf} from '../../source/pages/issued.js';
import type {Shown} from '../../source/pages/shown-lines.js';
import {limitsOf, usualSettings} from '../../source/procedure/settings.js';
import {BenchAtWork} from '../../source/teaching/bench-at-work.js';
import {benchNow, handsAt} from '../../source/teaching/bench-state.js';
import type {Deed} from '../../source/teaching/deck.js';
import {instruments} from '../../source/teaching/instruments.js';
import {armNameOf, newNotes, type PracticeTask, practiceCheck} from '../../source/teaching/practice-check.js';
import {preparedBy} from '../../source/teaching/prepared.js';
import {readingWanted, type Wanted} from '../../source/teaching/reading-wanted.js';
import {truthLines} from '../../source/teaching/truth-lines.js';
import {says} from '../../source/words/says.js';
import {limitFound} from './hand-at-bench.js';
import {idFor} from './invented-checks.js';
import {clockFrom} from './script.js';

/** An invented bench and the conversation about it, as a face holds them; what is answered is kept as when it is saved. */
export type AtPractice = {readonly bench: BenchAtWork; readonly dialogue: Dialogue; readonly now: () => string};

const startedAt = '2026-03-02T09:00:00Z';

/** A practice check that begins, at its first question or, prepared by somebody else, at the probe. */
export function begun(lesson: PracticeTask): AtPractice {
	const bench = new BenchAtWork(newNotes(lesson));
	const blank = newCheck({
		id: idFor(startedAt),
		at: startedAt,
		program: '0.0.0',
		limits: limitsOf(usualSettings),
		setAnew: true,
	});
	const dialogue = startDialogue(practiceCheck(blank, bench.notes), []);
	const start = lesson.isPrepared ? preparedBy(dialogue, bench.state, armNameOf(bench.notes), startedAt) : dialogue;
	return {bench, dialogue: start, now: clockFrom(startedAt)};
}

/** The same after an entry, which must be taken. */
export function answered({bench, dialogue, now}: AtPractice, entry: Entry): AtPractice {
	bench.shown(dialogue);
	const next = respond(dialogue, entry, now());
	if (!next || next.refusal !== undefined)
		throw new Error(
			`${positionOf(dialogue).step?.id} refused ${JSON.stringify(entry)}: ${next?.refusal && says.refusal(next.refusal)}`,
		);
	bench.saved(bench.noted(next));
	return {bench, dialogue: next, now};
}

/** How a technician goes about it; without anything they are careful, and take the deck as it is. */
export type Habits = {
	/** What they do by hand where it is offered. */
	readonly deeds?: readonly Deed[];
	/** Answers of their own, by step; a choice by its id. */
	readonly answers?: Readonly<Record<string, string>>;
	/** How they come to a reading; a careful hand unless told otherwise. */
	readonly hand?: (bench: BenchAtWork, dialogue: Dialogue) => string;
};

/** The entry of a technician who types what the bench shows. */
function entryAt({bench, dialogue}: AtPractice, {answers = {}, hand = limitFound}: Habits): Entry {
	const prompt = promptOf(dialogue);
	const {step, progress} = positionOf(dialogue);
	if (readingWanted(dialogue)) return {kind: 'text', text: hand(bench, dialogue)};
	const own = step && answers[step.id];
	const shown = step && instruments[step.id]?.answer?.(benchNow(bench.state, progress.facts));
	const answer = own ?? shown;
	switch (prompt.kind) {
		case 'choice': {
			const wishes = [answer, prompt.initial, 'override', prompt.options[0]?.id];
			const id = wishes.find((wish) => prompt.options.some((one) => one.id === wish)) ?? '';
			return {kind: 'choose', id};
		}
		case 'field':
			return {kind: 'text', text: answer ?? prompt.initial};
		default:
			return {kind: 'yes'};
	}
}

/** Does by hand what is offered and meant to be done. */
function doDeeds({bench, dialogue}: AtPractice, {deeds = []}: Habits): void {
	bench.shown(dialogue);
	const hands = handsAt(bench.state, dialogue);
	if (hands && deeds.includes(hands.deed)) bench.doByHand(dialogue);
}

// More entries than a whole check with two bias settings has.
const mostEntries = 400;

/** Goes on to the end of the check, or to a step. */
export const goneOn = (start: AtPractice, habits: Habits = {}, until?: string): AtPractice =>
	goneTo(start, habits, ({dialogue}) => dialogue.mode.kind === 'ask' && positionOf(dialogue).step?.id === until);

/** Goes on to a reading of a step: a round, counted from 0, and its limit. */
export const goneToReading = (
	start: AtPractice,
	step: string,
	round: Pick<Wanted, 'index' | 'which'>,
	habits: Habits = {},
): AtPractice =>
	goneTo(start, habits, ({dialogue}) => {
		const wanted = readingWanted(dialogue);
		return wanted?.step === step && wanted.index === round.index && wanted.which === round.which;
	});

function goneTo(start: AtPractice, habits: Habits, isThere: (here: AtPractice) => boolean): AtPractice {
	let here = start;
	for (let entries = 0; entries < mostEntries; entries++) {
		if (!positionOf(here.dialogue).step || isThere(here)) return here;
		doDeeds(here, habits);
		here = answered(here, entryAt(here, habits));
	}
	throw new Error(`Still at ${positionOf(here.dialogue).step?.id}.`);
}

/** The check as it is kept, with the notes of its bench. */
export const checkOf = ({bench, dialogue}: AtPractice): Check => ({...dialogue.check, practice: bench.notes});

/** A whole check, what its figures and findings are, and what is said at its end. */
export function practised(lesson: PracticeTask, habits: Habits = {}) {
	const check = checkOf(goneOn(begun(lesson), habits));
	const issued = issuedOf(check);
	const truth = truthLines(check, issued);
	return {check, issued, codes: (issued?.findings ?? []).map(({code}) => code), truth, said: wordsOf(truth)};
}

export const wordsOf = (shown: readonly Shown[]): string =>
	shown
		.map((one) => (one.kind === 'line' ? one.text : one.caption))
		.join('\n')
		.replaceAll('\u00a0', ' ');
