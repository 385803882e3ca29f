import type {Check} from '../check/check.js';
import {type Dialogue, positionOf} from '../check/dialogue.js';
import type {PracticeNotes, ReadingNote} from '../check/practice-notes.js';
import {newPracticeArm, withChange} from '../practice/practice-arm.js';
import {nextLimit, nudged, type Probing, type Push, passed, probingAt, restWith} from '../practice/probing.js';
import type {Facts} from '../procedure/facts.js';
import {inGaugeUnit} from '../procedure/hold-limits.js';
import {signOfPlus} from '../procedure/readings.js';
import {practiceWords} from '../words/practice.js';
import type {Nudge} from '../workbench.js';
import {lessonOf, specOn, withDeed} from './deck.js';
import {type HandsOn, handsOn, isLevel} from './hands.js';
import type {BenchNow} from './instruments.js';
import {readingIn, readingWanted, type Wanted} from './reading-wanted.js';

/** An invented bench at one moment: what was done to the deck, the arm on its gauge, and the hand at it. */
export type BenchState = {
	readonly notes: PracticeNotes;
	readonly probing: Probing;
	/** Where the gauge stands, and which limit is looked for. */
	readonly wanted?: Wanted | undefined;
	/** What a hand did last, for the question at which it was done. */
	readonly did?: {readonly step: string; readonly text: string} | undefined;
};

/** A bench as it was left, or begins. Readings taken so far change what chance brings next. */
export function benchOf(notes: PracticeNotes): BenchState {
	const arm = newPracticeArm(specOn(lessonOf(notes), notes.deck), (notes.seed + notes.readings.length) >>> 0);
	return {notes, probing: nextLimit({arm})};
}

export const benchNow = ({notes, probing}: BenchState, facts: Facts): BenchNow => ({
	lesson: lessonOf(notes),
	spec: probing.arm.spec,
	done: notes.deck.done,
	facts,
});

/** The bench once a question is asked: the gauge goes where it says, and the weight that was named hangs on the device. */
export function atQuestion(before: BenchState, dialogue: Dialogue): BenchState {
	const state = withWeight(before, dialogue);
	const wanted = readingWanted(dialogue);
	if (!wanted) return state;
	const {wanted: last, probing} = state;
	const isAnew = dialogue.check.setAnew && wanted.which === 'innerLimit' && last?.index !== wanted.index;
	const stays =
		last?.radiusMm === wanted.radiusMm &&
		last.isTurned === wanted.isTurned &&
		probing.arm.gauge !== null &&
		!(isAnew && last.step === wanted.step);
	if (!stays) return {...state, wanted, probing: probingAt(probing.arm, wanted.radiusMm, wanted.isTurned)};
	const isSame = last.step === wanted.step && last.which === wanted.which && last.index === wanted.index;
	return isSame ? state : {...state, wanted, probing: nextLimit(probing)};
}

function withWeight(state: BenchState, {check}: Dialogue): BenchState {
	const typed = check.answers['bias-weight']?.value;
	const {deck} = state.notes;
	if (typeof typed !== 'number' || typed === deck.biasWeightG) return state;
	return withDeck(state, {...deck, biasWeightG: typed});
}

const withDeck = (state: BenchState, deck: PracticeNotes['deck']): BenchState => ({
	...state,
	notes: {...state.notes, deck},
	// Hands at the deck: the gauge is put under the arm anew.
	wanted: undefined,
	probing: nextLimit({
		arm: {...withChange(state.probing.arm, specOn(lessonOf(state.notes), deck)), gauge: null},
	}),
});

/** What a hand can do where a question stands; undefined where nothing is to be done. */
export function handsAt(state: BenchState, dialogue: Dialogue): HandsOn | undefined {
	const {step, progress} = positionOf(dialogue);
	if (dialogue.mode.kind !== 'ask') return;
	const bench = benchNow(state, progress.facts);
	return step && handsOn.find(({at, when}) => at.includes(step.id) && when(bench, state.notes));
}

/** The bench after a hand has done what is offered; undefined where nothing is. */
export function handled(state: BenchState, dialogue: Dialogue): BenchState | undefined {
	const hands = handsAt(state, dialogue);
	const {step} = positionOf(dialogue);
	if (!hands || !step) return;
	const next = withDeck(state, withDeed(state.notes.deck, hands.deed));
	const wasLevel = isLevel(state.probing.arm.spec);
	return {...next, did: {step: step.id, text: practiceWords.hands[hands.deed].did({wasLevel})}};
}

/** How a finger nudges: an arrow to come near the limit, a comma or a point to find it. Quickness is invented. */
const pushes = {
	large: {pct: 1, quicknessMmPerS: 1},
	fine: {pct: 0.5, quicknessMmPerS: 0.3},
} as const satisfies Record<Nudge['size'], Push>;

/** Which way the arm is nudged too far at once: it has let go of two large nudges, and no finer one was tried since. */
export function nudgeFiner({probing: {inVain, nudged}}: BenchState): Nudge['way'] | undefined {
	return nudged === null && inVain && inVain.times >= 2 && inVain.pct === pushes.large.pct ? inVain.way : undefined;
}

export const pushed = (state: BenchState, {way, size}: Nudge): BenchState =>
	state.wanted ? {...state, probing: nudged(state.probing, way, pushes[size])} : state;

/** So many ms later; an arm that lies on no gauge is locked in its rest. */
export const later = (state: BenchState, ms: number): BenchState =>
	state.probing.arm.gauge ? {...state, probing: passed(state.probing, ms)} : state;

/** The bench with a note of how a reading came about, where the answer to a question was one. */
export function withReading(state: BenchState, asked: Dialogue, answered: Check): BenchState {
	const wanted = readingWanted(asked);
	const reading = wanted && readingIn(answered, wanted);
	const before = wanted && readingIn(asked.check, wanted);
	if (!wanted || !reading || (before?.at === reading.at && before.value === reading.value)) return state;
	const {facts} = positionOf(asked).progress;
	const note = noteOf(state, wanted, signOfPlus(facts) * inGaugeUnit(reading.value, facts), reading.at);
	return {...state, notes: {...state.notes, readings: [...state.notes.readings, note]}};
}

function noteOf({notes, probing}: BenchState, wanted: Wanted, readingPct: number, at: string): ReadingNote {
	const {step, which, index, radiusMm, isTurned} = wanted;
	const {nudges, hurried} = probing;
	const restMs = restWith(readingPct, probing);
	return {step, at, which, index, radiusMm, isTurned, readingPct, deck: notes.deck, nudges, hurried, restMs};
}

/** The bench once the hidden truth was looked at. */
export const revealed = (state: BenchState): BenchState => ({...state, notes: {...state.notes, isRevealed: true}});
