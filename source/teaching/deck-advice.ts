import type {Check} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {type Truth, truthOf} from '../practice/truth.js';
import {placeOfRounds, stageOf} from '../procedure/index.js';
import {isOnPlace} from '../procedure/places.js';
import {seriesThatCounts} from '../results/document-of-check.js';
import {words} from '../words/index.js';
import {lessonOf, specOn} from './deck.js';

const said = words.practice.advice;

/** A part of the pull that a level deck would not have, from which on it is worth a word, in percent. */
const tiltWorthPct = 0.5;

/** What the state of the deck left in the readings: tilt, bias, damping. */
export function deckAdvice(check: Check, notes: readonly ReadingNote[]): string[] {
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
