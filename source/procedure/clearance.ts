import {guardIsClear, guardWindowMm, stylusWindowMm} from '../measures/clearance.js';
import {isBelow, isWithin} from '../measures/compare.js';
import type {Facts} from './facts.js';
import {type Problem, problem, wayTo} from './problem.js';

export type ClearanceState = ReturnType<typeof clearanceState>;

/** The guard is what touches first: with its depth known, the gap under it is read, and the stylus worked out. */
export const readsGap = (facts: Facts): boolean =>
	facts.is('guard-on', 'on') && facts.number('guard-depth') !== undefined && !facts.everAnswered('clearance');

/** How high the stylus stands above the surface under it, mm; undefined until it was read. */
export function stylusHeightMm(facts: Facts): number | undefined {
	const gapMm = facts.number('guard-gap');
	return gapMm === undefined ? facts.number('clearance') : gapMm + (facts.number('guard-depth') ?? 0);
}

/** Both windows, and where the value stands in them once it is known. */
export function clearanceState(facts: Facts) {
	const stylusMm = stylusHeightMm(facts);
	const depth = facts.is('guard-on', 'no-guard') ? undefined : facts.number('guard-depth');
	const stylusWindow = stylusWindowMm(facts.number('mat-thickness') ?? 0);
	return {
		stylusMm,
		stylusWindow,
		/** The window at the guard's underside; undefined without a guard or with an unknown depth. */
		guardWindow: depth === undefined ? undefined : guardWindowMm(stylusWindow, depth),
		guardMm: depth === undefined || stylusMm === undefined ? undefined : stylusMm - depth,
	};
}

/** Why the clearance does not pass, if so. */
export function clearanceProblem(facts: Facts): Problem | undefined {
	const {stylusMm, stylusWindow, guardMm, guardWindow} = clearanceState(facts);
	if (stylusMm === undefined) return;
	const isGapRead = readsGap(facts);
	const again = wayTo('set-height', isGapRead ? 'guard-gap' : 'clearance');
	if (!isWithin(stylusMm, stylusWindow)) {
		const [lowMm, highMm] = stylusWindow;
		const side = isBelow(stylusMm, lowMm) ? 'low' : 'high';
		if (!isGapRead || guardMm === undefined || !guardWindow)
			return problem('stylus-height', {stylusMm, side, lowMm, highMm}, again);
		const [lowGapMm, highGapMm] = guardWindow;
		return problem('guard-gap-off', {guardMm, side, lowMm: lowGapMm, highMm: highGapMm}, again);
	}
	if (guardMm !== undefined && !guardIsClear(stylusMm, stylusMm - guardMm))
		return problem('guard-too-near', {guardMm}, again, wayTo('take-mat-off', 'mat'));
	return;
}
