import type {ReadingNote} from '../../../check/practice-notes.js';
import type {Place} from '../../../procedure/places.js';
import {percent, withSign} from '../../numbers.js';
import {entries} from '../entries.js';

/** A reading of the gauge by where and when it was taken. */
type Named = Pick<ReadingNote, 'which' | 'index' | 'isTurned'> & {readonly place: Place};

const where: Readonly<Record<Place, string>> = {
	...entries.places,
	inner: 'inner radius',
	outer: 'outer radius',
	extra: 'third radius',
};

const limits = {innerLimit: 'inner limit', outerLimit: 'outer limit'};

/** 'inner radius, outer limit, round 2'. */
function readingName({place, which, index, isTurned}: Named): string {
	// There is but one closing round.
	const round = place === 'closing' ? '' : `, round ${index + 1}${isTurned ? ' (turned)' : ''}`;
	return `${where[place]}, ${limits[which]}${round}`;
}

const mostNamed = 3;

/** The first few by name, the others by number. */
function firstOf<T extends Named>(readings: readonly T[], text: (one: T) => string = readingName): string {
	const more = readings.length - mostNamed;
	return `${readings.slice(0, mostNamed).map(text).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

type Readings<More = unknown> = {readonly readings: readonly (Named & More)[]};

/** Who saw to the deck. */
type By = {readonly by: 'you' | 'another'};

const who = {you: 'you', another: 'whoever prepared this deck'};

/** What to do better. */
export const benchAdvice = {
	noReading: 'No reading was taken yet.',
	praise: 'Nothing to do better: every reading stood at its limit, and was read with the arm at rest.',
	withoutNudge: ({readings}: Readings) =>
		`Typed without a nudge: ${firstOf(readings)}. Where the arm happens to lie is no limit: nudge it until it goes back by itself.`,
	neverShown: ({readings}: Readings<{readonly readingPct: number}>) =>
		`Typed, but never shown while the arm stood still: ${firstOf(readings, (one) => `${withSign(one.readingPct)} (${readingName(one)})`)}. Type what stood there at the last place that held.`,
	shortOfLimit: ({readings}: Readings<{readonly missingPct: number}>) =>
		`Short of the limit, the arm would have held on: ${firstOf(readings, (one) => `${percent(one.missingPct, 1)} (${readingName(one)})`)}. Nudge on in fine steps until it goes back by itself, then type the last place that held.`,
	unsettled: ({readings, settledMs}: Readings & {readonly settledMs: number}) =>
		`Read before it had settled, in less than ${settledMs / 1000} s at rest: ${firstOf(readings)}. Wait; an arm that creeps shows itself only then.`,
	hurried: ({hurried, nudges}: {readonly hurried: number; readonly nudges: number}) =>
		`Nudged too fast: ${hurried} of ${nudges} nudges met an arm that still moved or had only just stopped. It then flies past its limit. Nudge, wait until it is still, look, nudge again.`,
	misread: ({step, typed, shown}: {readonly step: string; readonly typed: string; readonly shown: string}) =>
		`${step}: ${typed} was typed, the instrument showed ${shown}.`,
	tilted: ({by, tiltPct, isOverridden}: By & {readonly tiltPct: number; readonly isOverridden: boolean}) =>
		`Level skipped: the deck stood tilted while you probed, and up to ${percent(tiltPct, 1)} of the pull is the tilt alone.${isOverridden ? ` The level did not pass, and ${who[by]} went on regardless.` : ''} Press ! at the level questions to level it, then probe.`,
	biased: ({by, biasPct}: By & {readonly biasPct: number}) =>
		`The bias was on while the arm was probed, and made up to ${percent(biasPct, 1)} of the pull: ${who[by]} confirmed 'bias off' without looking. Press ! there to take the weight off, look, and confirm then.`,
	damped: ({by}: By) =>
		`The damping was in while the arm was probed: ${who[by]} confirmed it as out without looking. Press ! there to lift the paddle, look, and confirm then.`,
	unhung:
		"The bias was off while its readings were taken: you confirmed 'bias on' without looking. Press ! there to hang the weight on, look, and confirm then.",
};
