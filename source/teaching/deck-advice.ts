import type {Check} from '../check/check.js';
import type {ReadingNote} from '../check/practice-notes.js';
import type {ArmSpec} from '../practice/arm-spec.js';
import {truthOf} from '../practice/truth.js';
import {placeOfRounds, stageOf} from '../procedure/index.js';
import {isOnPlace} from '../procedure/places.js';
import {seriesThatCounts} from '../results/document-of-check.js';
import {fixed} from '../units.js';
import {lessonOf, specOn} from './deck.js';

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
	const who = practice.isPrepared && seriesThatCounts(check) === check.series[0] ? 'whoever prepared this deck' : 'you';
	const skipped = overrides.some(({step}) => stageOf(step) === 'level');
	return [...tilted(decks, who, skipped), ...biased(decks, who), ...damped(decks, who), ...unhung(withBias)];
}

type Deck = {readonly spec: ArmSpec; readonly radiusMm: number};

function tilted(decks: readonly Deck[], who: string, skipped: boolean): string[] {
	const shares = decks.map(({spec, radiusMm}) => truthOf(spec, radiusMm).tiltPct);
	const worst = Math.max(0, ...shares.map(Math.abs));
	if (worst < tiltWorthPct) return [];
	return [
		`Level skipped: the deck stood tilted while you probed, and up to ${fixed(worst, 1)} % of the pull is the tilt alone.${skipped ? ` The level did not pass, and ${who} went on regardless.` : ''} Press ! at the level questions to level it, then probe.`,
	];
}

function biased(decks: readonly Deck[], who: string): string[] {
	const share = Math.max(0, ...decks.map(({spec, radiusMm}) => truthOf(spec, radiusMm).biasPct));
	return share === 0
		? []
		: [
				`The bias was on while the arm was probed, and made up to ${fixed(share, 1)} % of the pull: ${who} confirmed 'bias off' without looking. Press ! there to take the weight off, look, and confirm then.`,
			];
}

function damped(decks: readonly Deck[], who: string): string[] {
	return decks.some(({spec}) => spec.damping?.isIn)
		? [
				`The damping was in while the arm was probed: ${who} confirmed it as out without looking. Press ! there to lift the paddle, look, and confirm then.`,
			]
		: [];
}

function unhung(withBias: readonly Deck[]): string[] {
	return withBias.some(({spec}) => spec.bias?.isOn === false)
		? [
				"The bias was off while its readings were taken: you confirmed 'bias on' without looking. Press ! there to hang the weight on, look, and confirm then.",
			]
		: [];
}
