import limits from '../../shared/limits.json' with {type: 'json'};
import {isAbove} from './compare.js';
import {rootSumSquares} from './statistics.js';

/** One figure (pull or band) of one check at one radius, as a force in mN. */
export type CheckedForce = {
	readonly valueMn: number;
	/** Uncertainty for 95 %, setting up and all. */
	readonly uncertaintyMn: number;
};

export type ChangeVerdict = 'changed' | 'perhaps' | 'unchanged';

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
 * Whether a figure changed between two checks, by E_n = |now − then| / √(U_then² + U_now²) (ISO 13528). A difference that
 * does not matter, as a share of the present playing force, is no change, however surely it was measured. 'changed' asks
 * for 99 %: a check compares four figures at once, and at 95 % each would cry wolf in every fifth check of a sound arm.
 *
 * @param playingMn tracking force in play now
 */
export const changeBetween = (then: CheckedForce, now: CheckedForce, playingMn: number): Change => {
	const differenceMn = now.valueMn - then.valueMn;
	const uncertaintyMn = rootSumSquares(then.uncertaintyMn, now.uncertaintyMn);
	const en = differenceMn === 0 ? 0 : Math.abs(differenceMn) / uncertaintyMn;
	const matters = isAbove(Math.abs(differenceMn), (limits.changedPct.value / 100) * playingMn);
	return {differenceMn, uncertaintyMn, en, verdict: matters ? verdictOf(en) : 'unchanged'};
};

const verdictOf = (en: number): ChangeVerdict => {
	if (isAbove(en, limits.surelyChangedEn.value)) return 'changed';
	return isAbove(en, 1) ? 'perhaps' : 'unchanged';
};
