import type {Answer, Check} from '../check/check.js';
import type {DeckState, ReadingNote} from '../check/practice-notes.js';
import {progressOf} from '../check/progress.js';
import {isAbove} from '../measures/compare.js';
import {line, type Shown} from '../pages/shown-lines.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {gaugeLoadMn} from '../practice/torques.js';
import {type Truth, truthOf} from '../practice/truth.js';
import type {Facts} from '../procedure/facts.js';
import {placeOfRounds, stageOf} from '../procedure/index.js';
import {isOnPlace} from '../procedure/places.js';
import {readAnswer} from '../procedure/read-answer.js';
import type {Step} from '../procedure/step.js';
import type {StepId} from '../procedure/step-ids.js';
import {seriesThatCounts} from '../results/document-of-check.js';
import {practiceWords} from '../words/practice.js';
import {titleOf} from '../words/step-text.js';
import {lessonOf, specOn} from './deck.js';
import {settledMs} from './gauged-arm.js';
import {instruments} from './instruments.js';

const said = practiceWords.advice;

/** What to do better, gravest first; one line of praise where there is nothing. */
export function adviceLines(check: Check, notes: readonly ReadingNote[]): readonly Shown[] {
	const {practice} = check;
	if (!practice) return [];
	const specOf = ({deck}: ReadingNote): ArmSpec => specOn(lessonOf(practice), deck);
	const advice = [...deckAdvice(check, notes), ...misreadAdvice(check), ...readingAdvice(notes, specOf)];
	if (advice.length > 0) return advice.map((text) => line(text));
	return notes.length === 0 ? [line(said.noReading)] : [line(said.praise, 'good')];
}

/** How far inside its limit a reading may stand, in percent: two fine nudges, and the trembling of the gauge. */
const shortPct = 1.5;

/** What the readings were taken too hastily or too soon for. */
function readingAdvice(notes: readonly ReadingNote[], specOf: (note: ReadingNote) => ArmSpec): string[] {
	const readings = notes.flatMap((note) => {
		const place = placeOfRounds(note.step);
		return place ? [{...note, place, missingPct: missingPct(specOf(note), note)}] : [];
	});
	const some = (
		which: (one: (typeof readings)[number]) => boolean,
		text: (found: {readonly readings: typeof readings}) => string,
	): string[] => {
		const found = readings.filter(which);
		return found.length === 0 ? [] : [text({readings: found})];
	};
	return [
		...some(({nudges}) => nudges === 0, said.withoutNudge),
		...some(({nudges, restMs}) => nudges > 0 && restMs === null, said.neverShown),
		...some((one) => one.nudges > 0 && one.restMs !== null && one.missingPct > shortPct, said.shortOfLimit),
		...some(
			({nudges, restMs}) => nudges > 0 && restMs !== null && restMs < settledMs,
			(found) => said.unsettled({...found, settledMs}),
		),
		...hurried(notes),
	];
}

/** By how much a reading stands inside the limit that it was to find, in percent. */
function missingPct(spec: ArmSpec, note: ReadingNote): number {
	// Turned end for end, the gauge counts the other way.
	const outward = (note.isTurned ? -1 : 1) * (limitShownPct(spec, note) - note.readingPct);
	return note.which === 'outerLimit' ? outward : -outward;
}

function hurried(notes: readonly ReadingNote[]): string[] {
	const hasty = notes.reduce((sum, one) => sum + one.hurried, 0);
	const nudges = notes.reduce((sum, one) => sum + one.nudges, 0);
	// One in ten is nobody's fault.
	return hasty > 0.1 * nudges ? [said.hurried({hurried: hasty, nudges})] : [];
}

/**
 * What the gauge would show, without trembling, at the hold limit that a reading was to find, or at the end of its scale; in its
 * own sign, in percent.
 */
export function limitShownPct(
	spec: ArmSpec,
	{radiusMm, isTurned, which}: Pick<ReadingNote, 'radiusMm' | 'isTurned' | 'which'>,
): number {
	const {pullPct, bandPct} = truthOf(spec, radiusMm);
	const limitPct = pullPct + (which === 'outerLimit' ? 0.5 : -0.5) * bandPct;
	const {gainPct, zeroPct, topPct} = spec.gauge;
	const carriedPct = (limitPct * spec.playingMn) / gaugeLoadMn(spec);
	const shownPct = (isTurned ? -1 : 1) * carriedPct * (1 + gainPct / 100) + zeroPct;
	return Math.min(topPct, Math.max(-topPct, shownPct));
}

/** A part of the pull that a level deck would not have, from which on it is worth a word, in percent. */
const tiltWorthPct = 0.5;

/** What the state of the deck left in the readings: tilt, bias, damping. */
function deckAdvice(check: Check, notes: readonly ReadingNote[]): string[] {
	const {practice, overrides} = check;
	if (!practice) return [];
	const decksOf = (probed: readonly ReadingNote[]) =>
		probed.map(({deck, radiusMm}) => ({spec: specOn(lessonOf(practice), deck), radiusMm}));
	const probed = notes.filter(({step}) => placeOfRounds(step) !== undefined);
	const isBiasOn = ({step}: ReadingNote): boolean => isOnPlace(placeOfRounds(step));
	const decks = decksOf(probed.filter((note) => !isBiasOn(note)));
	const withBias = decksOf(probed.filter(isBiasOn));
	// After a remedy the hands at the deck were one's own.
	const by = practice.isPrepared && seriesThatCounts(check) === check.series[0] ? 'another' : 'you';
	const isOverridden = overrides.some(({step}) => stageOf(step) === 'level');
	const tiltPct = worst(decks, (truth) => Math.abs(truth.tiltPct));
	const biasPct = worst(decks, (truth) => truth.biasPct);
	return [
		...(tiltPct < tiltWorthPct ? [] : [said.tilted({by, tiltPct, isOverridden})]),
		...(biasPct === 0 ? [] : [said.biased({by, biasPct})]),
		...(decks.some(({spec}) => spec.damping?.isIn) ? [said.damped({by})] : []),
		...(withBias.some(({spec}) => spec.bias?.isOn === false) ? [said.unhung] : []),
	];
}

type Deck = {readonly spec: ArmSpec; readonly radiusMm: number};

/** The largest part of the pull, in percent. */
const worst = (decks: readonly Deck[], partPct: (truth: Truth) => number): number =>
	Math.max(0, ...decks.map(({spec, radiusMm}) => partPct(truthOf(spec, radiusMm))));

/** How far a typed number may be off what the instrument showed, in base units; instruments that are not here are not judged. */
const toleranceOf: Readonly<Partial<Record<StepId, number>>> = {
	'level-lr-1': 0.1,
	'level-lr-2': 0.1,
	'level-fb-1': 0.1,
	'level-fb-2': 0.1,
	'force-reading': 0.2,
	'force-at-height': 0.2,
	'mat-thickness': 0.2,
	'guard-gap': 0.3,
	clearance: 0.3,
	'back-force': 0.2,
};

/**
 * Instruments that were not typed as they showed. Where hands were at the deck in between, what they showed before counts as
 * right too; but a level that was turned is to be read anew.
 */
function misreadAdvice(check: Check): string[] {
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
	return isRight ? [] : [said.misread({step: titleOf(step.id), typed: answer.typed, shown: last})];
}
