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
const whoFirst = {you: 'You', another: 'Whoever prepared this deck'};

/** What to do better. */
export const benchAdvice = {
	noReading: 'You took no reading yet.',
	praise: 'All well done: you read each limit with the arm still.',
	withoutNudge: ({readings}: Readings) =>
		`Typed without a nudge: ${firstOf(readings)}. Nudge the arm until it goes back by itself: only that is a limit.`,
	neverShown: ({readings}: Readings<{readonly readingPct: number}>) =>
		`Typed, but the gauge never showed it with the arm still: ${firstOf(readings, (one) => `${withSign(one.readingPct)} (${readingName(one)})`)}. Type the last reading that held.`,
	shortOfLimit: ({readings}: Readings<{readonly missingPct: number}>) =>
		`Short of the limit, the arm still held: ${firstOf(readings, (one) => `${percent(one.missingPct, 1)} (${readingName(one)})`)}. Nudge on in fine steps until it goes back by itself. Then type the last reading that held.`,
	unsettled: ({readings, settledMs}: Readings & {readonly settledMs: number}) =>
		`Read too soon, still for less than ${settledMs / 1000} s: ${firstOf(readings)}. Wait: only then you see an arm creep.`,
	hurried: ({hurried, nudges}: {readonly hurried: number; readonly nudges: number}) =>
		`Nudged too fast: ${hurried} of ${nudges} nudges met a moving arm. It then flies past its limit. Nudge, wait until it is still, look, nudge again.`,
	misread: ({step, typed, shown}: {readonly step: string; readonly typed: string; readonly shown: string}) =>
		`${step}: you typed ${typed}, but the instrument showed ${shown}.`,
	tilted: ({by, tiltPct, isOverridden}: By & {readonly tiltPct: number; readonly isOverridden: boolean}) =>
		`The deck was tilted while you probed: up to ${percent(tiltPct, 1)} of the pull is the tilt.${isOverridden ? ` The level did not pass, and ${who[by]} went on all the same.` : ''} Press ! at the level questions to level it, then probe.`,
	biased: ({by, biasPct}: By & {readonly biasPct: number}) =>
		`The bias was on while you probed: it made up to ${percent(biasPct, 1)} of the pull. ${whoFirst[by]} confirmed 'bias off' without a look. Press ! there to take the weight off, look, then confirm.`,
	damped: ({by}: By) =>
		`The damping was in while you probed. ${whoFirst[by]} confirmed it as out without a look. Press ! there to lift the paddle, look, then confirm.`,
	unhung:
		"The bias was off while you read it. You confirmed 'bias on' without a look. Press ! there to hang the weight on, look, then confirm.",
};
