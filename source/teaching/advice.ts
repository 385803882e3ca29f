import type {Check} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import {line, type Shown} from '../pages/shown-lines.js';
import {placeOfRounds} from '../procedure/index.js';
import {isOnPlace} from '../procedure/places.js';
import {fixed} from '../units.js';
import {placeLabel} from '../words/step-text.js';
import {withSign} from '../words/wording.js';
import {lessonOf, specOn} from './deck.js';
import {deckAdvice} from './deck-advice.js';
import {limitShownPct} from './hidden-limit.js';
import {misreadAdvice} from './misread-advice.js';
import {settledMs} from './settled.js';

/** What to do better, gravest first; one line of praise where there is nothing. */
export function adviceLines(check: Check, notes: readonly ReadingNote[]): readonly Shown[] {
	if (!check.practice) return [];
	const nudged = notes.filter(({nudges}) => nudges > 0);
	const advice = [
		...deckAdvice(check, notes),
		...misreadAdvice(check),
		...withoutNudge(notes),
		...neverShown(nudged),
		...shortOfLimit(check, nudged),
		...unsettled(nudged),
		...hurried(nudged),
	];
	if (advice.length > 0) return advice.map((text) => line(text));
	return notes.length === 0
		? [line('No reading was taken yet.')]
		: [line('Nothing to do better: every reading stood at its limit, and was read with the arm at rest.', 'good')];
}

/** A reading by name: 'inner radius, outer limit, round 2'. */
function readingName({step, which, index, isTurned}: ReadingNote): string {
	const limit = which === 'innerLimit' ? 'inner limit' : 'outer limit';
	const place = placeOfRounds(step) ?? step;
	const where = isOnPlace(place) || place === 'closing' ? placeLabel(place) : `${placeLabel(place)} radius`;
	return `${where}, ${limit}${place === 'closing' ? '' : `, round ${index + 1}${isTurned ? ' (turned)' : ''}`}`;
}

const mostNamed = 3;

/** The first few by name, the others by number. */
function named(notes: readonly ReadingNote[], text: (note: ReadingNote) => string = readingName): string {
	const more = notes.length - mostNamed;
	return `${notes.slice(0, mostNamed).map(text).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

const some = (notes: readonly ReadingNote[], text: (notes: readonly ReadingNote[]) => string): string[] =>
	notes.length === 0 ? [] : [text(notes)];

const withoutNudge = (notes: readonly ReadingNote[]): string[] =>
	some(
		notes.filter(({nudges}) => nudges === 0),
		(found) =>
			`Typed without a nudge: ${named(found)}. Where the arm happens to lie is no limit: nudge it until it goes back by itself.`,
	);

const neverShown = (notes: readonly ReadingNote[]): string[] =>
	some(
		notes.filter(({restMs}) => restMs === null),
		(found) =>
			`Typed, but never shown while the arm stood still: ${named(found, (note) => `${withSign(note.readingPct)} (${readingName(note)})`)}. Type what stood there at the last place that held.`,
	);

/** How far inside its limit a reading may stand, in percent: two fine nudges, and the trembling of the gauge. */
const shortPct = 1.5;

function shortOfLimit(check: Check, notes: readonly ReadingNote[]): string[] {
	const {practice} = check;
	if (!practice) return [];
	const missing = (note: ReadingNote): number => {
		const hiddenPct = limitShownPct(specOn(lessonOf(practice), note.deck), note);
		// Turned end for end, the gauge counts the other way.
		const outward = (note.isTurned ? -1 : 1) * (hiddenPct - note.readingPct);
		return note.which === 'outerLimit' ? outward : -outward;
	};
	return some(
		notes.filter((note) => note.restMs !== null && missing(note) > shortPct),
		(found) =>
			`Short of the limit, the arm would have held on: ${named(found, (note) => `${fixed(missing(note), 1)} % (${readingName(note)})`)}. Nudge on in fine steps until it goes back by itself, then type the last place that held.`,
	);
}

const unsettled = (notes: readonly ReadingNote[]): string[] =>
	some(
		notes.filter(({restMs}) => restMs !== null && restMs < settledMs),
		(found) =>
			`Read before it had settled, in less than ${settledMs / 1000} s at rest: ${named(found)}. Wait; an arm that creeps shows itself only then.`,
	);

function hurried(notes: readonly ReadingNote[]): string[] {
	const hasty = notes.reduce((sum, one) => sum + one.hurried, 0);
	const all = notes.reduce((sum, one) => sum + one.nudges, 0);
	// One in ten is nobody's fault.
	if (hasty <= 0.1 * all) return [];
	return [
		`Nudged too fast: ${hasty} of ${all} nudges met an arm that still moved or had only just stopped. It then flies past its limit. Nudge, wait until it is still, look, nudge again.`,
	];
}
