import constants from '../../shared/constants.json' with {type: 'json'};
import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from './compare.js';
import {rootSumSquares} from './statistics.js';

/** One figure (pull or band) of one check at one radius, as a force in mN. */
export type CheckedForce = {
	readonly valueMn: number;
	/** Uncertainty for 95 %, of the check by itself. */
	readonly uncertaintyMn: number;
	/** Playing tracking force of that check. */
	readonly playingMn: number;
	/** What the level leaves open (95 %); for a pull only, a tilt does not widen a band. */
	readonly levelUncertaintyMn?: number | undefined;
};

export type ChangeOptions = {
	/** The arm's own standard deviation from check to check; without it the default share of the playing force. */
	readonly ownSpreadMn?: number | undefined;
};

export type ChangeVerdict = 'changed' | 'perhaps' | 'not changed';

export type Change = {
	/** Now less then: above zero is a move toward the rim, or a wider band. */
	readonly differenceMn: number;
	/** Uncertainty of the difference, for 95 %. */
	readonly uncertaintyMn: number;
	/** Size of the difference over its uncertainty; infinite for a difference that has none. */
	readonly en: number;
	readonly verdict: ChangeVerdict;
};

/**
 * Whether a figure changed between two checks, by E_n = |now − then| / √(U_then² + U_now²) (ISO 13528). Each U is
 * first widened by what setting arm and gauge up anew makes of it, and by the level where that is known. 'changed'
 * also needs a difference that matters, as a share of the present playing force; without it the word is 'perhaps'.
 */
export const changeBetween = (then: CheckedForce, now: CheckedForce, {ownSpreadMn}: ChangeOptions = {}): Change => {
	const differenceMn = now.valueMn - then.valueMn;
	const uncertaintyMn = rootSumSquares(widenedMn(then, ownSpreadMn), widenedMn(now, ownSpreadMn));
	const en = differenceMn === 0 ? 0 : Math.abs(differenceMn) / uncertaintyMn;
	return {differenceMn, uncertaintyMn, en, verdict: verdictOf(en, Math.abs(differenceMn), now.playingMn)};
};

const widenedMn = (check: CheckedForce, ownSpreadMn: number | undefined): number => {
	const reseatingMn = ownSpreadMn ?? (limits.reseatingPct.value / 100) * check.playingMn;
	return rootSumSquares(
		check.uncertaintyMn,
		constants.normalQuantile975.value * reseatingMn,
		check.levelUncertaintyMn ?? 0,
	);
};

const verdictOf = (en: number, sizeMn: number, playingMn: number): ChangeVerdict => {
	if (!isAbove(en, 1)) return 'not changed';
	return isAbove(sizeMn, (limits.changedPct.value / 100) * playingMn) ? 'changed' : 'perhaps';
};
