import type {Check} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import {line, type Shown} from '../pages/shown-lines.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {gaugeLoadMn} from '../practice/torques.js';
import {truthOf} from '../practice/truth.js';
import {placeOfRounds} from '../procedure/index.js';
import {words} from '../words/index.js';
import {lessonOf, specOn} from './deck.js';
import {deckAdvice} from './deck-advice.js';
import {settledMs} from './gauged-arm.js';
import {misreadAdvice} from './misread-advice.js';

const said = words.practice.advice;

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
